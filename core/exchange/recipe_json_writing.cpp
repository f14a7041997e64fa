#include "exchange/batch_correction_json.h"
#include "exchange/ingredient_json.h"
#include "exchange/object_writer.h"
#include "exchange/reading_json.h"
#include "exchange/recipe_json.h"
#include "exchange/step_json.h"
#include "exchange/tasting_json.h"

#include <cassert>
#include <cmath>

namespace firn {

namespace {

constexpr std::string_view indentOfRecipe = "  ";
constexpr std::string_view indentOfComponent = "      ";
constexpr std::string_view indentOfListed = "    ";

/// JSON on several lines, of which all but the first are indented.
std::string indented(std::string_view json, std::string_view indent)
{
    std::string text;
    for (const char c : json) {
        text += c;
        if (c == '\n')  // only ever between values: inside a text it is written \n
            text += indent;
    }
    return text;
}

template <class Write>
void forEachUnknown(const UnknownFields& unknown, Write write)
{
    if (unknown.empty())
        return;
    const auto fields = jsonFromText(unknown);
    assert(fields && fields->is_object());
    for (const auto& [key, value] : fields->items())
        write(key, value);
}

std::string numberText(double value)
{
    assert(std::isfinite(value));
    return exactNumber(value);
}

void writeRow(std::string& out, const Row& row)
{
    out += "        {\"ingredient\": " + jsonString(row.ingredient) + ", \"amount\": " + numberText(row.amount.value)
           + ", \"unit\": " + jsonString(factsOf(row.amount.unit).symbol);
    if (!row.note.empty())
        out += ", \"note\": " + jsonString(row.note);
    if (row.measuredBrix)
        out += ", \"reads_brix\": " + numberText(*row.measuredBrix);
    forEachUnknown(
        row.unknown, [&](const std::string& key, const Json& value) { out += ", " + jsonString(key) + ": " + value.dump(); });
    out += "}";
}

void writeComponent(std::string& out, const Component& component)
{
    out += "    {\n      \"name\": " + jsonString(component.name);
    if (component.process)
        out += ",\n      \"process\": " + jsonString(keyOf(*component.process));
    if (component.overrun_percent)
        out += ",\n      \"overrun_percent\": " + numberText(*component.overrun_percent);
    out += ",\n      \"rows\": [";
    for (const Row& row : component.rows) {
        out += &row == component.rows.data() ? "\n" : ",\n";
        writeRow(out, row);
    }
    out += component.rows.empty() ? "]" : "\n      ]";
    for (const Step& step : component.steps)
        out += std::string(&step == component.steps.data() ? ",\n      \"steps\": [\n" : ",\n") + "        " + stepToJson(step);
    if (!component.steps.empty())
        out += "\n      ]";
    forEachUnknown(component.unknown, [&](const std::string& key, const Json& value) {
        out += ",\n      " + jsonString(key) + ": " + indented(value.dump(2), indentOfComponent);
    });
    out += "\n    }";
}

std::string insideList(const Recipe& recipe)
{
    std::string json = recipeToJson(recipe);
    json.pop_back();  // the line end behind it
    return indented(json, indentOfListed);
}

std::string linkedToJson(const LinkedRecipe& linked)
{
    ObjectWriter out;
    out.json("name", jsonString(linked.name));
    out.json("file", jsonString(linked.file));
    out.json("recipe", insideList(linked.recipe));
    return out.object();
}

std::string versionToJson(const Version& version)
{
    ObjectWriter out;
    out.json("id", jsonString(version.id));
    out.text("name", version.name);
    out.text("note", version.note);
    out.text("date", version.date);
    out.text("based_on", version.basedOn);
    out.unknown(version.unknown);
    out.json("recipe", insideList(version.recipe));
    return out.object();
}

std::string tagsToJson(const std::vector<std::string>& tags)
{
    std::string text;
    for (const std::string& tag : tags)
        text += (text.empty() ? "" : ", ") + jsonString(tag);
    return "[" + text + "]";
}

/// A list with one thing a line; nothing for an empty one.
template <class Thing, class ToJson>
void writeList(std::string& out, std::string_view key, const std::vector<Thing>& things, ToJson toJson)
{
    if (things.empty())
        return;
    out += ",\n  " + jsonString(key) + ": [";
    for (const Thing& thing : things)
        out += std::string(&thing == things.data() ? "\n" : ",\n") + "    " + toJson(thing);
    out += "\n  ]";
}

}  // namespace

std::string recipeToJson(const Recipe& recipe)
{
    std::string out = "{\n  \"format\": " + jsonString(recipeFormat) + ",\n  \"version\": " + std::to_string(recipeFormatVersion);
    const auto field = [&](std::string_view key, const std::string& value) { out += ",\n  " + jsonString(key) + ": " + value; };
    field("title", jsonString(recipe.title));
    if (recipe.process)
        field("process", jsonString(keyOf(*recipe.process)));
    if (recipe.overrun_percent != 0.0)
        field("overrun_percent", numberText(recipe.overrun_percent));
    if (recipe.serveAt_c)
        field("serve_at_c", numberText(*recipe.serveAt_c));
    if (recipe.freezerAt_c)
        field("freezer_at_c", numberText(*recipe.freezerAt_c));
    if (!recipe.notes.empty())
        field("notes", jsonString(recipe.notes));
    if (!recipe.tags.empty())
        field("tags", tagsToJson(recipe.tags));
    if (recipe.isFavourite)
        field("favourite", "true");
    if (recipe.isArchived)
        field("archived", "true");
    out += ",\n  \"components\": [\n";
    for (const Component& component : recipe.components) {
        out += &component == recipe.components.data() ? "" : ",\n";
        writeComponent(out, component);
    }
    out += "\n  ]";
    writeList(out, "ingredients", recipe.ingredients, ingredientToJson);
    writeList(out, "readings", recipe.readings, readingToJson);
    writeList(out, "batch_corrections", recipe.batchCorrections, batchCorrectionToJson);
    writeList(out, "linked_recipes", recipe.linked, linkedToJson);
    if (!recipe.basedOn.empty())
        field("based_on", jsonString(recipe.basedOn));
    writeList(out, "versions", recipe.versions, versionToJson);
    writeList(out, "scales", recipe.scales, scaleToJson);
    writeList(out, "tastings", recipe.tastings, tastingToJson);
    writeList(out, "blind_sheets", recipe.blindSheets, blindSheetToJson);
    forEachUnknown(
        recipe.unknown, [&](const std::string& key, const Json& value) { field(key, indented(value.dump(2), indentOfRecipe)); });
    return out + "\n}\n";
}

}  // namespace firn
