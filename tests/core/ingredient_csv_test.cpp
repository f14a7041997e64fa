#include "exchange/ingredient_csv.h"

#include "exchange/ingredient_files.h"
#include "solution/alcohol_by_volume.h"

#include "imported.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

using enum Constituent;

auto read(std::string_view csv) { return imported(ingredientsFromCsv(csv)); }

auto refusal(std::string_view csv) { return refusalOf(ingredientsFromCsv(csv)); }

TEST(IngredientCsv, ReadsFirnsOwnColumns)
{
    const auto jam =
        read("id,name,synonyms,group,water,fat,protein,sucrose,other,energy_kcal,density_g_ml,density_source,allergens,"
             "source,milk_fat\n"
             "plum-jam,Plum jam,jam|plum spread,Fruit,35,0.2,0.4,60,4.4,250,1.33,scales,sulphites|Milk,our kitchen,0.1\n")
            .front();
    const Ingredient& ingredient = jam.ingredient;
    EXPECT_EQ(ingredient.id, "plum-jam");
    EXPECT_EQ(ingredient.name, "Plum jam");
    EXPECT_EQ(ingredient.synonyms, (std::vector<std::string>{"jam", "plum spread"}));
    EXPECT_EQ(ingredient.group, "Fruit");
    EXPECT_EQ(ingredient.source, "our kitchen");
    EXPECT_EQ(ingredient.densitySource, "scales");
    EXPECT_EQ(ingredient.allergens, (std::vector{Allergen::Sulphites, Allergen::Milk}));
    EXPECT_EQ(ingredient.energy_kcalPer100g, 250.0);
    EXPECT_EQ(ingredient.density, GramsPerMillilitre{1.33});
    EXPECT_EQ(ingredient.composition.milkFat, Grams{0.1});
    EXPECT_EQ(amount(jam, Water), 35.0);
    EXPECT_EQ(amount(jam, Sucrose), 60.0);
    EXPECT_EQ(amount(jam, Other), 4.4);
    EXPECT_TRUE(jam.guessed.empty()) << joined(jam.guessed);
    EXPECT_NE(joined(jam.mapped).find("60.00 g, from the column “sucrose”."), std::string::npos);
}

TEST(IngredientCsv, ReadsTheHeadersOfNutritionTables)
{
    // An invented label. 100 - 1.5 - 1 - 6.5 - 0.8 - 0.1 = 90.1 g water; 6.5 - 4 = 2.5 g carbohydrate besides the sugars.
    const auto drink =
        read("FOOD;Fat (g);PROTEIN [g];Carbohydrate (g/100 g);of which sugars;Dietary fiber (mg);Salt;Energy (kJ);Price\n"
             "Hemp drink;1,5;1;6.5;4,0;800;0,10;209.2;2\n")
            .front();
    EXPECT_EQ(drink.ingredient.id, "hemp-drink");
    EXPECT_EQ(amount(drink, Fat), 1.5);
    EXPECT_EQ(amount(drink, Glucose), 2.0);
    EXPECT_EQ(amount(drink, Fructose), 2.0);
    EXPECT_EQ(amount(drink, Fibre), 0.8);
    EXPECT_EQ(amount(drink, Salt), 0.1);
    EXPECT_NEAR(amount(drink, Other), 2.5, 1e-9);
    EXPECT_NEAR(amount(drink, Water), 90.1, 1e-9);
    EXPECT_NEAR(*drink.ingredient.energy_kcalPer100g, 50.0, 1e-9);
    EXPECT_EQ(joined(drink.guessed), "Sugars, 4.00 g, are not told apart: taken as half glucose, half fructose.\n"
                                     "The carbohydrate is taken not to hold the fibre, as on labels of the European Union.\n"
                                     "Carbohydrate that is not identified, 2.50 g, counts as other solids.\n"
                                     "Water is not given: taken as what is left of 100 g, 90.1 g.\n");
    EXPECT_EQ(joined(drink.unused), "The column “Price” is not used.\n");
}

TEST(IngredientCsv, TellsWhetherCarbohydrateHoldsTheFibre)
{
    // USDA SR28, NDB 09316: 90.95 + 0.67 + 0.30 + 7.68 + 0.40 = 100.00, with 2.0 g of fibre within the 7.68.
    const auto berry =
        read("name,water,protein,fat,carbohydrate,fibre,sugars,ash\nStrawberry,90.95,0.67,0.30,7.68,2.0,4.89,0.40\n").front();
    EXPECT_NEAR(amount(berry, Other), 7.68 - 2.0 - 4.89, 1e-9);
    EXPECT_NEAR(berry.ingredient.composition.per100g.total().value, 100.0, 1e-9);
    EXPECT_NE(joined(berry.guessed).find("is taken to hold the fibre"), std::string::npos);
    const auto told = read("name,water,total carbohydrate,fibre,sugars\nPulp,90,8,2,5\n").front();
    EXPECT_NEAR(amount(told, Other), 1.0 + 2.0, 1e-9);  // 8 - 2 - 5 not identified, 100 - 90 - 8 missing
}

// 29 % vol was once taken as 29 g where a cook wrote it so. By header or by cell, it is converted by the density of the whole.
TEST(IngredientCsv, TakesAlcoholInPercentByVolume)
{
    for (const std::string_view csv : {"name,sucrose,alcohol (% vol)\nLiqueur,40,29\n", "name,sucrose,ABV\nLiqueur,40,29\n",
             "name,sucrose,Alcohol by volume\nLiqueur,40,29 %\n", "name,sucrose,alcohol\nLiqueur,40,29 % vol\n",
             "name;sucrose;ethanol_vol\nLiqueur;40;29,0\n"}) {
        const auto liqueur = read(csv).front();
        EXPECT_NEAR(alcoholByVolume_percent(liqueur.ingredient.composition.per100g), 29.0, 1e-6) << csv;
        EXPECT_NEAR(liqueur.ingredient.composition.per100g.total().value, 100.0, 1e-9) << csv;
        EXPECT_NE(joined(liqueur.guessed).find("Alcohol, 29.0 % vol, is "), std::string::npos) << joined(liqueur.guessed);
    }
    const auto wine = read("name,water,abv,acid\nWine,86.9,12,0.6\n").front();
    EXPECT_EQ(amount(wine, Water), 86.9);
    EXPECT_NEAR(alcoholByVolume_percent(wine.ingredient.composition.per100g), 12.0, 1e-6);
}

TEST(IngredientCsv, TakesSodiumForSaltWhereThereIsMuch)
{
    const auto plum = read("name,water,ash,sodium (mg),sugars\nPlum,89,1,40,10\n").front();
    EXPECT_EQ(amount(plum, Salt), 0.0);
    EXPECT_EQ(amount(plum, Minerals), 1.0);
    const auto brine = read("name,water,ash,sodium (g)\nBrine,90,10,3.8\n").front();
    EXPECT_NEAR(amount(brine, Salt), 9.5, 1e-9);
    EXPECT_NEAR(amount(brine, Minerals), 0.5, 1e-9);
    EXPECT_EQ(joined(brine.guessed), "Sodium, 3800 mg, is taken for 9.50 g of salt.\n");
}

TEST(IngredientCsv, SuggestsMilkYolkAndAllergensFromWordsAndSaysSo)
{
    const auto foods = read("name,category,water,fat,protein,sugars,ash\n"
                            "\"Milk, whole\",Dairy,88.1,3.3,3.2,4.7,0.7\n"
                            "\"Egg yolk, raw\",Dairy and eggs,52.3,26.5,15.9,3.6,1.7\n"
                            "Coconut milk,Plants,72,20,2,5,1\n");
    EXPECT_EQ(amount(foods[0], Lactose), 4.7);
    EXPECT_EQ(foods[0].ingredient.composition.milkFat, Grams{3.3});
    EXPECT_NEAR(foods[0].ingredient.composition.milkSolidsNotFat.value, 3.2 + 4.7 + 0.7, 1e-9);
    EXPECT_EQ(foods[0].ingredient.allergens, std::vector{Allergen::Milk});
    EXPECT_EQ(joined(foods[0].guessed),
        "Sugars, 4.70 g, are not told apart: taken as lactose, as in milk.\n"
        "Taken for a milk product by its group: milk fat 3.30 g, milk solids-not-fat 8.60 g. Correct them "
        "where it has other fat or protein too.\n"
        "The name speaks of “milk”: the allergen milk is noted. Check it on the label.\n");
    EXPECT_NEAR(foods[1].ingredient.composition.yolkSolids.value, 26.5 + 15.9 + 1.7, 1e-9);
    EXPECT_EQ(foods[1].ingredient.composition.milkFat, Grams{});
    EXPECT_EQ(foods[1].ingredient.allergens, std::vector{Allergen::Egg});
    EXPECT_TRUE(foods[2].ingredient.allergens.empty());
}

TEST(IngredientCsv, AColumnOfAllergensIsTheLastWord)
{
    const auto foods = read("name,allergens,water,fat,milk_fat\nAlmond milk,,100,,\nButter,milk,16,82,82\n");
    EXPECT_TRUE(foods[0].ingredient.allergens.empty());
    EXPECT_EQ(foods[1].ingredient.allergens, std::vector{Allergen::Milk});
}

TEST(IngredientCsv, MakesIdsThatAreUnique)
{
    const auto foods =
        read("id,name,water\n,Crème fraîche (30 %),100\n,creme fraiche 30,100\ncreme-fraiche-30-2,other,100\n,日本,100\n");
    EXPECT_EQ(foods[0].ingredient.id, "creme-fraiche-30");
    EXPECT_EQ(foods[1].ingredient.id, "creme-fraiche-30-3");
    EXPECT_EQ(foods[3].ingredient.id, "ingredient");
}

TEST(IngredientCsv, FormulasAreText)
{
    const auto foods = read("name,water,source\n=1+1,100,@home\n'-plum,100,+b\n");
    EXPECT_EQ(foods[0].ingredient.name, "=1+1");
    EXPECT_EQ(foods[0].ingredient.source, "@home");
    EXPECT_EQ(foods[1].ingredient.name, "-plum");
    EXPECT_EQ(refusal("name,water\nplum,=1+1\n"),
        "Line 2: “=1+1” in the column “water” is not an amount. Enter a number from 0 up, such "
        "as 4.5, or leave the cell empty.");
}

TEST(IngredientCsv, RefusesWithOneSentenceThatNamesTheLine)
{
    const std::pair<const char*, const char*> cases[] = {
        {"", "The file is empty: its first line has to name the columns, and one of them has to be “name”."},
        {"name,Alcohol (%)\nMint liqueur,29\n",
            "Line 1: “Alcohol (%)” could be % of the weight or of the volume. Write “(g)” or “(% vol)”."},
        {"name,alcohol,alcohol (% vol)\n", "Line 1: the columns “alcohol” and “alcohol (% vol)” mean the same. Keep one of them."},
        {"name,alcohol\nMint liqueur,29 %\n",
            "Line 2: “29 %” in the column “alcohol” is more than a number. Enter only the number; its "
            "unit belongs in the header."},
        {"name,sugar,abv\nMint liqueur,70,60\n",
            "Line 2: 60.0 % vol has no room beside 70.0 g of other constituents. Correct one of them."},
        {"name,water\n", "The file has a header and no ingredient below it. Add a line for each."},
        {"plum,87\nsugar,0\n", "Line 1: the first line has to name the columns, and one of them has to be “name”."},
        {"name,fat,Total fat (g)\n", "Line 1: the columns “fat” and “Total fat (g)” mean the same. Keep one of them."},
        {"name,fat (oz)\n",
            "Line 1: “oz” is not a unit for the column “fat (oz)”. Give grams or mg per 100 g, % vol for alcohol, kcal "
            "or kJ for energy, g/mL for density."},
        {"name,water\nplum,87\n\n\"two\nlines\",100\n,50\n", "Line 6: the name is missing. Add it."},
        {"name,water\nplum,wet\n", "Line 2: “wet” in the column “water” is not an amount. Enter a number from 0 up, such as "
                                   "4.5, or leave the cell empty."},
        {"name,water\nplum,-87\n", "Line 2: “-87” in the column “water” is not an amount. Enter a number from 0 up, such as "
                                   "4.5, or leave the cell empty."},
        {"name,water\nplum,87 g\n", "Line 2: “87 g” in the column “water” is more than a number. Enter only the number; its unit "
                                    "belongs in the header."},
        {"name;sodium (mg)\nplum;1,234\n", "Line 2: “1,234” in the column “sodium (mg)” could be thousands or a decimal. Write it "
                                           "with a point or without the comma."},
        {"name,water,fat\nplum,87,24.5\n",
            "Line 2: the parts of 100 g add up to 111.5 g. Correct them so that they add up to 100 g."},
        {"name,water\nplum,\n", "Line 2: nothing is said of what it is made of. Give at least water, fat, protein and sugars."},
        {"id,name,water\na,A,100\nb,B,100\na,C,100\n", "Line 4: the id “a” stands in line 2 already. Give one of them another."},
        {"id,name,water\nPlum 1,A,100\n",
            "Line 2: “Plum 1” is not a valid id. Use lower-case letters, digits and single hyphens, or leave the cell empty."},
        {"name,allergens,water\nA,milk|dust,100\n",
            "Line 2: Firn does not know the allergen “dust”. Correct its spelling, or leave it out."},
        {"name,water,fat\nplum,87\n",
            "Line 2: it has 2 cells where the first line has 3: complete a line that was cut short, and put a "
            "cell with a comma in quotes."},
        {"name,water,fat\nplum,87,0,25\n",
            "Line 2: it has 4 cells where the first line has 3: complete a line that was cut short, and put "
            "a cell with a comma in quotes."},
        {"name,water\n\"plum,87\n", "Line 2: a quote is opened and never closed."},
        {"name,water\nplum,87,\xFF\n", "This is not UTF-8 text at line 2, column 9. Save it as text in UTF-8."},
        {"name,water,energy\nplum,100,903\n",
            "Line 2: the energy is more than 100 g of fat have, 902 kcal. Check the number and its unit."},
        {"name,water,fat,milk_fat\nice,60,10,12\n",
            "Line 2: milk fat, milk solids-not-fat and yolk solids are parts of the fat and the solids, "
            "and here they are more. Correct them."},
        {"name,water,density\nplum,100,0\n", "Line 2: the density is zero. Correct it, or leave the cell empty."},
    };
    for (const auto& [csv, sentence] : cases)
        EXPECT_EQ(refusal(csv), sentence) << csv;
}

TEST(IngredientCsv, IsAllOrNothing) { EXPECT_FALSE(ingredientsFromCsv("name,water\nplum,100\npear,200\n")); }

TEST(IngredientCsv, ReadsTenThousandRows)
{
    std::string csv = "name,water,sucrose\n";
    for (int i = 0; i < 10000; ++i)
        csv += "Syrup,40,60\n";
    const auto foods = read(csv);
    ASSERT_EQ(foods.size(), 10000u);
    EXPECT_EQ(foods.back().ingredient.id, "syrup-10000");
}

TEST(IngredientFiles, PicksTheReaderByContent)
{
    const auto count = [](const char* contents, const char* name) {
        const auto imported = ingredientsFromContents(contents, name);
        return imported ? std::to_string(imported->size()) + " " + imported->front().ingredient.source : english(imported.error());
    };
    EXPECT_EQ(count("\xEF\xBB\xBFname,water\nA,100\nB,100\n", "/somewhere/berries.csv"), "2 Read from berries.csv.");
    EXPECT_EQ(
        count(
            R"({"format":"firn-catalogue","version":1,"ingredients":[{"id":"a","name":"A","per_100_g":{"water":100},"source":"s"}]})",
            "own.json"),
        "1 s");
    EXPECT_EQ(count(R"([{"description":"A","foodNutrients":[{"number":"255","amount":100,"unitName":"G"}]}])", "-"),
        "1 USDA FoodData Central: A");
    EXPECT_EQ(count(R"({"format":"firn-recipe","version":1})", "x.firn"),
        "x.firn: This is not a catalogue of version 1. Choose a file that says \"format\": \"firn-catalogue\" and \"version\": 1.");
    EXPECT_EQ(count("name,water\nA,x\n", "a.csv").substr(0, 15), "a.csv: Line 2: ");
}

TEST(IngredientFiles, TellsWhatTheCatalogueHasAlready)
{
    Ingredient milk;
    milk.id = "whole-milk";
    milk.name = "Whole milk";
    milk.synonyms = {"milk"};
    const Catalogue catalogue({milk});
    EXPECT_FALSE(collisionWith(catalogue, read("name,water\nPlum,100\n")));
    const auto same = collisionWith(catalogue, read("name,water\nPlum,100\nMilk,100\n"));
    ASSERT_TRUE(same);
    EXPECT_EQ(english(*same),
        "“milk” already means Whole milk in the catalogue. Give the imported ingredient another id and name, or leave it out.");
    EXPECT_TRUE(collisionWith(catalogue, read("id,name,water\nwhole-milk,Plum,100\n")));
}

}  // namespace
}  // namespace firn
