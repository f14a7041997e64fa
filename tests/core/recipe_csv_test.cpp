#include "exchange/recipe_csv.h"

#include "any_recipe.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

std::vector<Row> rowsOf(std::string_view csv)
{
    const auto recipe = recipeFromCsv(csv);
    EXPECT_TRUE(recipe) << csv << ": " << english(recipe.error());
    return recipe ? recipe->components.front().rows : std::vector<Row>{};
}

std::string refusal(std::string_view csv)
{
    const auto recipe = recipeFromCsv(csv);
    return recipe ? "read" : english(recipe.error());
}

const std::vector<Row> waterAndSugar = {{"water", {250, Unit::Gram}, "", ""}, {"sugar", {1.5, Unit::Cup}, "", ""}};

TEST(RecipeCsv, ReadsWithAndWithoutAHeader)
{
    EXPECT_EQ(rowsOf("ingredient,amount,unit\nwater,250,g\nsugar,1 1/2,cups\n"), waterAndSugar);
    EXPECT_EQ(rowsOf("water,250,g\nsugar,1 1/2,cups"), waterAndSugar);
}

TEST(RecipeCsv, ReadsAnyOrderAndCaseOfColumns)
{
    EXPECT_EQ(rowsOf("Unit, QUANTITY ,price,Name\ng,250,1.20,water\ncups,1½,2,sugar\n"), waterAndSugar);
}

TEST(RecipeCsv, ReadsCommaSemicolonAndTab)
{
    EXPECT_EQ(rowsOf("water;250;g\nsugar;1,5;cup\n"), waterAndSugar);
    EXPECT_EQ(rowsOf("water;250;g\nsugar;1.5;cup\n"), waterAndSugar);
    EXPECT_EQ(rowsOf("water\t250\tg\nsugar\t1,5\tcup\n"), waterAndSugar);
    EXPECT_EQ(rowsOf("water,250,g\nsugar,\"1,5\",cup\n"), waterAndSugar);
    EXPECT_EQ(rowsOf("\"water\";\"250\";g\n\"sugar\";\"1,5\";cup\n"), waterAndSugar);
}

TEST(RecipeCsv, ToleratesByteOrderMarkLineEndsAndEmptyLines)
{
    EXPECT_EQ(rowsOf("\xEF\xBB\xBFingredient,amount,unit\r\nwater,250,g\r\n\r\n,,\r\nsugar,1.5,cup"), waterAndSugar);
    EXPECT_EQ(rowsOf("water,250,g\rsugar,1.5,cup\r"), waterAndSugar);
    EXPECT_TRUE(rowsOf("").empty());
    EXPECT_TRUE(rowsOf("ingredient,amount,unit\n").empty());
}

TEST(RecipeCsv, QuotedCellsKeepEverything)
{
    EXPECT_EQ(rowsOf("\"lemon, \"\"thin\"\" \nskin\",2,piece, \" as is \"\n"),
        (std::vector<Row>{{"lemon, \"thin\" \nskin", {2, Unit::Piece}, " as is ", ""}}));
}

TEST(RecipeCsv, EmptyAmountIsZeroAndEmptyUnitCounts)
{
    EXPECT_EQ(rowsOf("salt,,\nmint,,tsp\neggs,2,\nmilk,250 ml,\nmilk,25,cl\n"),
        (std::vector<Row>{{"salt", {0, Unit::Gram}, "", ""}, {"mint", {0, Unit::Teaspoon}, "", ""},
            {"eggs", {2, Unit::Piece}, "", ""}, {"milk", {250, Unit::Millilitre}, "", ""},
            {"milk", {250, Unit::Millilitre}, "", ""}}));
}

TEST(RecipeCsv, FormulasAreTextAndTheirGuardComesOff)
{
    EXPECT_EQ(rowsOf("'=SUM(A1:A9),1,g\n'@x,1,g\n=1+1,1,g\n'plain,1,g\n''=x,1,g\n"),
        (std::vector<Row>{{"=SUM(A1:A9)", {1, Unit::Gram}, "", ""}, {"@x", {1, Unit::Gram}, "", ""},
            {"=1+1", {1, Unit::Gram}, "", ""}, {"'plain", {1, Unit::Gram}, "", ""}, {"'=x", {1, Unit::Gram}, "", ""}}));
}

TEST(RecipeCsv, RefusalsNameTheLine)
{
    EXPECT_EQ(refusal("\"a\nb\",1,g\n\"water,250,g\n"), "Line 3: a quote is opened and never closed.");
    EXPECT_EQ(
        refusal("\"water\"x,250,g\n"), "Line 1: “x” cannot stand after a closing quote; a quote inside a cell is written twice.");
    for (const std::string_view csv :
        {"ingredient,amount,unit\nwater,=1+1,g\n", "water,NaN,g\n", "water,1,smidgen\n", "a,b,c\nd,e,f\n"})
        EXPECT_EQ(refusal(csv),
            "No ingredient here has an amount. Write it in a column of its own, such as 250, and its unit in the next.")
            << csv;
    EXPECT_EQ(refusal("ingredient,amount\nwater,250\n"), "Line 1: the header needs the columns ingredient, amount and unit.");
    EXPECT_EQ(refusal("water,250,g\ncr\xe8me,1,g"), "This is not UTF-8 text at line 2, column 3. Save it as text in UTF-8.");
}

// One such record used to refuse the whole table.
TEST(RecipeCsv, ARecordThatCannotBeReadStopsNothing)
{
    const Row water{"water", {250, Unit::Gram}, "", ""};
    const auto marked = [](std::string line, std::string note = "") { return Row{std::move(line), {}, std::move(note), ""}; };
    EXPECT_EQ(rowsOf("ingredient,amount,unit,note\nwater,250,g,\nsalt,-1,g,fine\nsugar,=1+1,g,\nmilk,1e308,g,\nhoney,1,smidgen,\n"),
        (std::vector<Row>{
            water, marked("salt -1 g", "fine"), marked("sugar =1+1 g"), marked("milk 1e308 g"), marked("honey 1 smidgen")}));
    EXPECT_EQ(rowsOf("water,250,g\nlimes,2-3,,big\nhoney,½ cup + 1 tbsp,\n"),
        (std::vector<Row>{
            water, {"limes", {2.5, Unit::Piece}, "mean of 2 and 3, big", ""}, {"honey", {0.5625, Unit::Cup}, "", ""}}));
    EXPECT_EQ(rowsOf("water,250,g\nhoney,20 g\n"), (std::vector<Row>{water, {"honey", {20, Unit::Gram}, "", ""}}));
}

TEST(RecipeCsv, OnlyAWholeTableIsOne)
{
    for (const std::string_view table :
        {"water,250,g\nsugar,2-3,tbsp\n", "ingredient;amount;unit\nwater;x;g\n", "water\t250\tg\n", "salt,,\n"})
        EXPECT_TRUE(isRecipeTable(table)) << table;
    for (const std::string_view text : {"250 g sugar, fine\n1,5 l milk\n", "1/2 cup, sugar, fine\n", "200\tg\tsugar\n",
             "water,250\n", "", "ingredient,amount\nwater,250\n"})
        EXPECT_FALSE(isRecipeTable(text)) << text;
}

TEST(RecipeToCsv, QuotesAndGuards)
{
    Recipe recipe;
    recipe.components = {
        {"granita", {{"water", {250, Unit::Gram}, "", ""}, {"lemon, thin", {0.5, Unit::Piece}, "a \"b\"", ""}}, ""},
        {"cream",
            {{"=cmd|x", {1.0 / 3.0, Unit::Cup}, "-1", ""}, {"'=x", {1, Unit::Gram}, "\ttab", ""},
                {" cream ", {1, Unit::Gram}, "'", ""}},
            ""}};
    EXPECT_EQ(recipeToCsv(recipe), "ingredient,amount,unit,note\r\n"
                                   "water,250,g,\r\n"
                                   "\"lemon, thin\",0.5,piece,\"a \"\"b\"\"\"\r\n"
                                   "'=cmd|x,0.3333333333333333,cup,'-1\r\n"
                                   "''=x,1,g,\"'\ttab\"\r\n"
                                   "\" cream \",1,g,'\r\n");
}

RC_GTEST_PROP(RecipeToCsv, WhatIsWrittenIsReadBack, ())
{
    Recipe recipe;
    for (int r = *rc::gen::inRange(0, 4); r > 0; --r)
        recipe.components[0].rows.push_back({anyText(allCharacters()), anyAmount(), anyText(allCharacters()), ""});
    const auto read = recipeFromCsv(recipeToCsv(recipe));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == recipe);
}

TEST(RecipeCsv, TenThousandRowsAreReadBack)
{
    Recipe recipe;
    for (int i = 0; i < 10000; ++i)
        recipe.components[0].rows.push_back({"sugar, " + std::to_string(i), {i / 3.0, Unit::Gram}, "", ""});
    EXPECT_EQ(*recipeFromCsv(recipeToCsv(recipe)), recipe);
}

}  // namespace
}  // namespace firn
