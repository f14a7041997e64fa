#include "exchange/recipe_json.h"

#include "exchange/batch_correction_json.h"
#include "exchange/component_json.h"
#include "exchange/ingredient_json.h"
#include "exchange/reading_json.h"
#include "exchange/tasting_json.h"

#include <cstdint>
#include <string_view>
#include <unordered_set>

namespace firn {

namespace {

constexpr double largestTemperature_c = 100.0;  // either way from zero

Fault readComponents(const Json& value, std::vector<Component>& components)
{
    if (!value.is_array())
        return phrase("\"components\" must be a list.");
    if (value.empty())
        return std::nullopt;  // the one empty component that a new recipe has
    components.clear();
    for (const Json& json : value) {
        auto component = componentFromJson(json, components.size() + 1);
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

Result<std::string> textFrom(const Json& json)
{
    return json.is_string() ? Result<std::string>(json.get<std::string>()) : failure(phrase("write text in quotation marks."));
}

Fault readVersions(const Json& value, std::vector<Version>& versions);
Result<LinkedRecipe> linkedFrom(const Json& json);

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
            fault = readList(key, value, "Reading", readingFromJson, recipe.readings);
        else if (key == "batch_corrections")
            fault = readList(key, value, "Batch correction", batchCorrectionFromJson, recipe.batchCorrections);
        else if (key == "linked_recipes")
            fault = readList(key, value, "Linked recipe", linkedFrom, recipe.linked);
        else if (key == "tags")
            fault = readList(key, value, "Tag", textFrom, recipe.tags);
        else if (key == "favourite")
            fault = readTruth(key, value, recipe.isFavourite);
        else if (key == "archived")
            fault = readTruth(key, value, recipe.isArchived);
        else if (key == "based_on")
            fault = readText(key, value, recipe.basedOn);
        else if (key == "versions")
            fault = readVersions(value, recipe.versions);
        else if (key == "scales")
            fault = readList(key, value, "Scale", scaleFromJson, recipe.scales);
        else if (key == "tastings")
            fault = readList(key, value, "Tasting", tastingFromJson, recipe.tastings);
        else if (key == "blind_sheets")
            fault = readList(key, value, "Blind sheet", blindSheetFromJson, recipe.blindSheets);
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

Result<Version> versionFrom(const Json& json)
{
    Version version;
    UnknownFieldsReader unknown;
    for (const char* needed : {"id", "recipe"}) {
        if (!json.is_object() || !json.contains(needed))
            return failure(*missing(needed));
    }
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "id") {
            fault = readText(key, value, version.id);
        } else if (key == "name") {
            fault = readText(key, value, version.name);
        } else if (key == "note") {
            fault = readText(key, value, version.note);
        } else if (key == "date") {
            fault = readDate(key, value, version.date);
        } else if (key == "based_on") {
            fault = readText(key, value, version.basedOn);
        } else if (key == "recipe") {
            auto recipe = recipeFrom(value);
            if (!recipe)
                return failure(recipe.error());
            version.recipe = std::move(*recipe);
        } else {
            unknown.keep(key, value);
        }
        if (fault)
            return failure(std::move(*fault));
    }
    if (version.id.empty())
        return failure(phrase("\"id\" must not be empty."));
    version.unknown = unknown.text();
    return version;
}

Fault readVersions(const Json& value, std::vector<Version>& versions)
{
    if (auto fault = readList("versions", value, "Version", versionFrom, versions))
        return fault;
    std::unordered_set<std::string_view> ids;
    for (const Version& version : versions) {
        if (!ids.insert(version.id).second)
            return phrase("Two versions have the id \"{0}\". Give one of them another.", version.id);
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
