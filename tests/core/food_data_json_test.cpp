#include "exchange/food_data_json.h"

#include "imported.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

using enum Constituent;

// Figures of USDA SR28 (2015), NDB 09316, strawberries, raw; the portions are its cup of slices and its medium berry. The form is that
// of FoodData Central, from memory.
const std::string strawberries = R"json({
  "fdcId": 1, "ndbNumber": 9316, "description": "Strawberries, raw", "dataType": "SR Legacy",
  "foodCategory": {"description": "Fruits and Fruit Juices"},
  "foodNutrients": [
    {"nutrient": {"id": 1051, "number": "255", "name": "Water", "unitName": "g"}, "amount": 90.95},
    {"nutrient": {"id": 1003, "number": "203", "name": "Protein", "unitName": "g"}, "amount": 0.67},
    {"nutrient": {"id": 1004, "number": "204", "name": "Total lipid (fat)", "unitName": "g"}, "amount": 0.30},
    {"nutrient": {"id": 1005, "number": "205", "name": "Carbohydrate, by difference", "unitName": "g"}, "amount": 7.68},
    {"nutrient": {"id": 1007, "number": "207", "name": "Ash", "unitName": "g"}, "amount": 0.40},
    {"nutrient": {"id": 1008, "number": "208", "name": "Energy", "unitName": "kcal"}, "amount": 32},
    {"nutrient": {"id": 1062, "number": "268", "name": "Energy", "unitName": "kJ"}, "amount": 136},
    {"nutrient": {"id": 1079, "number": "291", "name": "Fiber, total dietary", "unitName": "g"}, "amount": 2.0},
    {"nutrient": {"id": 2000, "number": "269", "name": "Sugars, total", "unitName": "g"}, "amount": 4.89},
    {"nutrient": {"id": 1010, "number": "210", "name": "Sucrose", "unitName": "g"}, "amount": 0.47},
    {"nutrient": {"id": 1011, "number": "211", "name": "Glucose", "unitName": "g"}, "amount": 1.99},
    {"nutrient": {"id": 1012, "number": "212", "name": "Fructose", "unitName": "g"}, "amount": 2.44},
    {"nutrient": {"id": 1009, "number": "209", "name": "Starch", "unitName": "g"}, "amount": 0.04},
    {"nutrient": {"id": 1093, "number": "307", "name": "Sodium, Na", "unitName": "mg"}, "amount": 1},
    {"nutrient": {"id": 1162, "number": "401", "name": "Vitamin C", "unitName": "mg"}, "amount": 58.8},
    {"nutrient": {"id": 1293, "number": "646", "name": "Fatty acids"}}
  ],
  "foodPortions": [
    {"amount": 1, "gramWeight": 166, "measureUnit": {"name": "undetermined"}, "modifier": "cup, slices"},
    {"amount": 2, "gramWeight": 24, "measureUnit": {"name": "undetermined"}, "modifier": "medium (1-1/4\" dia)"},
    {"amount": 1, "gramWeight": 147, "measureUnit": {"name": "undetermined"}, "modifier": "NLEA serving"}
  ]
})json";

auto read(std::string_view json) { return imported(ingredientsFromFoodData(json)); }

auto refusal(std::string_view json) { return refusalOf(ingredientsFromFoodData(json)); }

/// A food in the abridged form: number, amount and unit, one after the other.
std::string food(const std::string& nutrients, const std::string& more = R"("description": "Pulp")")
{
    return "{" + more + R"(, "foodNutrients": [)" + nutrients + "]}";
}

std::string grams(const char* number, const char* amount_g)
{
    return std::string(R"({"number": ")") + number + R"(", "name": "N)" + number + R"(", "amount": )" + amount_g
           + R"(, "unitName": "G"})";
}

TEST(FoodData, ReadsAFoodInFull)
{
    const auto berry = read(strawberries).front();
    const Ingredient& ingredient = berry.ingredient;
    EXPECT_EQ(ingredient.id, "strawberries-raw");
    EXPECT_EQ(ingredient.name, "Strawberries, raw");
    EXPECT_EQ(ingredient.group, "Fruits and Fruit Juices");
    EXPECT_EQ(ingredient.source, "USDA FoodData Central, FDC 1, NDB 9316: Strawberries, raw");
    EXPECT_EQ(ingredient.energy_kcalPer100g, 32.0);
    EXPECT_EQ(amount(berry, Water), 90.95);
    EXPECT_EQ(amount(berry, Sucrose), 0.47);
    EXPECT_EQ(amount(berry, Fibre), 2.0);
    EXPECT_EQ(amount(berry, Minerals), 0.40);
    EXPECT_EQ(amount(berry, Salt), 0.0);
    EXPECT_NEAR(amount(berry, Other), 7.68 - 2.0 - 0.47 - 1.99 - 2.44 - 0.04, 1e-9);
    EXPECT_NEAR(ingredient.composition.per100g.total().value, 100.0, 1e-9);
    EXPECT_TRUE(ingredient.allergens.empty());
    EXPECT_EQ(joined(berry.guessed), "Carbohydrate that is not identified, 0.74 g, counts as other solids.\n");
    EXPECT_EQ(joined(berry.unused), "Not used: Energy, Vitamin C.\n"
                                    "The portion “NLEA serving” is not used, since its measure is not clear.\n");
    EXPECT_NE(joined(berry.mapped).find("Water 90.95 g, from nutrient 255.\n"), std::string::npos);
    EXPECT_NE(joined(berry.mapped).find("Sodium 1 mg, from nutrient 307.\n"), std::string::npos);
}

TEST(FoodData, MakesMeasuresOfClearPortions)
{
    const auto measures = read(strawberries).front().ingredient.measures;
    const std::string source = "USDA FoodData Central, FDC 1, NDB 9316";
    ASSERT_EQ(measures.size(), 2u);
    EXPECT_EQ(measures[0], (Measure{Unit::Cup, {166.0}, "slices", source}));
    EXPECT_EQ(measures[1], (Measure{Unit::Piece, {12.0}, "medium (1-1/4\" dia)", source}));
    const auto cups = read(food(grams("255", "100"), R"("description": "Pulp", "foodPortions": [
        {"amount": 0.25, "gramWeight": 60, "measureUnit": {"name": "cup"}, "modifier": "mashed"},
        {"amount": 0, "gramWeight": 60, "measureUnit": {"name": "cup"}}, {"gramWeight": 15, "measureUnit": {"name": "tablespoon"}}])"))
                          .front()
                          .ingredient.measures;
    ASSERT_EQ(cups.size(), 2u);
    EXPECT_EQ(cups[0].grams, Grams{240.0});
    EXPECT_EQ(cups[0].note, "mashed");
    EXPECT_EQ(cups[1].unit, Unit::Tablespoon);
}

TEST(FoodData, ReadsTheAbridgedFormAndTheFormOfASearch)
{
    EXPECT_EQ(amount(read(food(grams("255", "87.5"))).front(), Water), 87.5);
    const auto found = read(R"({"totalHits": 1, "foods": [{"description": "Pulp", "foodCategory": "Fruits", "foodNutrients": [
        {"nutrientNumber": "255", "nutrientName": "Water", "unitName": "G", "value": 87.5}]}]})");
    EXPECT_EQ(amount(found.front(), Water), 87.5);
    EXPECT_EQ(found.front().ingredient.group, "Fruits");
}

TEST(FoodData, ReadsListsOfFoods)
{
    const std::string pulp = food(grams("255", "100"));
    const auto foods = read("[" + pulp + "," + pulp + "]");
    ASSERT_EQ(foods.size(), 2u);
    EXPECT_EQ(foods[0].ingredient.id, "pulp");
    EXPECT_EQ(foods[1].ingredient.id, "pulp-2");
    for (const char* key : {"FoundationFoods", "SRLegacyFoods", "BrandedFoods", "foods"})
        EXPECT_EQ(read("{\"" + std::string(key) + "\": [" + pulp + "]}").size(), 1u) << key;
}

TEST(FoodData, SaysWhatItGuesses)
{
    EXPECT_EQ(joined(read(food(grams("269", "9.1"))).front().guessed),
        "Sugars, 9.10 g, are not told apart: taken as half glucose, half fructose.\n"
        "Water is not given: taken as what is left of 100 g, 90.9 g.\n");
    const auto raised =
        read(food(grams("255", "90") + "," + grams("269", "10") + "," + grams("211", "6") + "," + grams("212", "2"))).front();
    EXPECT_EQ(
        joined(raised.guessed), "The single sugars add up to 8.00 g and all sugars to 10.0 g: they are raised in proportion.\n");
    EXPECT_NEAR(amount(raised, Glucose), 7.5, 1e-9);
    const auto kept = read(food(grams("255", "90") + "," + grams("269", "8") + "," + grams("211", "10"))).front();
    EXPECT_EQ(joined(kept.guessed),
        "The single sugars add up to 10.0 g, more than the 8.00 g of all sugars: the single ones are kept.\n");
    EXPECT_EQ(joined(read(food(grams("255", "90"))).front().guessed),
        "The parts add up to 90.0 g: what is missing of 100 g, 10.0 g, counts as other solids.\n");
    EXPECT_EQ(joined(read(food(grams("255", "90") + "," + grams("205", "8") + "," + grams("211", "10"))).front().guessed),
        "The parts of the carbohydrate add up to 10.0 g, more than its 8.00 g: the parts are kept.\n");
}

TEST(FoodData, TakesTheGroupForAMilkProduct)
{
    const auto milk =
        read(food(grams("255", "88.13") + "," + grams("204", "3.25") + "," + grams("203", "3.15") + "," + grams("269", "5.05"),
                 R"("description": "Fluid, whole", "foodCategory": "Dairy and Egg Products")"))
            .front();
    EXPECT_EQ(amount(milk, Lactose), 5.05);
    EXPECT_EQ(milk.ingredient.composition.milkFat, Grams{3.25});
    EXPECT_EQ(milk.ingredient.allergens, std::vector{Allergen::Milk});
    EXPECT_NE(joined(milk.guessed).find("The group speaks of milk: the allergen milk is noted. Check it on the label.\n"),
        std::string::npos);
}

TEST(FoodData, TakesTheEnergyThatIsToldAsSuchFirst)
{
    const auto energy = [](const char* number, const char* kcal) {
        return std::string(R"({"number": ")") + number + R"(", "amount": )" + kcal + R"(, "unitName": "KCAL"})";
    };
    const std::string water = grams("255", "100");
    EXPECT_EQ(
        read(food(water + "," + energy("957", "40") + "," + energy("208", "43"))).front().ingredient.energy_kcalPer100g, 43.0);
    EXPECT_EQ(read(food(water + "," + energy("957", "40"))).front().ingredient.energy_kcalPer100g, 40.0);
    EXPECT_EQ(refusal(food(water + "," + energy("208", "1000"))),
        "Food 1, “Pulp”: the energy is more than 100 g of fat have, 902 kcal. Check the number and its unit.");
}

TEST(FoodData, RefusesWithOneSentenceThatNamesTheFood)
{
    const std::string notFoods = "This is not a file of foods from FoodData Central, where each food has a \"description\" and "
                                 "\"foodNutrients\". Choose another file.";
    const std::pair<std::string, std::string> cases[] = {
        {R"({"title": "Granita"})", notFoods},
        {R"([1, 2])", notFoods},
        {"[]", notFoods},
        {"17", notFoods},
        {"", "The file is empty. Open a backup of it if there is one."},
        {R"({"description": "Pulp",
 "foodNutrients": [{)",
            "The file is not valid JSON at line 2, column 21: it may have been cut short. Open a backup "
            "of it, or correct it there."},
        {"{\"description\": \xFF}", "This is not UTF-8 text at line 1, column 17. Save it as text in UTF-8."},
        {food(grams("255", "100"), R"("fdcId": 1)"), "Food 1: \"description\", its name, is missing. Add it."},
        {"[" + food(grams("255", "100")) + R"(, {"description": "Peel"}])",
            "Food 2: \"foodNutrients\" is missing. Add it or leave out the food."},
        {food(grams("255", "\"wet\"")), "Food 1, “Pulp”: the amount of “N255” is not a number. Correct it."},
        {food(grams("255", "-1")), "Food 1, “Pulp”: the amount of “N255” is negative. Correct it."},
        {food(R"({"number": "255", "name": "Water", "amount": 1, "unitName": "IU"})"),
            "Food 1, “Pulp”: the amount of “Water” has the unit “iu”. Give it in g or mg."},
        {food(grams("255", "90") + "," + grams("204", "12")),
            "Food 1, “Pulp”: the parts of 100 g add up to 102.0 g. Correct them so that they add up to 100 g."},
        {food(grams("255", "1e300")),
            "Food 1, “Pulp”: 100 g of it have more than 100 g of “N255”. Correct the amount or its unit."},
        {food(""), "Food 1, “Pulp”: nothing is said of what it is made of. Give at least water, fat, protein and sugars."},
        {food("3"), "Food 1, “Pulp”: \"foodNutrients\" must hold objects in braces."},
        {R"({"description": "Pulp", "foodNutrients": 3})", "Food 1, “Pulp”: \"foodNutrients\" must be a list in square brackets."},
        {food(grams("255", "100"), R"("description": "Pulp", "foodPortions": [{"gramWeight": -1, "modifier": "cup"}])"),
            "Food 1, “Pulp”: the portion “cup” has a negative weight or amount. Correct it."},
        {food(grams("255", "100"), R"("description": "Pulp", "foodPortions": [3])"),
            "Food 1, “Pulp”: \"foodPortions\" must hold objects in braces."},
        {food(grams("255", "100"), R"("description": "Pulp", "foodPortions": 3)"),
            "Food 1, “Pulp”: \"foodPortions\" must be a list in square brackets."},
    };
    for (const auto& [json, sentence] : cases)
        EXPECT_EQ(refusal(json), sentence) << json;
}

}  // namespace
}  // namespace firn
