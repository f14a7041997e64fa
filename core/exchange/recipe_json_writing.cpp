#include "exchange/ingredient_json.h"
#include "exchange/json.h"
#include "exchange/reading_json.h"
#include "exchange/recipe_json.h"
#include "exchange/step_json.h"

#include <cassert>
#include <cmath>

namespace firn {

namespace {

constexpr std::string_view indentOfRecipe = "  ";
constexpr std::string_view indentOfComponent = "      ";
constexpr std::string_view indentOfLinked = "    ";

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

void writeLinked(std::string& out, const LinkedRecipe& linked)
{
    std::string recipe = recipeToJson(linked.recipe);
    recipe.pop_back();  // the line end behind it
    out += "    {\"name\": " + jsonString(linked.name) + ", \"file\": " + jsonString(linked.file)
           + ", \"recipe\": " + indented(recipe, indentOfLinked) + "}";
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
    out += ",\n  \"components\": [\n";
    for (const Component& component : recipe.components) {
        out += &component == recipe.components.data() ? "" : ",\n";
        writeComponent(out, component);
    }
    out += "\n  ]";
    for (const Ingredient& ingredient : recipe.ingredients)
        out += std::string(&ingredient == recipe.ingredients.data() ? ",\n  \"ingredients\": [\n" : ",\n") + "    "
               + ingredientToJson(ingredient);
    out += recipe.ingredients.empty() ? "" : "\n  ]";
    for (const ReadingRecord& reading : recipe.readings)
        out += std::string(&reading == recipe.readings.data() ? ",\n  \"readings\": [\n" : ",\n") + "    " + readingToJson(reading);
    out += recipe.readings.empty() ? "" : "\n  ]";
    for (const LinkedRecipe& linked : recipe.linked) {
        out += &linked == recipe.linked.data() ? ",\n  \"linked_recipes\": [\n" : ",\n";
        writeLinked(out, linked);
    }
    out += recipe.linked.empty() ? "" : "\n  ]";
    forEachUnknown(
        recipe.unknown, [&](const std::string& key, const Json& value) { field(key, indented(value.dump(2), indentOfRecipe)); });
    return out + "\n}\n";
}

}  // namespace firn
