// The freezing curve against a slower way of finding it, and what must hold for every mix.

#include "freezing/freezing_curve.h"

#include "solution/water_activity.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

/// Ice at a temperature, by searching the amount of liquid whose equilibrium it is.
MassFraction iceByRootFinder(const Mix& mix, Celsius temperature)
{
    const Liquid liquid(mix);
    const auto warmer = [&](double liquidWater_g) {
        return (equilibriumTemperature(liquid.with({liquidWater_g}).activity) - temperature).value;
    };
    if (warmer(liquid.freeWater().value) <= 1e-9)
        return {0.0};
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(
        warmer, 1e-6 * liquid.freeWater().value, liquid.freeWater().value, boost::math::tools::eps_tolerance<double>(45), steps);
    return {(liquid.freeWater().value - (low + high) / 2.0) / mix.mass().value};
}

Mix mixOf(double sucrose, double glucose, double lactose, double ethanol, double minerals, double protein, double fat, double water)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sucrose};
    mix.amounts[Constituent::Glucose] = {glucose};
    mix.amounts[Constituent::Lactose] = {lactose};
    mix.amounts[Constituent::Ethanol] = {ethanol};
    mix.amounts[Constituent::Minerals] = {minerals};
    mix.amounts[Constituent::Protein] = {protein};
    mix.amounts[Constituent::Fat] = {fat};
    mix.amounts[Constituent::Water] = {water};
    return mix;
}

Mix arbitraryMix()
{
    const auto grams = [](int most) { return *rc::gen::inRange(0, most * 10) / 10.0; };
    return mixOf(grams(40), grams(20), grams(6), grams(10), grams(2), grams(6), grams(20), 20.0 + grams(80));
}

TEST(FreezingCurve, EqualsABracketingRootFinder)
{
    constexpr double interpolation = 5e-5;  // of the mix: half a hundredth of a percent
    for (const Mix& mix : {mixOf(25, 0, 0, 0, 0, 0, 0, 75), mixOf(16, 4, 5, 0, 0.8, 4, 10, 60), mixOf(20, 5, 0, 6, 0.2, 0, 0, 69),
             mixOf(2, 0, 0, 0, 0, 0, 0, 98), mixOf(0.1, 0, 0, 0, 0, 0, 0, 99.9)}) {
        const FreezingCurve curve = freezingCurve(mix);
        for (const FreezingStep& step : curve.steps) {
            if (step.temperature < curve.glassLimit)
                break;
            EXPECT_NEAR(step.ice.value, iceByRootFinder(mix, step.temperature).value, interpolation) << step.temperature.value;
        }
    }
}

TEST(FreezingCurve, BetweenItsStepsToo)
{
    const Mix mix = mixOf(25, 0, 0, 0, 0, 0, 0, 75);
    const FreezingCurve curve = freezingCurve(mix);
    for (double t_c = -2.05; t_c > -30.0; t_c -= 0.13)
        EXPECT_NEAR(curve.iceAt({t_c}).value, iceByRootFinder(mix, {t_c}).value, 3e-4) << t_c;
}

RC_GTEST_PROP(FreezingCurve, NeverLessIceWhenColder, ())
{
    const FreezingCurve curve = freezingCurve(arbitraryMix());
    for (std::size_t i = 1; i < curve.steps.size(); ++i) {
        RC_ASSERT(curve.steps[i].temperature < curve.steps[i - 1].temperature);
        RC_ASSERT(curve.steps[i].ice.value >= curve.steps[i - 1].ice.value);
        RC_ASSERT(curve.steps[i].waterFrozen.value <= 1.0);
    }
}

RC_GTEST_PROP(FreezingCurve, MoreSugarFreezesLower, ())
{
    Mix mix = arbitraryMix();
    const Celsius before = freezingCurve(mix).freezingPoint->temperature;
    mix.amounts[Constituent::Sucrose] += {*rc::gen::inRange(1, 100) / 10.0};
    RC_ASSERT(freezingCurve(mix).freezingPoint->temperature < before);
}

RC_GTEST_PROP(FreezingCurve, TwiceAsMuchFreezesTheSame, ())
{
    const Mix mix = arbitraryMix();
    Mix twice;
    twice.amounts.add(mix.amounts, 2.0);
    RC_ASSERT(
        std::abs((freezingCurve(twice).freezingPoint->temperature - freezingCurve(mix).freezingPoint->temperature).value) < 1e-9);
}

RC_GTEST_PROP(FreezingCurve, TemperatureWithIceIsTheInverse, ())
{
    const FreezingCurve curve = freezingCurve(arbitraryMix());
    if (curve.steps.size() < 3)
        return;
    const double ice = curve.steps.back().ice.value * *rc::gen::inRange(1, 100) / 100.0;
    const auto temperature = curve.temperatureWithIce({ice});
    RC_ASSERT(temperature.has_value());
    RC_ASSERT(std::abs(curve.iceAt(*temperature).value - ice) < 1e-9);
}

TEST(FreezingCurve, HasTheFreezingPointAndEveryWholeDegree)
{
    const FreezingCurve curve = freezingCurve(mixOf(25, 0, 0, 0, 0, 0, 0, 75));
    EXPECT_EQ(curve.steps.front().temperature, curve.freezingPoint->temperature);
    EXPECT_EQ(curve.steps.front().ice.value, 0.0);
    EXPECT_EQ(curve.steps.back().temperature, coldestOfCurve);
    for (int degree = -3; degree >= -30; --degree) {
        const auto has = std::any_of(curve.steps.begin(), curve.steps.end(),
            [degree](const FreezingStep& step) { return step.temperature.value == static_cast<double>(degree); });
        EXPECT_TRUE(has) << degree;
    }
    for (std::size_t i = 1; i < curve.steps.size(); ++i)
        EXPECT_LE((curve.steps[i - 1].temperature - curve.steps[i].temperature).value, 0.5 + 1e-12);
}

TEST(FreezingCurve, PureWaterFreezesAllAtOnce)
{
    const FreezingCurve curve = freezingCurve(mixOf(0, 0, 0, 0, 0, 0, 0, 100));
    EXPECT_EQ(curve.freezingPoint->temperature.value, 0.0);
    EXPECT_EQ(curve.iceAt({1.0}).value, 0.0);
    EXPECT_EQ(curve.iceAt({-0.5}).value, 1.0);
    EXPECT_EQ(curve.steps.back().waterFrozen.value, 1.0);
}

TEST(FreezingCurve, NoWaterNoFreezingPoint)
{
    EXPECT_FALSE(freezingCurve(Mix{}).freezingPoint.has_value());
    EXPECT_FALSE(freezingCurve(mixOf(100, 0, 0, 0, 0, 0, 0, 0)).freezingPoint.has_value());
    EXPECT_FALSE(freezingCurve(mixOf(0, 0, 0, 100, 0, 0, 0, 0)).freezingPoint.has_value());
}

TEST(FreezingCurve, SpiritThatFreezesBelowTheCurveHasNoSteps)
{
    const FreezingCurve curve = freezingCurve(mixOf(0, 0, 0, 50, 0, 0, 0, 50));
    EXPECT_NEAR(curve.freezingPoint->temperature.value, -37.67, 0.1);  // CRC Handbook, 50 % ethanol
    EXPECT_TRUE(curve.steps.empty());
    EXPECT_EQ(curve.iceAt({-30}).value, 0.0);
}

// Was refused by the interpolation: a mix that begins to freeze a hair above the coldest temperature has few points.
TEST(FreezingCurve, BeginningToFreezeJustAboveTheColdestTemperature)
{
    for (double ethanol = 39.0; ethanol < 43.0; ethanol += 0.05) {
        const FreezingCurve curve = freezingCurve(mixOf(0, 0, 0, ethanol, 0, 0, 0, 100 - ethanol));
        EXPECT_EQ(curve.steps.empty(), curve.freezingPoint->temperature <= coldestOfCurve) << ethanol;
    }
}

TEST(FreezingCurve, NoMoreIceFormsBelowTheGlassLimit)
{
    Mix syrup;
    syrup.amounts[Constituent::Dextrins] = {40.0};
    syrup.amounts[Constituent::Water] = {60.0};
    const FreezingCurve curve = freezingCurve(syrup);
    EXPECT_NEAR(curve.glassLimit.value, -11.0, 1e-9);
    EXPECT_EQ(curve.iceAt({-30.0}), curve.iceAt({-12.0}));
    EXPECT_GT(curve.iceAt({-12.0}), curve.iceAt({-9.0}));
}

TEST(FreezingCurve, ProteinAndGumKeepWaterFromFreezing)
{
    Mix mix = mixOf(10, 0, 0, 0, 0, 10, 0, 80);
    mix.amounts[Constituent::Hydrocolloid] = {2.0};
    EXPECT_NEAR(unfreezableWater(mix).value, 0.3 * 10 + 0.5 * 2, 1e-12);
    EXPECT_LE(freezingCurve(mix).steps.back().ice.value, (80.0 - 4.0) / mix.mass().value);
}

TEST(FreezingCurve, StrongerThanMeasuredIsSaid)
{
    EXPECT_FALSE(freezingCurve(mixOf(42, 0, 0, 0, 0, 0, 0, 58)).freezingPoint->isExtrapolated);
    EXPECT_TRUE(freezingCurve(mixOf(45, 0, 0, 0, 0, 0, 0, 55)).freezingPoint->isExtrapolated);
    const FreezingCurve curve = freezingCurve(mixOf(20, 0, 0, 0, 0, 0, 0, 80));
    EXPECT_FALSE(curve.steps[3].isExtrapolated);
    EXPECT_TRUE(curve.steps.back().isExtrapolated);
}

}  // namespace
}  // namespace firn
