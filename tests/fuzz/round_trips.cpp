#include "subjects.h"

#include "exchange/catalogue_json.h"
#include "exchange/files.h"
#include "exchange/food_data_json.h"
#include "exchange/ingredient_csv.h"
#include "exchange/ingredient_files.h"
#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_jsonld.h"
#include "exchange/recipe_text.h"
#include "units/amount.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace firn {

namespace {

template <class T, class Fault>
bool holds(const tl::expected<T, Fault>& result, const T& expected)
{
    return result && *result == expected;
}

/// Everything that Firn can write, it can read again.
bool isReadableInEveryFormat(const Recipe& recipe)
{
    return holds(recipeFromJson(recipeToJson(recipe)), recipe) && recipeFromText(recipeToText(recipe));
}

/// What was imported can be kept in a catalogue, and comes back from there as it was.
bool canBeKept(const Result<std::vector<ImportedIngredient>>& imported)
{
    if (!imported)
        return !english(imported.error()).empty();
    std::vector<Ingredient> ingredients;
    for (const ImportedIngredient& each : *imported)
        ingredients.push_back(each.ingredient);
    const auto kept = catalogueFromJson(catalogueToJson(ingredients));
    return kept && std::ranges::equal(kept->all(), ingredients);
}

}  // namespace

bool ingredientCsvCanBeKept(std::string_view input) { return canBeKept(ingredientsFromCsv(input)); }
bool foodDataCanBeKept(std::string_view input) { return canBeKept(ingredientsFromFoodData(input)); }

bool catalogueReadsBack(std::string_view input)
{
    if (!canBeKept(ingredientsFromContents(std::string(input), "foods")))
        return false;
    const auto catalogue = catalogueFromJson(input);
    if (!catalogue)
        return !english(catalogue.error()).empty();
    const std::string written = catalogueToJson(catalogue->all());
    const auto again = catalogueFromJson(written);
    return again && std::ranges::equal(again->all(), catalogue->all()) && catalogueToJson(again->all()) == written;
}

bool textReadsBack(std::string_view input)
{
    const auto recipe = recipeFromText(input);
    if (!recipe)
        return !english(recipe.error()).empty();
    return holds(recipeFromText(recipeToText(*recipe)), *recipe) && isReadableInEveryFormat(*recipe);
}

bool jsonReadsBack(std::string_view input)
{
    for (const char* name : {"-", "a.firn", "a.json", "a.jsonld", "a.csv", "a.txt"})
        if (const auto recipe = recipeFromContents(std::string(input), name); recipe && !isReadableInEveryFormat(*recipe))
            return false;
    const auto recipe = recipeFromJson(input);
    if (!recipe)
        return !english(recipe.error()).empty();
    const std::string written = recipeToJson(*recipe);
    return isReadableInEveryFormat(*recipe) && recipeToJson(*recipeFromJson(written)) == written;
}

bool jsonLdReadsBack(std::string_view input)
{
    const auto recipe = recipeFromJsonLd(input);
    return recipe ? isReadableInEveryFormat(*recipe) : !english(recipe.error()).empty();
}

bool csvReadsBack(std::string_view input)
{
    const auto recipe = recipeFromCsv(input);
    if (!recipe)
        return !english(recipe.error()).empty();
    return holds(recipeFromCsv(recipeToCsv(*recipe)), *recipe) && isReadableInEveryFormat(*recipe);
}

bool quantityReadsBack(std::string_view input)
{
    if (const auto unit = leadingUnit(input); unit && unit->length > input.size())
        return false;
    if (const auto named = unitNamed(input); named && unitNamed(factsOf(*named).symbol) != named)
        return false;
    const auto number = leadingNumber(input);
    if (number && (!startsWithNumber(input) || number->length > input.size()))
        return false;
    const auto amount = parseAmount(input);
    if (!amount)
        return !english(amount.error().sentence).empty();
    if (faultOfAmount(amount->value) || std::isnan(amount->value))
        return false;
    const double halfOfLastDecimal = 0.5e-6 + amount->value * std::numeric_limits<double>::epsilon();
    const auto shown = parseAmount(amountText(*amount));
    const std::string exact = exactAmountNumber(*amount) + " " + std::string(factsOf(amount->unit).symbol);
    return shown && shown->unit == amount->unit && std::abs(shown->value - amount->value) <= halfOfLastDecimal
           && holds(parseAmount(exact), *amount);
}

}  // namespace firn
