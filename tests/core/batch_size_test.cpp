#include "analysis/batch_size.h"

#include "../shipped_catalogue.h"
#include "analysis/analysis.h"
#include "exchange/recipe_text.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

Recipe sorbet()
{
    Recipe recipe = recipeFromText("520 g pears\n1 cup perry\n130 g sugar\n2 tbsp lemon juice").value();
    recipe.overrun_percent = 25.0;
    return recipe;
}

double factor(const BatchSize& size) { return factorFor(size, sorbet(), shippedCatalogue()).value(); }

std::string whyNot(const BatchSize& size, const Recipe& recipe = sorbet())
{
    const auto result = factorFor(size, recipe, shippedCatalogue());
    return result ? std::string() : english(result.error());
}

Analysis whole(const Recipe& recipe) { return analyse(recipe, shippedCatalogue(), conditionsOf(recipe)); }

double finished_mL(double factor) { return whole(scaled(sorbet(), factor)).volume_20c.value * 1.25; }

TEST(BatchSize, ByFactorIsTheFactor) { EXPECT_EQ(factor(ByFactor{1.84}), 1.84); }

TEST(BatchSize, ByMassMakesThatMass)
{
    EXPECT_NEAR(whole(scaled(sorbet(), factor(ByMass{{1870.0}}))).mass.value, 1870.0, 1870.0 * 1e-9);
}

TEST(BatchSize, ByMassHoldsThroughStepsAndSharesOfTheMix)
{
    Recipe recipe = sorbet();
    recipe.components.front().rows.push_back({"glucose", {5.0, Unit::PercentOfMix}, {}, {}});
    recipe.components.front().steps = {Step{StepKind::Strain, {}, {}, HeldBack{{80.0}}, {}, {}}};
    const double found = factorFor(ByMass{{3000.0}}, recipe, shippedCatalogue()).value();
    EXPECT_NEAR(whole(scaled(recipe, found)).mass.value, 3000.0, 3000.0 * 1e-9);
}

TEST(BatchSize, ByVolumeCountsTheAir) { EXPECT_NEAR(finished_mL(factor(ByVolume{{1700.0}})), 1700.0, 1e-6); }

// 530 x 325 mm is the rim of a full gastronorm container, EN 631.
TEST(BatchSize, ByPanFillsIt) { EXPECT_NEAR(finished_mL(factor(ByPan{{530.0}, {325.0}, {20.0}})), 3445.0, 1e-6); }

TEST(BatchSize, ByPortionsOfGramsOrMillilitres)
{
    EXPECT_DOUBLE_EQ(factor(ByPortions{24.0, Grams{60.0}}), factor(ByMass{{1440.0}}));
    EXPECT_DOUBLE_EQ(factor(ByPortions{24.0, Millilitres{80.0}}), factor(ByVolume{{1920.0}}));
}

TEST(BatchSize, ByWhatThereIsOfAnIngredient)
{
    const Recipe batch = scaled(sorbet(), factor(ByIngredient{0, 0, {740.0}}));
    EXPECT_NEAR(batch.components.front().rows.front().amount.value, 740.0, 1e-9);
    EXPECT_NEAR(whole(batch).components.front().front().mass.value, 740.0, 1e-9);
}

TEST(BatchSize, SaysWhatIsWrong)
{
    EXPECT_EQ(whyNot(ByFactor{2.0}, Recipe{}), "Nothing in the recipe has a weight yet: give it rows with amounts first.");
    const std::string nothing = "Nothing would be made: ask for more than zero.";
    EXPECT_EQ(whyNot(ByFactor{0.0}), nothing);
    EXPECT_EQ(whyNot(ByFactor{std::nan("")}), nothing);
    EXPECT_EQ(whyNot(ByMass{{-5.0}}), nothing);
    EXPECT_EQ(whyNot(ByPortions{-2.0, Grams{-60.0}}), nothing);
    EXPECT_EQ(whyNot(ByPan{{-530.0}, {-325.0}, {20.0}}), nothing);
    EXPECT_EQ(whyNot(ByFactor{1.1e6}), "That is more than 1000000 times the recipe: ask for less.");
    EXPECT_EQ(whyNot(ByIngredient{0, 9, {740.0}}), "The recipe has no such row any more: choose another ingredient.");

    Recipe vague = sorbet();
    vague.components.front().rows.push_back({"moonbeams", {2.0, Unit::Cup}, {}, {}});
    EXPECT_EQ(whyNot(ByIngredient{0, 4, {740.0}}, vague),
        "“2 cups moonbeams” has no weight: give it an amount that can be weighed, or choose another ingredient.");
    vague.components.front().rows.front().amount.value = 1e8;
    EXPECT_EQ(
        whyNot(ByFactor{11.0}, vague), "An amount cannot be larger than 1000000000, as that of “pears” would be: ask for less.");
}

TEST(RoundingEffect, IsZeroForTheSameRecipe)
{
    EXPECT_EQ(roundingEffect(sorbet(), sorbet(), shippedCatalogue()), (RoundingEffect{KelvinDifference{0.0}, 0.0, {0.0}}));
}

TEST(RoundingEffect, OfMoreSugarIsSweeterAndColder)
{
    Recipe sweeter = sorbet();
    sweeter.components.front().rows[2].amount.value += 10.0;
    const RoundingEffect effect = roundingEffect(sorbet(), sweeter, shippedCatalogue());
    EXPECT_NEAR(effect.mass.value, 10.0, 1e-9);
    EXPECT_GT(effect.sugars_percentPoints, 0.5);
    EXPECT_LT(effect.freezingPoint.value().value, -0.05);
}

TEST(Batch, IsTheScaledRecipeRounded)
{
    const Rounding toFive{{5.0}, true};
    const Batch batch = batchOf(ByMass{{1870.0}}, toFive, sorbet(), shippedCatalogue()).value();
    const Recipe exact = scaled(sorbet(), batch.factor);
    EXPECT_EQ(batch.recipe, rounded(exact, toFive));
    EXPECT_DOUBLE_EQ(batch.mass.value, whole(batch.recipe).mass.value);
    EXPECT_DOUBLE_EQ(batch.finishedVolume.value, whole(batch.recipe).volume_20c.value * 1.25);
    EXPECT_EQ(batch.rounding, roundingEffect(exact, batch.recipe, shippedCatalogue()));
    EXPECT_NEAR(batch.mass.value - batch.rounding.mass.value, 1870.0, 1e-6);
}

}  // namespace
}  // namespace firn
