#include "analysis/batch_size.h"

#include "../shipped_catalogue.h"
#include "analysis/analysis.h"
#include "exchange/recipe_text.h"
#include "recipe/scaling.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

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
    EXPECT_EQ(whyNot(ByFactor{2.0}, Recipe{}), "Nothing in the recipe has a weight yet. Give it rows with amounts first.");
    const std::string nothing = "Enter an amount greater than zero.";
    EXPECT_EQ(whyNot(ByFactor{0.0}), nothing);
    EXPECT_EQ(whyNot(ByFactor{std::nan("")}), nothing);
    EXPECT_EQ(whyNot(ByMass{{-5.0}}), nothing);
    EXPECT_EQ(whyNot(ByPortions{-2.0, Grams{-60.0}}), nothing);
    EXPECT_EQ(whyNot(ByPan{{-530.0}, {-325.0}, {20.0}}), nothing);
    EXPECT_EQ(whyNot(ByFactor{1.1e6}), "That is more than 1000000 times the recipe. Ask for less.");
    EXPECT_EQ(whyNot(ByIngredient{0, 9, {740.0}}), "The recipe has no such row any more. Choose another ingredient.");

    Recipe vague = sorbet();
    vague.components.front().rows.push_back({"moonbeams", {2.0, Unit::Cup}, {}, {}});
    EXPECT_EQ(whyNot(ByIngredient{0, 4, {740.0}}, vague),
        "“2 cups moonbeams” has no weight. Give it an amount that can be weighed, or choose another ingredient.");
    vague.components.front().rows.front().amount.value = 1e8;
    EXPECT_EQ(
        whyNot(ByFactor{11.0}, vague), "An amount cannot be larger than 1000000000, as that of “pears” would be. Ask for less.");
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
    const Batch batch = batchOf(ByMass{{1870.0}}, {{5.0}, true}, sorbet(), shippedCatalogue()).value();
    const Recipe exact = scaled(sorbet(), batch.factor);
    ASSERT_EQ(batch.rows.size(), exact.components.front().rows.size());
    for (const BatchRow& row : batch.rows)
        EXPECT_EQ(batch.recipe.components[row.component].rows[row.row].amount, row.after.amount);
    EXPECT_DOUBLE_EQ(batch.mass.value, whole(batch.recipe).mass.value);
    EXPECT_DOUBLE_EQ(batch.finishedVolume.value, whole(batch.recipe).volume_20c.value * 1.25);
    EXPECT_EQ(batch.rounding, roundingEffect(exact, batch.recipe, shippedCatalogue()));
    EXPECT_NEAR(batch.mass.value - batch.rounding.mass.value, 1870.0, 1e-6);
}

TEST(Batch, IsExactWhereRoundingIsOff)
{
    const Batch batch = batchOf(ByFactor{1.2345}, {{0.0}, false}, sorbet(), shippedCatalogue()).value();
    EXPECT_EQ(batch.recipe, scaled(sorbet(), 1.2345));
}

TEST(Batch, NamesItsRowsAsTheCatalogueDoesInPlaceOfIds)
{
    const Batch batch =
        batchOf(ByFactor{2.0}, {}, recipeFromText("100 g sucrose\n1 pinch Salt\n2 cups moonbeams").value(), shippedCatalogue())
            .value();
    EXPECT_EQ(batch.rows[0].ingredient, shippedCatalogue().find("sucrose")->name);
    EXPECT_EQ(batch.rows[1].ingredient, "Salt");
    EXPECT_EQ(batch.rows[2].ingredient, "moonbeams");
}

std::string after(const std::string& row, double factor)
{
    // Water, so that the recipe has a weight whatever the row.
    const Recipe recipe = recipeFromText(row + "\n1 kg water").value();
    const Batch batch = batchOf(ByFactor{factor}, {}, recipe, shippedCatalogue()).value();
    return amountText(batch.rows.front().after.amount);
}

// A pinch of salt once became a teaspoon, 3 mL of vanilla 5 and 12 mL of rum 25.
TEST(Batch, RowsKeepTheirUnitWhereItCanSayTheAmount)
{
    EXPECT_EQ(after("1 pinch salt", 2.0), "2 pinches");
    EXPECT_EQ(after("0.308058 mL salt", 2.0), "0.62 mL");
    EXPECT_EQ(after("3 mL vanilla extract", 2.0), "6 mL");
    EXPECT_EQ(after("12 mL rum", 2.0), "24 mL");
    EXPECT_EQ(after("500 mL milk", 1.5), "750 mL");
    EXPECT_EQ(after("0.5 L milk", 1.5), "0.75 L");
    EXPECT_EQ(after("3 eggs", 1.5), "4 1/2 pieces");
    EXPECT_EQ(after("1 cup sugar", 1.5), "1 1/2 cups");
    EXPECT_EQ(after("2 tbsp lemon juice", 0.25), "1/2 tbsp");
    EXPECT_EQ(after("8 oz milk", 1.5), "12 oz");
    EXPECT_EQ(after("1 shot vodka", 3.0), "3 shots");
    EXPECT_EQ(after("5 % glucose", 3.0), "5 %");
}

TEST(Batch, RowsGoToASmallerSpoonAndThenToGrams)
{
    EXPECT_EQ(after("1 tbsp lemon juice", 1.0 / 6.0), "1/2 tsp");
    EXPECT_EQ(after("1 tsp lemon juice", 1.0 / 16.0), "1 pinch");
    EXPECT_EQ(after("1 cup sugar", 0.29), "58 g");
    EXPECT_EQ(after("1 tsp salt", 0.1), "0.6 g");
    EXPECT_EQ(after("7 eggs", 0.34), "119 g");
}

double between(double low, double high)
{
    constexpr int parts = 100000;
    return low * std::pow(high / low, *rc::gen::inRange(0, parts + 1) / double(parts));
}

/// One to eight rows of whatever the catalogue has, in whatever unit, from a trace to a bucket.
Recipe anyRecipeOfTheCatalogue()
{
    Recipe recipe;
    auto& rows = recipe.components.front().rows;
    const auto& ingredients = shippedCatalogue().all();
    for (int count = *rc::gen::inRange(1, 9); count > 0; --count) {
        const Unit unit = allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit;
        const double size = unit == Unit::PercentOfMix ? 20.0 : std::max(1.0, factsOf(unit).size);
        rows.push_back(
            {ingredients[*rc::gen::inRange<std::size_t>(0, ingredients.size())].id, {between(0.1, 2000.0) / size, unit}, {}, {}});
    }
    return recipe;
}

BatchSize anySize()
{
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        return ByFactor{between(0.01, 100.0)};
    case 1:
        return ByMass{{between(50.0, 20000.0)}};
    case 2:
        return ByVolume{{between(50.0, 20000.0)}};
    case 3:
        return ByPortions{double(*rc::gen::inRange(1, 200)), Grams{between(20.0, 150.0)}};
    default:
        return ByPan{{between(80.0, 530.0)}, {between(80.0, 325.0)}, {between(5.0, 100.0)}};
    }
}

// Ten thousand of them are core.scaling_of_10000_recipes.
RC_GTEST_PROP(Batch, NoRowIsOffByMoreThanTwoPerCentOrItIsSaid, ())
{
    const Recipe recipe = anyRecipeOfTheCatalogue();
    const Rounding rounding{{*rc::gen::element(0.0, 0.01, 0.1, 1.0, 2.0, 5.0)}, *rc::gen::arbitrary<bool>()};
    const auto batch = batchOf(anySize(), rounding, recipe, shippedCatalogue());
    if (!batch) {
        RC_DISCARD("nothing has a weight, or too much");
    }
    const Analysis before = whole(recipe), after = whole(batch->recipe);
    RC_ASSERT(batch->rows.size() == recipe.components.front().rows.size());
    for (const BatchRow& row : batch->rows) {
        const Row& made = batch->recipe.components[row.component].rows[row.row];
        RC_ASSERT(made.amount == row.after.amount);
        RC_ASSERT(row.before == recipe.components[row.component].rows[row.row].amount);
        if (made.amount.unit == Unit::PercentOfMix) {
            RC_ASSERT(row.before == row.after.amount);
            continue;
        }
        const Grams wanted = before.components[row.component][row.row].mass * batch->factor;
        const Grams got = after.components[row.component][row.row].mass;
        if (wanted.value <= 0.0)
            continue;  // its weight is not known
        const double deviation_percent = 100.0 * (got / wanted - 1.0);
        RC_ASSERT(std::abs(deviation_percent - row.after.deviation_percent) <= 1e-6 * std::max(1.0, std::abs(deviation_percent)));
        if (std::abs(deviation_percent) > 2.0 + 1e-6)
            RC_ASSERT(row.after.isOff());
    }
}

}  // namespace
}  // namespace firn
