#include "exchange/catalogue_json.h"

#include "exchange/json_fields.h"

#include <algorithm>
#include <cmath>
#include <unordered_set>

namespace firn {

namespace {

bool isId(std::string_view text)
{
    const auto isPlain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    return !text.empty() && std::ranges::all_of(text, isPlain) && text.front() != '-' && text.back() != '-'
           && text.find("--") == std::string_view::npos;
}

constexpr double closes_g = 1.0;  // how far a source's constituents may be from 100 g

Amounts amountsFrom(Fields& ingredient)
{
    Amounts amounts;
    const Json* object = ingredient.field("per_100_g");
    if (object == nullptr) {
        ingredient.refuse(phrase("{0}: \"per_100_g\" is missing. Add it.", ingredient.place()));
        return amounts;
    }
    Fields constituents(*object, ingredient.place());
    if (object->is_object()) {
        for (const auto& [key, value] : object->items()) {
            if (const auto constituent = constituentNamed(key)) {
                amounts[*constituent] = constituents.grams(key.c_str());
            } else {
                constituents.refuse(phrase(
                    "{0}: \"{1}\" in \"per_100_g\" is not known. Remove it or correct its spelling.", ingredient.place(), key));
            }
        }
    }
    const double total_g = amounts.total().value;
    if (std::abs(total_g - 100.0) > closes_g) {
        constituents.refuse(phrase("{0}: \"per_100_g\" adds up to {1} g. Correct it so that it adds up to 100 g.",
            ingredient.place(), Figure{total_g, 1}));
    }
    ingredient.refuse(constituents);
    return amounts;
}

Measure measureFrom(Fields& ingredient, const Json& object)
{
    Fields fields(object, ingredient.place());
    fields.allow({"unit", "grams", "note", "source"});
    const std::string symbol = fields.textThatMustBeThere("unit");
    const auto units = allUnits();
    const auto unit = std::ranges::find(units, symbol, &UnitFacts::symbol);
    if (unit == units.end() || (unit->dimension != Dimension::Volume && unit->dimension != Dimension::Count)) {
        fields.refuse(phrase("{0}: \"{1}\" is not a measure of volume or a piece. Correct the unit.", ingredient.place(), symbol));
    }
    Measure measure{
        unit == units.end() ? Unit::Cup : unit->unit, fields.grams("grams"), fields.text("note"), fields.text("source")};
    if (measure.grams.value <= 0.0) {
        fields.refuse(phrase("{0}: a measure weighs nothing. Give its \"grams\".", ingredient.place()));
    }
    ingredient.refuse(fields);
    return measure;
}

Spread spreadFrom(Fields& ingredient)
{
    const Json* object = ingredient.field("spread");
    if (object == nullptr) {
        return {};
    }
    Fields fields(*object, ingredient.place());
    fields.allow({"water_sd", "sugars_sd", "estimate"});
    Spread spread{fields.number("water_sd"), fields.number("sugars_sd"), fields.truth("estimate")};
    ingredient.refuse(fields);
    return spread;
}

/// The ingredient's id where it has one, and its number in the list where not.
std::string placeOf(const Json& object, std::size_t index)
{
    const bool hasId = object.is_object() && object.contains("id") && object.at("id").is_string();
    return "catalogue, ingredient " + (hasId ? object.at("id").get<std::string>() : std::to_string(index + 1));
}

Result<Ingredient> ingredientFrom(const Json& object, std::size_t index)
{
    Fields fields(object, placeOf(object, index));
    fields.allow({"id", "name", "synonyms", "group", "per_100_g", "milk_fat", "milk_solids_not_fat", "yolk_solids", "density_g_ml",
        "density_source", "measures", "spread", "allergens", "hazards", "source"});
    Ingredient ingredient;
    ingredient.id = fields.textThatMustBeThere("id");
    if (!isId(ingredient.id)) {
        fields.refuse(phrase("{0}: an id is made of lower-case letters, digits and single hyphens. Correct it.", fields.place()));
    }
    ingredient.name = fields.textThatMustBeThere("name");
    ingredient.synonyms = fields.texts("synonyms");
    ingredient.group = fields.text("group");
    ingredient.composition = {
        amountsFrom(fields), fields.grams("milk_fat"), fields.grams("milk_solids_not_fat"), fields.grams("yolk_solids")};
    if (const auto density_g_ml = fields.number("density_g_ml")) {
        ingredient.density = GramsPerMillilitre{*density_g_ml};
    }
    if (ingredient.density && ingredient.density->value <= 0.0) {
        fields.refuse(phrase("{0}: the density is zero. Correct or remove it.", fields.place()));
    }
    ingredient.densitySource = fields.text("density_source");
    fields.forEach("measures", [&](const Json& measure) { ingredient.measures.push_back(measureFrom(fields, measure)); });
    ingredient.spread = spreadFrom(fields);
    ingredient.allergens = fields.keys("allergens", allergenNamed);
    ingredient.hazards = fields.keys("hazards", hazardNamed);
    ingredient.source = fields.text("source");
    if (fields.problem()) {
        return failure(*fields.problem());
    }
    return ingredient;
}

}  // namespace

Result<Catalogue> catalogueFromJson(std::string_view text)
{
    const auto json = jsonFromText(text);
    if (!json) {
        return failure(json.error());
    }
    Fields fields(*json, "catalogue");
    fields.allow({"format", "version", "about", "ingredients"});
    if (fields.text("format") != "firn-catalogue" || fields.number("version") != 1.0) {
        fields.refuse(phrase(
            "This is not a catalogue of version 1. Choose a file that says \"format\": \"firn-catalogue\" and \"version\": 1."));
    }
    if (fields.field("ingredients") == nullptr) {
        fields.refuse(phrase("catalogue: \"ingredients\" is missing. Add the list."));
    }
    std::vector<Ingredient> ingredients;
    std::unordered_set<std::string> ids;
    fields.forEach("ingredients", [&](const Json& object) {
        auto ingredient = ingredientFrom(object, ingredients.size());
        if (!ingredient) {
            fields.refuse(ingredient.error());
            return;
        }
        if (!ids.insert(ingredient->id).second) {
            fields.refuse(phrase("catalogue: two ingredients have the id {0}. Give one of them another.", ingredient->id));
        }
        ingredients.push_back(std::move(*ingredient));
    });
    if (fields.problem()) {
        return failure(*fields.problem());
    }
    return Catalogue(std::move(ingredients));
}

}  // namespace firn
