#include "analysis/steps.h"

#include "readings/readings.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Mix puree()
{
    Mix mix;
    mix.amounts[Constituent::Water] = {850.0};
    mix.amounts[Constituent::Fructose] = {60.0};
    mix.amounts[Constituent::Glucose] = {40.0};
    mix.amounts[Constituent::Fibre] = {40.0};
    mix.amounts[Constituent::Acid] = {10.0};
    return mix;
}

StepOutcome after(const Mix& mix, Loss loss, const std::vector<WeighedRow>& rows = {})
{
    return outcomesOf({Step{StepKind::Strain, {}, {}, std::move(loss), {}, {}}}, mix, rows).front();
}

TEST(Steps, AStrainerHoldsPulpFirstAndThenLiquidAsItIs)
{
    const StepOutcome found = after(puree(), HeldBack{{100.0}});
    EXPECT_NEAR(found.lost.mass().value, 100.0, 1e-9);
    EXPECT_NEAR(found.lost[Constituent::Fibre].value, 40.0, 1e-9);
    EXPECT_NEAR(found.lost[Constituent::Water] / found.lost[Constituent::Fructose], 850.0 / 60.0, 1e-9);
    EXPECT_NEAR(found.after[Constituent::Fibre].value, 0.0, 1e-9);
}

TEST(Steps, AStrainerWithRoomForLessThanThePulp)
{
    const StepOutcome found = after(puree(), HeldBack{{10.0}});
    EXPECT_NEAR(found.lost[Constituent::Fibre].value, 10.0, 1e-9);
    EXPECT_NEAR(found.lost[Constituent::Water].value, 0.0, 1e-9);
}

TEST(Steps, SpentLeavesTakeLiquidAndWhatWasNotExtracted)
{
    Composition leaves;
    leaves.per100g[Constituent::Fibre] = {70.0};
    leaves.per100g[Constituent::Sucrose] = {20.0};
    leaves.per100g[Constituent::Water] = {10.0};
    Mix mix;
    mix.add(leaves, {20.0});
    mix.amounts[Constituent::Water] += {500.0};
    const StepOutcome found = after(mix, Steeped{"tea", 2.5, 50.0}, {{"tea", &leaves, {20.0}}});
    EXPECT_FALSE(found.problem.has_value());
    EXPECT_NEAR(found.after[Constituent::Fibre].value, 0.0, 1e-9);
    // 14 g fibre, 2 g sugar that stayed in the leaves, and 50 g of liquid.
    EXPECT_NEAR(found.lost.mass().value, 14.0 + 2.0 + 50.0, 1e-9);
    EXPECT_GT(found.after[Constituent::Sucrose].value, 1.5);
}

TEST(Steps, BoilingToAMassLeavesThatMass)
{
    const StepOutcome found = after(puree(), BoiledToMass{{700.0}});
    EXPECT_NEAR(found.after.mass().value, 700.0, 1e-9);
    EXPECT_EQ(found.after[Constituent::Fructose], puree()[Constituent::Fructose]);
}

TEST(Steps, AlcoholBoilsOffFasterThanWater)
{
    Mix wine;
    wine.amounts[Constituent::Water] = {880.0};
    wine.amounts[Constituent::Ethanol] = {100.0};
    wine.amounts[Constituent::Glucose] = {20.0};
    const StepOutcome found = after(wine, BoiledToMass{{500.0}});
    EXPECT_NEAR(found.after.mass().value, 500.0, 1e-9);
    EXPECT_LT(found.after[Constituent::Ethanol].value, 1.0);
}

TEST(Steps, BoilingToAReadingReadsIt)
{
    const StepOutcome found = after(puree(), BoiledToBrix{30.0});
    EXPECT_NEAR(*readings(found.after, {20.0})->refractometer_brix, 30.0, 1e-6);
}

TEST(Steps, ImpossibleLossesAreSaidAndChangeNothing)
{
    for (const Loss& loss : {Loss{HeldBack{{5000.0}}}, Loss{BoiledToMass{{5000.0}}}, Loss{BoiledToMass{{1.0}}},
             Loss{BoiledToBrix{2.0}}, Loss{Steeped{"nothing", 1.0, 0.0}}}) {
        const StepOutcome found = after(puree(), loss);
        ASSERT_TRUE(found.problem.has_value());
        EXPECT_EQ(found.after, puree());
    }
}

TEST(Steps, EachStepStartsWhereTheLastOneEnded)
{
    const auto outcomes =
        outcomesOf({Step{StepKind::Heat, 90.0, 5.0, {}, {}, {}}, Step{StepKind::Strain, {}, {}, HeldBack{{100.0}}, {}, {}},
                       Step{StepKind::Reduce, {}, {}, BoiledToMass{{600.0}}, {}, {}}},
            puree(), {});
    ASSERT_EQ(outcomes.size(), 3u);
    EXPECT_EQ(outcomes[0].after, puree());
    EXPECT_NEAR(outcomes[2].after.mass().value, 600.0, 1e-9);
}

// Whatever is done, nothing appears and nothing vanishes. CTest runs this one over 10,000 recipes.
RC_GTEST_PROP(Steps, MassIsKeptThroughAnyChain, ())
{
    const auto grams = [](int most) { return Grams{*rc::gen::inRange(0, most * 10) / 10.0}; };
    Mix mix;
    for (const Constituent c : {Constituent::Sucrose, Constituent::Glucose, Constituent::Fibre, Constituent::Starch,
             Constituent::Ethanol, Constituent::Fat, Constituent::Protein, Constituent::Lactose, Constituent::Acid})
        mix.amounts[c] = grams(200);
    mix.amounts[Constituent::Water] = grams(1000) + Grams{1.0};
    mix.milkFat = mix[Constituent::Fat] * 0.5;
    Composition leaves;
    leaves.per100g[Constituent::Fibre] = {70.0};
    leaves.per100g[Constituent::Sucrose] = {25.0};
    leaves.per100g[Constituent::Water] = {5.0};
    const Grams leafMass = grams(50);
    mix.add(leaves, leafMass);

    std::vector<Step> steps;
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i) {
        Step step;
        switch (*rc::gen::inRange(0, 5)) {
        case 0:
            step.loss = HeldBack{grams(500)};
            break;
        case 1:
            step.loss = Steeped{"leaves", *rc::gen::inRange(0, 50) / 10.0, static_cast<double>(*rc::gen::inRange(0, 101))};
            break;
        case 2:
            step.loss = BoiledToMass{grams(1500)};
            break;
        case 3:
            step.loss = BoiledToBrix{static_cast<double>(*rc::gen::inRange(0, 80))};
            break;
        default:
            break;
        }
        steps.push_back(step);
    }
    Mix before = mix;
    for (const StepOutcome& outcome : outcomesOf(steps, mix, {{"leaves", &leaves, leafMass}})) {
        for (std::size_t i = 0; i < constituentCount; ++i) {
            const auto c = static_cast<Constituent>(i);
            RC_ASSERT(outcome.after[c].value >= -1e-9);
            RC_ASSERT(outcome.lost[c].value >= -1e-9);
            RC_ASSERT(std::abs((outcome.after[c] + outcome.lost[c] - before[c]).value) <= 1e-9 * (1.0 + before[c].value));
        }
        RC_ASSERT(std::abs((outcome.after.mass() + outcome.lost.mass() - before.mass()).value) <= 1e-9 * before.mass().value);
        RC_ASSERT(
            std::abs((outcome.after.milkFat + outcome.lost.milkFat - before.milkFat).value) <= 1e-9 * (1.0 + before.milkFat.value));
        before = outcome.after;
    }
}

}  // namespace
}  // namespace firn
