// Kinds of dessert by composition: 21 CFR 135.110 and 135.140 (custard; sherbet), a UK trade code (ice cream, milk ice), McGee, On Food and Cooking
// (sherbet), German guidelines (water ices). Each edge on both sides.

#include "texture/texture_class.h"

#include "analysis/analysis.h"

#include "../shipped_catalogue.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

/// Per cent of a churned mix; milk fat is part of the fat.
struct Composed {
    double sugar = 20.0, fat = 0.0, milkFat = 0.0, milkSolidsNotFat = 0.0, yolkSolids = 0.0, acid = 0.0;
};

Mix mixOf(const Composed& composed)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {composed.sugar};
    mix.amounts[Constituent::Fat] = {composed.fat};
    mix.amounts[Constituent::Lactose] = {0.5 * composed.milkSolidsNotFat};
    mix.amounts[Constituent::Protein] = {0.5 * composed.milkSolidsNotFat};
    mix.amounts[Constituent::Acid] = {composed.acid};
    mix.milkFat = {composed.milkFat};
    mix.milkSolidsNotFat = {composed.milkSolidsNotFat};
    mix.yolkSolids = {composed.yolkSolids};
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

TextureClass churned(const Composed& composed) { return classOf(mixOf(composed), Process::Churned); }

TEST(TextureClass, EachEdgeIsWhereItsSourceHasIt)
{
    using T = TextureClass;
    EXPECT_EQ(churned({.fat = 0.5, .milkFat = 0.5, .milkSolidsNotFat = 0.45}), T::Sorbet);
    EXPECT_EQ(churned({.fat = 0.5, .milkFat = 0.5, .milkSolidsNotFat = 0.55}), T::Sherbet) << "1 % milk solids";
    EXPECT_EQ(churned({.fat = 2.9}), T::Sorbet);
    EXPECT_EQ(churned({.fat = 3.1}), T::CreamyIce) << "3 % fat";
    EXPECT_EQ(churned({.fat = 4.9, .milkFat = 4.9, .milkSolidsNotFat = 8.0}), T::MilkIce);
    EXPECT_EQ(churned({.fat = 5.1, .milkFat = 5.1, .milkSolidsNotFat = 8.0}), T::IceCream) << "5 % fat";
    EXPECT_EQ(churned({.fat = 12.0, .milkFat = 3.0, .milkSolidsNotFat = 6.1}), T::IceCream) << "olive oil and milk";
    EXPECT_EQ(churned({.fat = 12.0, .milkFat = 3.0, .milkSolidsNotFat = 5.9}), T::CreamyIce) << "6 % milk solids-not-fat";
    EXPECT_EQ(churned({.fat = 8.0, .milkFat = 8.0, .milkSolidsNotFat = 8.0, .yolkSolids = 1.35}), T::IceCream);
    EXPECT_EQ(churned({.fat = 8.0, .milkFat = 8.0, .milkSolidsNotFat = 8.0, .yolkSolids = 1.45}), T::FrozenCustard) << "1.4 % yolk";
    EXPECT_EQ(churned({.fat = 2.6, .milkFat = 2.6, .milkSolidsNotFat = 6.1, .acid = 1.0}), T::MilkIce) << "2.5 and 6 %";
    EXPECT_EQ(churned({.fat = 2.4, .milkFat = 2.4, .milkSolidsNotFat = 6.1, .acid = 1.0}), T::Sherbet);
    EXPECT_EQ(churned({.fat = 2.6, .milkFat = 2.6, .milkSolidsNotFat = 5.9, .acid = 1.0}), T::Sherbet);
    EXPECT_EQ(churned({.fat = 3.1, .milkFat = 3.1, .milkSolidsNotFat = 5.0, .acid = 1.0}), T::MilkIce) << "3 % milk fat";
    EXPECT_EQ(churned({.fat = 1.0, .milkFat = 1.0, .milkSolidsNotFat = 3.9}), T::Sherbet);
    EXPECT_EQ(churned({.fat = 1.0, .milkFat = 1.0, .milkSolidsNotFat = 4.1}), T::MilkIce) << "5 % milk solids, without acid";
    EXPECT_EQ(churned({.fat = 1.0, .milkFat = 1.0, .milkSolidsNotFat = 8.0, .acid = 0.24}), T::MilkIce);
    EXPECT_EQ(churned({.fat = 1.0, .milkFat = 1.0, .milkSolidsNotFat = 8.0, .acid = 0.26}), T::Sherbet) << "0.35 % as lactic acid";
    EXPECT_EQ(classOf(mixOf({.fat = 1.9}), Process::Scraped), T::Granita);
    EXPECT_EQ(classOf(mixOf({.fat = 2.1}), Process::Scraped), T::ScrapedIce) << "2 % fat";
    EXPECT_EQ(classOf(mixOf({.sugar = 1.9}), Process::Churned), T::Ice);
    EXPECT_EQ(classOf(mixOf({.sugar = 2.1}), Process::Churned), T::Sorbet) << "2 % solids";
}

TEST(TextureClass, AcidityIsSaidAsLacticAcid)
{
    // 21 CFR 135.140 asks for 0.35 % as lactic acid: 0.2488 g of citric acid neutralise as much (192.12/3 and 90.08 g per mole of acid groups).
    EXPECT_NEAR(percent(acidityAsLactic(mixOf({.acid = 0.2488}))), 0.35, 0.0002);
}

TEST(TextureClass, TheReasonsNameFiguresEdgesAndSources)
{
    std::vector<Sentence> reasons;
    EXPECT_EQ(classOf(mixOf({.fat = 1.0, .milkFat = 1.0, .milkSolidsNotFat = 8.0, .acid = 0.5}), Process::Churned, &reasons),
        TextureClass::Sherbet);
    std::string text;
    for (const Sentence& each : reasons)
        text += english(each) + "\n";
    for (const char* part : {"Churned", "9.0 % milk solids: 1.0 % or more",
             "1.0 % fat: less than the 5.0 % of ice cream (UK trade code)", "1.0 % milk fat: less than the 2.5 % of milk ice",
             "0.70 % acidity as lactic acid, 0.35 % or more", "US law has 1 to 2 % and 2 to 5 %"})
        EXPECT_NE(text.find(part), std::string::npos) << part << " is not in\n" << text;
}

// "Milk ice", never sherbet (C16).
TEST(TextureClass, ButtermilkAndLimeMakeASherbet)
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : std::vector<std::pair<std::string, double>>{
             {"buttermilk", 500}, {"sucrose", 180}, {"glucose", 40}, {"lime juice", 90}, {"water", 120}})
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    const Analysis found = analyse(recipe, shippedCatalogue(), conditionsOf(recipe));
    EXPECT_EQ(found.texture.textureClass, TextureClass::Sherbet);
    recipe.components.front().rows.push_back({"heavy cream", {30, Unit::Gram}, {}, {}});
    EXPECT_EQ(analyse(recipe, shippedCatalogue(), {}).texture.textureClass, TextureClass::Sherbet) << "with a little cream";
}

}  // namespace
}  // namespace firn
