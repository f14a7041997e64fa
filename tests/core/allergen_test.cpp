// What is named is declared: an amount that is missing, refused or tiny does not take an allergen off the list (Regulation (EU) 1169/2011, Article 21
// and annex II, which know no least amount).
#include "analysis/analysis.h"
#include "recipe/text_line.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace firn {
namespace {

std::string contained(const Recipe& recipe)
{
    for (const Caution& caution : analyse(recipe, shippedCatalogue(), {}).cautions) {
        if (const std::string text = english(caution.sentence);
            text.starts_with("Contains ") && !text.starts_with("Contains alcohol"))
            return text;
    }
    return {};
}

Component componentOf(std::initializer_list<const char*> lines)
{
    Component component;
    for (const char* line : lines)
        component.rows.push_back(rowFromLine(line));
    return component;
}

Recipe recipeOf(std::initializer_list<const char*> lines)
{
    Recipe recipe;
    recipe.components = {componentOf(lines)};
    return recipe;
}

TEST(Allergens, OfRowsWithoutAUsableAmountAreNamed)
{
    const std::string all = contained(recipeOf({"1.250 g milk", "hazelnut", "peanuts, chopped", "2 egg yolk"}));
    for (const char* allergen : {"EGG", "MILK", "PEANUT", "NUTS"})
        EXPECT_NE(all.find(allergen), std::string::npos) << allergen << " in: " << all;
}

TEST(Allergens, EachLineAloneNamesItsOwn)
{
    struct Case {
        const char* line;
        const char* allergen;
    };
    for (const Case& one : {Case{"1.250 g milk", "MILK"}, {"1,250 g whole milk", "MILK"}, {"-20 g wheat flour", "GLUTEN"},
             {"almonds, to taste", "NUTS"}, {"a handful of peanuts", "PEANUT"}, {"0 g butter", "MILK"}, {"0.001 g milk", "MILK"},
             {"1 pinch peanuts", "PEANUT"}, {"cream", "MILK"}, {"some egg yolk", "EGG"}}) {
        const std::string all = contained(recipeOf({"500 g water", one.line}));
        EXPECT_NE(all.find(one.allergen), std::string::npos) << one.line << ": " << all;
    }
}

TEST(Allergens, SharesOfTheMixThatDoNotFitAreNamed)
{
    EXPECT_NE(contained(recipeOf({"60 % milk", "50 % water"})).find("MILK"), std::string::npos);
}

TEST(Allergens, OfPartsThatAreNotFrozenAndOfLinkedRecipesAreNamed)
{
    Recipe crumble = recipeOf({"wheat flour", "1.250 g butter"});
    crumble.components.front().rows.push_back(rowFromLine("100 g sugar"));
    Recipe recipe;
    recipe.components = {componentOf({"500 g water", "150 g sugar"}), componentOf({"hazelnut"}), componentOf({"Crumble"})};
    recipe.components[0].name = "Sorbet";
    recipe.components[1].name = "Topping";
    recipe.components[1].process = Process::Unfrozen;
    recipe.components[2].name = "Base";
    recipe.linked.push_back({"Crumble", "crumble.firn", crumble});
    const std::string all = contained(recipe);
    for (const char* allergen : {"NUTS", "GLUTEN", "MILK"})
        EXPECT_NE(all.find(allergen), std::string::npos) << allergen << " in: " << all;
}

TEST(Allergens, AreNotFoundInLinesThatNameNone)
{
    EXPECT_EQ(contained(recipeOf({"500 g water", "1.250 g sugar", "lemon juice"})), std::string());
}

}  // namespace
}  // namespace firn
