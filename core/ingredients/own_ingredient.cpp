#include "ingredients/own_ingredient.h"

#include "ingredients/ingredient_id.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr double shown_g = 0.05;  // less is not seen in figures with one decimal

/// Parts are rounded by themselves in the tables that they come from, so that they may stand a little above their whole.
constexpr double rounding_g = 0.6;

/// What milk solids not fat could be part of; tables that print one figure for all sugars leave the lactose unnamed.
Grams solidsNotFat(const Amounts& amounts)
{
    return amounts.total() - amounts[Constituent::Water] - amounts[Constituent::Ethanol] - amounts[Constituent::Fat];
}

void checkPart(std::vector<IngredientFault>& faults, IngredientField field, Grams part, Grams whole, Sentence sentence)
{
    if (part > whole + Grams{rounding_g})
        faults.push_back({field, std::move(sentence)});
}

std::vector<const std::string*> namesOf(const Ingredient& ingredient)
{
    std::vector<const std::string*> names{&ingredient.name};
    for (const auto* others : {&ingredient.synonyms, &ingredient.defaultFor})
        for (const std::string& other : *others)
            names.push_back(&other);
    return names;
}

}  // namespace

std::vector<IngredientFault> faultsOf(const Ingredient& ingredient)
{
    using enum IngredientField;
    std::vector<IngredientFault> faults;
    const auto& [amounts, milkFat, milkSolidsNotFat, yolkSolids] = ingredient.composition;
    if (folded(ingredient.name).empty())
        faults.push_back({Name, phrase("The ingredient has no name yet. Write what a recipe will call it.")});
    if (const double missing_g = missingTo100g(amounts).value; std::abs(missing_g) > closesWithin.value)
        faults.push_back({Composition,
            missing_g > 0.0 ? phrase("{0} g are missing. Name what they are, or take them as water.", Figure{missing_g, 1})
                            : phrase("{0} g too much. Correct the grams until they add up to 100 g.", Figure{-missing_g, 1})});
    const auto tenth = [](Grams grams) { return Figure{grams.value, 1}; };
    const Grams fat = amounts[Constituent::Fat];
    checkPart(faults, MilkFat, milkFat, fat,
        phrase("{0} g of milk fat cannot be part of {1} g of fat. Correct one of them.", tenth(milkFat), tenth(fat)));
    checkPart(faults, MilkSolidsNotFat, milkSolidsNotFat, solidsNotFat(amounts),
        phrase("Solids other than fat come to {0} g, less than {1} g of milk solids not fat. Correct one of them.",
            tenth(solidsNotFat(amounts)), tenth(milkSolidsNotFat)));
    const Grams solids = amounts.total() - amounts[Constituent::Water];
    checkPart(faults, YolkSolids, yolkSolids, solids,
        phrase("{0} g of yolk solids cannot be part of {1} g of solids. Correct one of them.", tenth(yolkSolids), tenth(solids)));
    return faults;
}

std::optional<Sentence> faultOfName(const Ingredient& ingredient, const Catalogue& catalogue)
{
    for (const std::string* name : namesOf(ingredient)) {
        const Ingredient* other = catalogue.find(*name);
        if (!other || other->id == ingredient.id)
            continue;
        const auto others = namesOf(*other);
        if (std::ranges::any_of(others, [&](const std::string* taken) { return folded(*taken) == folded(*name); }))
            return phrase(
                "“{0}” is in the catalogue already, and recipes that name it would change. Call this one something else.", *name);
    }
    return std::nullopt;
}

Grams missingTo100g(const Amounts& per100g) { return Grams{100.0} - per100g.total(); }

Sentence closureSentence(const Amounts& per100g)
{
    const Figure total{per100g.total().value, 1};
    const double missing_g = missingTo100g(per100g).value;
    if (missing_g >= shown_g)
        return phrase("{0} g of 100 g: {1} g are missing.", total, Figure{missing_g, 1});
    if (missing_g <= -shown_g)
        return phrase("{0} g of 100 g: {1} g too much.", total, Figure{-missing_g, 1});
    return phrase("{0} g of 100 g: complete.", total);
}

Amounts withRestAsWater(Amounts per100g)
{
    Grams& water = per100g[Constituent::Water];
    water = std::max(Grams{}, water + missingTo100g(per100g));
    return per100g;
}

Amounts syrupPer100g(double brix)
{
    Amounts syrup;
    syrup[Constituent::Sucrose] = {brix};
    syrup[Constituent::Water] = {100.0 - brix};
    return syrup;
}

std::string idFor(std::string_view name, const std::function<bool(const std::string&)>& isTaken)
{
    const std::string plain = ingredientIdFrom(name);
    std::string id = plain;
    for (int number = 2; isTaken(id); ++number)
        id = plain + "-" + std::to_string(number);
    return id;
}

std::optional<std::string> callName(const Ingredient& ingredient, const Catalogue& catalogue)
{
    for (const std::string& word : {ingredient.name, ingredient.id}) {
        const Ingredient* found = catalogue.find(word);
        if (found != nullptr && found->id == ingredient.id)
            return word;
    }
    return std::nullopt;
}

}  // namespace firn
