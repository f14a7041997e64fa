#include "recipe/scaling.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Recipe recipe()
{
    Recipe result;
    result.components.front().rows = {{"sugar", {150.0, Unit::Gram}, {}, {}}, {"water", {1.5, Unit::Cup}, {}, {}},
        {"egg yolk", {3.0, Unit::Piece}, {}, {}}, {"glucose", {5.0, Unit::PercentOfMix}, {}, {}}};
    result.components.front().steps = {Step{StepKind::Strain, {}, {}, HeldBack{{80.0}}, {}, {}},
        Step{StepKind::Reduce, {}, {}, BoiledToMass{{300.0}}, {}, {}}, Step{StepKind::Reduce, {}, {}, BoiledToBrix{60.0}, {}, {}}};
    return result;
}

TEST(Scaling, MultipliesAmountsAndMassesOfStepsButNotShares)
{
    const Recipe twice = scaled(recipe(), 2.0);
    const auto& rows = twice.components.front().rows;
    EXPECT_EQ(rows[0].amount.value, 300.0);
    EXPECT_EQ(rows[1].amount.value, 3.0);
    EXPECT_EQ(rows[3].amount.value, 5.0);
    const auto& steps = twice.components.front().steps;
    EXPECT_EQ(std::get<HeldBack>(steps[0].loss).mass.value, 160.0);
    EXPECT_EQ(std::get<BoiledToMass>(steps[1].loss).mass.value, 600.0);
    EXPECT_EQ(std::get<BoiledToBrix>(steps[2].loss).brix, 60.0);
}

RC_GTEST_PROP(Scaling, ThereAndBackIsTheSame, ())
{
    const double factor = *rc::gen::inRange(1, 100000) / 997.0;
    const Recipe back = scaled(scaled(recipe(), factor), 1.0 / factor);
    for (std::size_t i = 0; i < recipe().components.front().rows.size(); ++i) {
        const double before = recipe().components.front().rows[i].amount.value;
        RC_ASSERT(std::abs(back.components.front().rows[i].amount.value - before) <= 1e-12 * before);
    }
}

TEST(Rounding, ToTheScaleAndToSpoons)
{
    Recipe odd;
    odd.components.front().rows = {{"sugar", {152.4, Unit::Gram}, {}, {}}, {"gum", {0.3, Unit::Gram}, {}, {}},
        {"water", {1.4, Unit::Cup}, {}, {}}, {"salt", {0.1, Unit::Teaspoon}, {}, {}}, {"egg", {2.3, Unit::Piece}, {}, {}},
        {"milk", {503.0, Unit::Millilitre}, {}, {}}, {"cream", {0.1524, Unit::Kilogram}, {}, {}},
        {"nothing", {0.0, Unit::Gram}, {}, {}}};
    const auto rows = rounded(odd, {{1.0}, true}).components.front().rows;
    EXPECT_DOUBLE_EQ(rows[0].amount.value, 152.0);
    EXPECT_DOUBLE_EQ(rows[1].amount.value, 1.0);  // never nothing
    EXPECT_DOUBLE_EQ(rows[2].amount.value, 1.0 + 1.0 / 3.0);
    EXPECT_DOUBLE_EQ(rows[3].amount.value, 0.125);
    EXPECT_DOUBLE_EQ(rows[4].amount.value, 2.5);
    EXPECT_DOUBLE_EQ(rows[5].amount.value, 505.0);
    EXPECT_DOUBLE_EQ(rows[6].amount.value, 0.152);
    EXPECT_EQ(rows[7].amount.value, 0.0);
    EXPECT_EQ(rounded(odd, {{1.0}, false}).components.front().rows[2].amount.value, 1.4);
}

TEST(Rounding, TakesASmallerSpoonWhereTheCupWouldMoveTheAmountTooMuch)
{
    const auto one = [](double value, Unit unit) {
        Recipe recipe;
        recipe.components.front().rows = {{"water", {value, unit}, {}, {}}};
        return rounded(recipe, {}).components.front().rows[0].amount;
    };
    EXPECT_EQ(one(0.2, Unit::Cup), (Amount{3.25, Unit::Tablespoon}));
    EXPECT_EQ(one(0.85, Unit::Cup), (Amount{14.0, Unit::Tablespoon}));
    EXPECT_EQ(one(0.01, Unit::Cup), (Amount{0.5, Unit::Teaspoon}));
    EXPECT_EQ(one(0.1, Unit::MetricCup), (Amount{1.0 + 2.0 / 3.0, Unit::MetricTablespoon}));
    EXPECT_EQ(one(1.5, Unit::Cup), (Amount{1.5, Unit::Cup}));
    EXPECT_EQ(one(0.001, Unit::Teaspoon), (Amount{0.125, Unit::Teaspoon}));
}

RC_GTEST_PROP(Rounding, NeverMovesACupByMoreThanATwentiethDownToATeaspoon, ())
{
    const Unit unit =
        *rc::gen::element(Unit::Cup, Unit::Quart, Unit::Tablespoon, Unit::MetricCup, Unit::ImperialPint, Unit::FluidOunce);
    const double value = *rc::gen::inRange(1, 100000) / 3331.0;
    Recipe one;
    one.components.front().rows = {{"water", {value, unit}, {}, {}}};
    const Amount after = rounded(one, {}).components.front().rows[0].amount;
    const double before_mL = value * factsOf(unit).size;
    const double after_mL = after.value * factsOf(after.unit).size;
    const double quarterTeaspoon_mL = 1.25;
    RC_ASSERT(std::abs(after_mL - before_mL) <= std::max(0.05 * before_mL, quarterTeaspoon_mL));
}

RC_GTEST_PROP(Rounding, NeverMovesAWeightByMoreThanAStep, ())
{
    const double step_g = *rc::gen::element(0.1, 1.0, 2.0, 5.0);
    Recipe one;
    one.components.front().rows = {{"sugar", {*rc::gen::inRange(1, 100000) / 13.0, Unit::Gram}, {}, {}}};
    const double before = one.components.front().rows[0].amount.value;
    const double after = rounded(one, {{step_g}, true}).components.front().rows[0].amount.value;
    RC_ASSERT(std::abs(after - before) <= (before < step_g / 2.0 ? step_g : step_g / 2.0 + 1e-9));
    RC_ASSERT(std::abs(after / step_g - std::round(after / step_g)) < 1e-6);
}

}  // namespace
}  // namespace firn
