#include "exchange/recipe_json.h"

#include "exchange/ingredient_json.h"
#include "exchange/reading_json.h"
#include "exchange/recipe_fields.h"
#include "exchange/step_json.h"

#include <cstdint>

namespace firn {

namespace {

constexpr double largestOverrun_percent = 1000.0;
constexpr double largestBrix = 100.0;
constexpr double largestTemperature_c = 100.0;  // either way from zero

Fault readProcess(const std::string& key, const Json& value, std::optional<Process>& process)
{
    process = value.is_string() ? processNamed(value.get<std::string>()) : std::nullopt;
    if (!process)
        return phrase("\"{0}\" must be \"still\", \"scraped\", \"churned\" or \"folded\".", key);
    return std::nullopt;
}

Fault readAmount(const std::string& key, const Json& value, double& amount)
{
    if (!value.is_number())
        return phrase("\"{0}\" must be a number.", key);
    amount = value.get<double>() + 0.0;
    return faultOfAmount(amount);
}

Fault readUnit(const std::string& key, const Json& value, Unit& unit)
{
    if (!value.is_string())
        return phrase("\"{0}\" must be text.", key);
    const auto found = unitNamed(value.get<std::string>());
    if (!found)
        return unknownUnit(value.get<std::string>());
    unit = *found;
    return std::nullopt;
}

Result<Row> rowFrom(const Json& json)
{
    if (!json.is_object())
        return failure(phrase("A row must be an object with \"ingredient\", \"amount\" and \"unit\"."));
    Row row;
    UnknownFieldsReader unknown;
    for (const std::string_view needed : {"ingredient", "amount", "unit"}) {
        if (!json.contains(needed))
            return failure(*missing(needed));
    }
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "ingredient")
            fault = readText(key, value, row.ingredient);
        else if (key == "amount")
            fault = readAmount(key, value, row.amount.value);
        else if (key == "unit")
            fault = readUnit(key, value, row.amount.unit);
        else if (key == "note")
            fault = readText(key, value, row.note);
        else if (key == "reads_brix")
            fault = readNumber(key, value, 0.0, largestBrix, row.measuredBrix);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    row.unknown = unknown.text();
    return row;
}

Fault readRows(const Json& value, std::size_t component, std::vector<Row>& rows)
{
    if (!value.is_array())
        return phrase("Component {0}: \"rows\" must be a list.", wholeNumber(component));
    for (const Json& json : value) {
        auto row = rowFrom(json);
        if (!row)
            return phrase(
                "Component {0}, row {1}: {2}", wholeNumber(component), wholeNumber(rows.size() + 1), english(row.error()));
        rows.push_back(std::move(*row));
    }
    return std::nullopt;
}

Fault readSteps(const Json& value, std::size_t component, std::vector<Step>& steps)
{
    if (!value.is_array())
        return phrase("Component {0}: \"steps\" must be a list.", wholeNumber(component));
    for (const Json& json : value) {
        auto step = stepFromJson(json);
        if (!step)
            return phrase(
                "Component {0}, step {1}: {2}", wholeNumber(component), wholeNumber(steps.size() + 1), english(step.error()));
        steps.push_back(std::move(*step));
    }
    return std::nullopt;
}

/// The fault with the component it is in.
Fault placed(const Fault& fault, std::size_t component)
{
    return fault ? Fault(phrase("Component {0}: {1}", wholeNumber(component), english(*fault))) : std::nullopt;
}

Result<Component> componentFrom(const Json& json, std::size_t number)
{
    if (!json.is_object() || !json.contains("rows"))
        return failure(phrase("Component {0} must be an object with \"rows\".", wholeNumber(number)));
    Component component;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "name")
            fault = placed(readText(key, value, component.name), number);
        else if (key == "process")
            fault = placed(readProcess(key, value, component.process), number);
        else if (key == "overrun_percent")
            fault = placed(readNumber(key, value, 0.0, largestOverrun_percent, component.overrun_percent), number);
        else if (key == "rows")
            fault = readRows(value, number, component.rows);
        else if (key == "steps")
            fault = readSteps(value, number, component.steps);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    component.unknown = unknown.text();
    return component;
}

Fault readComponents(const Json& value, std::vector<Component>& components)
{
    if (!value.is_array())
        return phrase("\"components\" must be a list.");
    if (value.empty())
        return std::nullopt;  // the one empty component that a new recipe has
    components.clear();
    for (const Json& json : value) {
        auto component = componentFrom(json, components.size() + 1);
        if (!component)
            return component.error();
        components.push_back(std::move(*component));
    }
    return std::nullopt;
}

Fault readIngredients(const Json& value, std::vector<Ingredient>& ingredients)
{
    if (!value.is_array())
        return phrase("\"ingredients\" must be a list.");
    for (const Json& json : value) {
        auto ingredient = ingredientFromJson(json, "own ingredient " + std::to_string(ingredients.size() + 1));
        if (!ingredient)
            return ingredient.error();
        ingredients.push_back(std::move(*ingredient));
    }
    return std::nullopt;
}

Fault readReadings(const Json& value, std::vector<ReadingRecord>& readings)
{
    if (!value.is_array())
        return phrase("\"readings\" must be a list.");
    for (const Json& json : value) {
        auto reading = readingFromJson(json);
        if (!reading)
            return phrase("Reading {0}: {1}", wholeNumber(readings.size() + 1), english(reading.error()));
        readings.push_back(std::move(*reading));
    }
    return std::nullopt;
}

Fault readLinked(const Json& value, std::vector<LinkedRecipe>& linked);

Fault faultOfFormat(const Json& json)
{
    if (!json.is_object() || !json.contains("format") || json["format"] != recipeFormat)
        return phrase("This is not a Firn recipe: a recipe file says \"format\": \"firn-recipe\".");
    const auto version = json.find("version");
    if (version == json.end() || !version->is_number_unsigned() || version->get<std::uint64_t>() < 1)
        return phrase("\"version\" must be a whole number from 1 up.");
    if (version->get<std::uint64_t>() > recipeFormatVersion)
        return phrase("This recipe was written by a newer Firn (format version {0}); this one reads version 1.", version->dump());
    if (!json.contains("components"))
        return missing("components");
    return std::nullopt;
}

Result<Recipe> recipeFrom(const Json& json)
{
    if (auto fault = faultOfFormat(json))
        return failure(std::move(*fault));

    Recipe recipe;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "title")
            fault = readText(key, value, recipe.title);
        else if (key == "process")
            fault = readProcess(key, value, recipe.process);
        else if (key == "overrun_percent")
            fault = readNumber(key, value, 0.0, largestOverrun_percent, recipe.overrun_percent);
        else if (key == "serve_at_c")
            fault = readNumber(key, value, -largestTemperature_c, largestTemperature_c, recipe.serveAt_c);
        else if (key == "freezer_at_c")
            fault = readNumber(key, value, -largestTemperature_c, largestTemperature_c, recipe.freezerAt_c);
        else if (key == "notes")
            fault = readText(key, value, recipe.notes);
        else if (key == "components")
            fault = readComponents(value, recipe.components);
        else if (key == "ingredients")
            fault = readIngredients(value, recipe.ingredients);
        else if (key == "readings")
            fault = readReadings(value, recipe.readings);
        else if (key == "linked_recipes")
            fault = readLinked(value, recipe.linked);
        else if (key != "format" && key != "version")
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    recipe.unknown = unknown.text();
    return recipe;
}

Result<LinkedRecipe> linkedFrom(const Json& json)
{
    LinkedRecipe linked;
    for (const char* needed : {"name", "file", "recipe"}) {
        if (!json.is_object() || !json.contains(needed))
            return failure(*missing(needed));
    }
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "name") {
            fault = readText(key, value, linked.name);
        } else if (key == "file") {
            fault = readText(key, value, linked.file);
        } else if (key == "recipe") {
            auto recipe = recipeFrom(value);
            if (!recipe)
                return failure(recipe.error());
            linked.recipe = std::move(*recipe);
        } else {
            fault = phrase("The field \"{0}\" is not known here. Remove it or correct its spelling.", key);
        }
        if (fault)
            return failure(std::move(*fault));
    }
    return linked;
}

Fault readLinked(const Json& value, std::vector<LinkedRecipe>& linked)
{
    if (!value.is_array())
        return phrase("\"linked_recipes\" must be a list.");
    for (const Json& json : value) {
        auto link = linkedFrom(json);
        if (!link)
            return phrase("Linked recipe {0}: {1}", wholeNumber(linked.size() + 1), english(link.error()));
        linked.push_back(std::move(*link));
    }
    return std::nullopt;
}

}  // namespace

Result<Recipe> recipeFromJson(std::string_view text)
{
    const auto json = jsonFromText(text);
    return json ? recipeFrom(*json) : failure(json.error());
}

}  // namespace firn
