#include "ingredients/own_ingredient.h"

#include "../shipped_catalogue.h"
#include "mix/composition_table.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace {

using namespace firn;
using enum Constituent;

Ingredient syrup(double water_g, double sucrose_g)
{
    Ingredient ingredient;
    ingredient.name = "Syrup of the house";
    ingredient.composition.per100g[Water] = {water_g};
    ingredient.composition.per100g[Sucrose] = {sucrose_g};
    return ingredient;
}

std::vector<std::string> sentencesAbout(const Ingredient& ingredient)
{
    std::vector<std::string> sentences;
    for (const IngredientFault& fault : faultsOf(ingredient))
        sentences.push_back(english(fault.sentence));
    return sentences;
}

using Sentences = std::vector<std::string>;

TEST(OwnIngredient, WithNameAnd100gMayBeKept) { EXPECT_EQ(sentencesAbout(syrup(40.0, 60.0)), Sentences()); }

TEST(OwnIngredient, WhatIsShippedHasNoFault)
{
    for (const Ingredient& ingredient : shippedCatalogue().all())
        EXPECT_EQ(sentencesAbout(ingredient), Sentences()) << ingredient.id;
}

TEST(OwnIngredient, EachFaultIsOneSentence)
{
    Ingredient ingredient = syrup(40.0, 58.5);
    ingredient.name = " ";
    EXPECT_EQ(sentencesAbout(ingredient), Sentences({"The ingredient has no name yet. Write what a recipe will call it.",
                                              "1.5 g are missing. Name what they are, or take them as water."}));
    EXPECT_EQ(sentencesAbout(syrup(44.0, 60.0)), Sentences({"4.0 g too much. Correct the grams until they add up to 100 g."}));
}

TEST(OwnIngredient, PartsStayWithinTheirWhole)
{
    Ingredient ingredient = syrup(40.0, 60.0);
    ingredient.composition.milkFat = {3.0};
    ingredient.composition.milkSolidsNotFat = {61.0};
    ingredient.composition.yolkSolids = {61.0};
    EXPECT_EQ(sentencesAbout(ingredient).size(), 3U);
    EXPECT_EQ(sentencesAbout(ingredient).front(), "3.0 g of milk fat cannot be part of 0.0 g of fat. Correct one of them.");
}

TEST(OwnIngredient, ClosureIsSaidAsOneTypes)
{
    EXPECT_EQ(english(closureSentence(syrup(38.5, 60.0).composition.per100g)), "98.5 g of 100 g: 1.5 g are missing.");
    EXPECT_EQ(english(closureSentence(syrup(42.0, 60.0).composition.per100g)), "102.0 g of 100 g: 2.0 g too much.");
    EXPECT_EQ(english(closureSentence(syrup(40.0, 60.0).composition.per100g)), "100.0 g of 100 g: complete.");
}

TEST(OwnIngredient, RestIsTakenAsWater)
{
    EXPECT_DOUBLE_EQ(withRestAsWater(syrup(10.0, 60.0).composition.per100g)[Water].value, 40.0);
    EXPECT_DOUBLE_EQ(withRestAsWater(syrup(50.0, 60.0).composition.per100g)[Water].value, 40.0);
    EXPECT_DOUBLE_EQ(withRestAsWater(syrup(50.0, 120.0).composition.per100g)[Water].value, 0.0);
}

TEST(OwnIngredient, IdIsMadeOfTheName)
{
    const auto isFree = [](const std::string&) { return false; };
    EXPECT_EQ(idFor("Crème fraîche, 30 %", isFree), "creme-fraiche-30");
    EXPECT_EQ(idFor("漢 字", isFree), "ingredient");
    EXPECT_EQ(idFor("", isFree), "ingredient");
    const std::set<std::string> taken{"pear", "pear-2"};
    EXPECT_EQ(idFor("Pear", [&](const std::string& id) { return taken.contains(id); }), "pear-3");
}

TEST(OwnIngredient, IsCalledByItsIdWhereAnotherHasItsName)
{
    Ingredient first = syrup(40.0, 60.0), second = syrup(20.0, 80.0);
    first.id = "one";
    second.id = "two";
    const Catalogue catalogue({first, second});
    EXPECT_EQ(callName(catalogue.all()[0], catalogue), "Syrup of the house");
    EXPECT_EQ(callName(catalogue.all()[1], catalogue), "two");
}

TEST(OwnIngredient, CannotBeCalledWhereAnotherHasItsNameAndItsIdForAName)
{
    Ingredient own = syrup(40.0, 60.0), builtIn = syrup(20.0, 80.0);
    own.id = "own";
    builtIn.id = "syrup-of-the-house";
    const Catalogue catalogue({own, builtIn});
    EXPECT_EQ(catalogue.find("syrup of the house")->id, "own");
    EXPECT_EQ(callName(catalogue.all()[1], catalogue), std::nullopt);
}

TEST(CompositionTable, SugarsStandUnderTheirSumAndTheWholeIsKept)
{
    for (const Ingredient& ingredient : shippedCatalogue().all()) {
        Grams whole;
        Grams sugarsUnderSum;
        for (const CompositionLine& line : compositionLines(ingredient.composition)) {
            EXPECT_GT(line.grams.value, 0.0);
            if (!line.isPart)
                whole += line.grams;
            else if (line.part == RibbonPart::Sugars)
                sugarsUnderSum += line.grams;
        }
        EXPECT_NEAR(whole.value, ingredient.composition.per100g.total().value, 1e-9) << ingredient.id;
        const double sugars_g = sugars(Mix{ingredient.composition.per100g, {}, {}, {}}).value;
        if (sugarsUnderSum.value > 0.0) {
            EXPECT_NEAR(sugarsUnderSum.value, sugars_g, 1e-9) << ingredient.id;
        }
    }
}

TEST(CompositionTable, ButterTellsItsMilkFat)
{
    const auto lines = compositionLines(shippedCatalogue().find("butter")->composition);
    const auto fat = std::ranges::find(lines, std::string_view("Fat"), &CompositionLine::label);
    ASSERT_NE(fat, lines.end());
    EXPECT_EQ((fat + 1)->label, "Milk fat");
    EXPECT_TRUE((fat + 1)->isPart);
}

}  // namespace
