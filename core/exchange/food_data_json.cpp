#include "exchange/food_data_json.h"

#include "exchange/food_nutrients.h"
#include "exchange/food_portions.h"
#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "exchange/unique_ids.h"
#include "exchange/word_suggestions.h"
#include "units/number.h"
#include "units/text.h"

#include <array>

namespace firn {

namespace {

constexpr std::array<const char*, 5> listKeys = {"foods", "FoundationFoods", "SRLegacyFoods", "BrandedFoods", "SurveyFoods"};

bool isFood(const Json& json) { return json.is_object() && json.contains("foodNutrients"); }

std::string textAt(const Json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end())
        return {};
    if (found->is_number())
        return exactNumber(found->get<double>());
    return found->is_string() ? std::string(trimmed(found->get<std::string>())) : std::string{};
}

std::string groupOf(const Json& food)
{
    const auto category = food.find("foodCategory");
    if (category != food.end() && category->is_object())
        return textAt(*category, "description");
    const std::string group = textAt(food, "foodCategory");
    return group.empty() ? textAt(food, "brandedFoodCategory") : group;
}

/// "USDA FoodData Central, FDC 167762, NDB 9316: Strawberries, raw"
std::string recordOf(const Json& food)
{
    std::string source = "USDA FoodData Central";
    if (const std::string number = textAt(food, "fdcId"); !number.empty())
        source += ", FDC " + number;
    if (const std::string number = textAt(food, "ndbNumber"); !number.empty())
        source += ", NDB " + number;
    return source;
}

/// All foods, and the parts that hold them, wherever the file has them.
std::vector<const Json*> foodsIn(const Json& json)
{
    std::vector<const Json*> foods;
    const auto takeList = [&foods](const Json& list) {
        for (const Json& food : list)
            foods.push_back(&food);
    };
    if (isFood(json))
        foods.push_back(&json);
    else if (json.is_array())
        takeList(json);
    else if (json.is_object())
        for (const char* key : listKeys)
            if (const auto list = json.find(key); list != json.end() && list->is_array())
                takeList(*list);
    return foods;
}

Sentence notFoods()
{
    return phrase("This is not a file of foods from FoodData Central, where each food has a \"description\" and \"foodNutrients\". "
                  "Choose another file.");
}

Result<ImportedIngredient> ingredientFrom(const Json& food)
{
    ImportedIngredient imported;
    Ingredient& ingredient = imported.ingredient;
    ingredient.name = textAt(food, "description");
    if (ingredient.name.empty())
        return failure(phrase("\"description\", its name, is missing. Add it."));
    ingredient.group = groupOf(food);
    const std::string record = recordOf(food);
    ingredient.source = record + ": " + ingredient.name;

    NutritionTable table;
    if (auto problem = takeNutrients(food.at("foodNutrients"), table, imported))
        return failure(std::move(*problem));
    const auto amounts = amountsFrom(table, isDairy(ingredient) ? SugarsOf::Milk : SugarsOf::Fruit, imported.guessed);
    if (!amounts)
        return failure(amounts.error());
    ingredient.composition.per100g = *amounts;
    suggestMilkAndYolk(imported);
    suggestAllergens(imported);
    if (const auto portions = food.find("foodPortions"); portions != food.end())
        if (auto problem = takePortions(*portions, record, imported))
            return failure(std::move(*problem));
    return imported;
}

Sentence atFood(std::size_t number, const std::string& name, const Sentence& sentence)
{
    return name.empty() ? phrase("Food {0}: {1}", wholeNumber(number), english(sentence))
                        : phrase("Food {0}, “{1}”: {2}", wholeNumber(number), shortened(name), english(sentence));
}

}  // namespace

Result<std::vector<ImportedIngredient>> ingredientsFromFoodData(std::string_view text)
{
    const auto json = jsonFromText(text);
    if (!json)
        return failure(json.error());
    std::vector<ImportedIngredient> result;
    for (const Json* food : foodsIn(*json)) {
        if (!isFood(*food))
            return failure(result.empty() ? notFoods()
                                          : atFood(result.size() + 1, {},
                                              phrase("\"foodNutrients\" is missing. Add it or leave out the food.")));
        auto imported = ingredientFrom(*food);
        if (!imported)
            return failure(atFood(result.size() + 1, textAt(*food, "description"), imported.error()));
        result.push_back(std::move(*imported));
    }
    if (result.empty())
        return failure(notFoods());
    fillMissingIds(result);
    return result;
}

}  // namespace firn
