#include "exchange/ingredient_json.h"

#include "exchange/json_fields.h"
#include "ingredients/ingredient_id.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

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
    if (std::abs(total_g - 100.0) > closesWithin.value) {
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

Json jsonFrom(const Measure& measure)
{
    Json json = {{"unit", factsOf(measure.unit).symbol}, {"grams", measure.grams.value}};
    if (!measure.note.empty())
        json["note"] = measure.note;
    if (!measure.source.empty())
        json["source"] = measure.source;
    return json;
}

Json jsonFrom(const Spread& spread)
{
    Json json = Json::object();
    if (spread.water_sd)
        json["water_sd"] = *spread.water_sd;
    if (spread.sugars_sd)
        json["sugars_sd"] = *spread.sugars_sd;
    if (spread.isEstimate)
        json["estimate"] = true;
    return json;
}

}  // namespace

Result<Ingredient> ingredientFromJson(const Json& object, const std::string& place)
{
    Fields fields(object, place);
    fields.allow({"id", "name", "synonyms", "default_for", "group", "per_100_g", "milk_fat", "milk_solids_not_fat", "yolk_solids",
        "density_g_ml", "density_source", "measures", "spread", "allergens", "hazards", "source", "energy_kcal", "energy_note"});
    Ingredient ingredient;
    ingredient.id = fields.textThatMustBeThere("id");
    if (!isIngredientId(ingredient.id)) {
        fields.refuse(phrase("{0}: an id is made of lower-case letters, digits and single hyphens. Correct it.", fields.place()));
    }
    ingredient.name = fields.textThatMustBeThere("name");
    ingredient.synonyms = fields.texts("synonyms");
    ingredient.defaultFor = fields.texts("default_for");
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
    ingredient.energy_kcalPer100g = fields.number("energy_kcal");
    ingredient.energyNote = fields.text("energy_note");
    if (fields.problem()) {
        return failure(*fields.problem());
    }
    return ingredient;
}

std::string ingredientToJson(const Ingredient& ingredient)
{
    Json json = {{"id", ingredient.id}, {"name", ingredient.name}};
    const auto text = [&json](const char* key, const std::string& value) {
        if (!value.empty())
            json[key] = value;
    };
    const auto grams = [&json](const char* key, Grams value) {
        if (value.value != 0.0)
            json[key] = value.value;
    };
    if (!ingredient.synonyms.empty())
        json["synonyms"] = ingredient.synonyms;
    if (!ingredient.defaultFor.empty())
        json["default_for"] = ingredient.defaultFor;
    text("group", ingredient.group);
    json["per_100_g"] = Json::object();
    for (const ConstituentFacts& facts : allConstituents())
        if (const Grams amount = ingredient.composition.per100g[facts.constituent]; amount.value != 0.0)
            json["per_100_g"][std::string(facts.key)] = amount.value;
    grams("milk_fat", ingredient.composition.milkFat);
    grams("milk_solids_not_fat", ingredient.composition.milkSolidsNotFat);
    grams("yolk_solids", ingredient.composition.yolkSolids);
    if (ingredient.density)
        json["density_g_ml"] = ingredient.density->value;
    text("density_source", ingredient.densitySource);
    for (const Measure& measure : ingredient.measures)
        json["measures"].push_back(jsonFrom(measure));
    if (const Json spread = jsonFrom(ingredient.spread); !spread.empty())
        json["spread"] = spread;
    for (const Allergen allergen : ingredient.allergens)
        json["allergens"].push_back(keyOf(allergen));
    for (const Hazard hazard : ingredient.hazards)
        json["hazards"].push_back(keyOf(hazard));
    text("source", ingredient.source);
    if (ingredient.energy_kcalPer100g)
        json["energy_kcal"] = *ingredient.energy_kcalPer100g;
    text("energy_note", ingredient.energyNote);
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace firn
