// inverse(forward(x)) = x, what happens at the ends, and what is said of readings that cannot be.
#include "readings/measurement.h"

#include "readings/readings.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Mix syrup(double sugar_percent, double alcohol_percent = 0.0)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sugar_percent};
    mix.amounts[Constituent::Ethanol] = {alcohol_percent};
    mix.amounts[Constituent::Water] = {100.0 - sugar_percent - alcohol_percent};
    return mix;
}

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0; }

std::optional<Measurement> refractometer(const Mix& mix, Celsius temperature, const Refractometer& instrument = {})
{
    const auto shown = read(instrument, mix, temperature);
    if (!shown || !shown->value)
        return std::nullopt;
    return RefractometerReading{*shown->value, temperature, instrument};
}

std::optional<Measurement> hydrometer(
    const Mix& mix, Celsius temperature, const Hydrometer& instrument = wholeScale(HydrometerScale::SpecificGravity))
{
    const auto shown = read(instrument, mix, temperature);
    if (!shown || !shown->value)
        return std::nullopt;
    return HydrometerReading{*shown->value, temperature, instrument};
}

Result<std::vector<MixEstimate>> solveOne(const Measurement& measurement, const Beforehand& known = {}, const Mix& background = {})
{
    return solve({&measurement, 1}, known, background);
}

Result<std::vector<MixEstimate>> solveBoth(const Mix& mix, Celsius temperature, const Mix& background = {})
{
    const std::vector<Measurement> both{*refractometer(mix, temperature), *hydrometer(mix, temperature)};
    return solve(both, {}, background);
}

constexpr double exact_percent = 1e-5;

RC_GTEST_PROP(Measurement, RefractometerLeadsBackToTheSugar, ())
{
    const double alcohol = between(0.0, 20.0);
    const double sugar = between(0.0, 0.84 * (100.0 - alcohol));
    const Mix mix = syrup(sugar, alcohol);
    const auto measurement = refractometer(mix, {between(0.0, 40.0)}, {0.0, 95.0, *rc::gen::arbitrary<bool>()});
    RC_PRE(measurement.has_value());
    const auto found = solveOne(*measurement, {.alcohol = fromPercent(alcohol)});
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->size() == 1u);
    RC_ASSERT(std::abs(percent(found->front().sugar) - sugar) < exact_percent);
    RC_ASSERT(found->front().sugar_sd.value > 0.0);
}

RC_GTEST_PROP(Measurement, HydrometerLeadsBackToTheSugar, ())
{
    const double alcohol = between(0.0, 20.0);
    const double sugar = between(0.0, 0.84 * (100.0 - alcohol));
    const auto scale = *rc::gen::element(HydrometerScale::Brix, HydrometerScale::SpecificGravity, HydrometerScale::Baume);
    const auto calibration = *rc::gen::element(Calibration::At20C, Calibration::At60F);
    const auto measurement = hydrometer(syrup(sugar, alcohol), {between(0.0, 40.0)}, wholeScale(scale, calibration));
    RC_PRE(measurement.has_value());
    const auto found = solveOne(*measurement, {.alcohol = fromPercent(alcohol)});
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->size() == 1u);
    RC_ASSERT(std::abs(percent(found->front().sugar) - sugar) < exact_percent);
}

RC_GTEST_PROP(Measurement, HydrometerLeadsBackToTheAlcohol, ())
{
    const double alcohol = between(0.0, 60.0);
    const double sugar = between(0.0, 0.8 * (100.0 - alcohol));
    const auto found = solveOne(*hydrometer(syrup(sugar, alcohol), {between(0.0, 40.0)}), {.sugar = fromPercent(sugar)});
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->size() == 1u);
    RC_ASSERT(std::abs(percent(found->front().alcohol) - alcohol) < exact_percent);
    RC_ASSERT(found->front().alcohol_sd.value > 0.0);
}

RC_GTEST_PROP(Measurement, BothLeadBackToSugarAndAlcohol, ())
{
    const double sugar = between(0.0, 40.0);
    const double alcohol_mL = between(0.0, 20.0);
    // % by volume at 20 °C to % by mass, by the density of the mix.
    const double alcohol_g = alcohol_mL * ethanolDensity_20c.value;
    double alcohol = alcohol_g;
    for (int i = 0; i < 20; ++i)
        alcohol = alcohol_g / densityOf(syrup(sugar, alcohol), {20.0})->value;
    const auto found = solveBoth(syrup(sugar, alcohol), {between(0.0, 20.0)});
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->size() == 1u);
    RC_ASSERT(std::abs(percent(found->front().sugar) - sugar) < 0.001);
    RC_ASSERT(std::abs(percent(found->front().alcohol) - alcohol) < 0.001);
}

/// A rhubarb and perry base with milk in it: acid, minerals, fibre, fat, several sugars.
Mix base()
{
    Mix mix = syrup(18, 4);
    mix.amounts[Constituent::Glucose] = {3.0};
    mix.amounts[Constituent::Fructose] = {3.0};
    mix.amounts[Constituent::Lactose] = {1.5};
    mix.amounts[Constituent::Acid] = {1.0};
    mix.amounts[Constituent::Minerals] = {0.5};
    mix.amounts[Constituent::Fat] = {1.0};
    mix.amounts[Constituent::Fibre] = {1.0};
    mix.milkSolidsNotFat = {3.0};
    return mix;
}

RC_GTEST_PROP(Measurement, ARecipesOtherThingsStayAsTheyAre, ())
{
    const double factor = between(0.2, 2.0);
    const double alcoholFactor = between(0.2, 2.0);
    Mix made = base();
    for (const Constituent sugar : {Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose})
        made.amounts[sugar] = made[sugar] * factor;
    const auto byOne = solveOne(*refractometer(made, {12.0}), {}, base());
    RC_ASSERT(byOne.has_value());
    RC_ASSERT(std::abs((byOne->front().sugar - shareOf(sugars(made), made)).value) < 1e-7);
    RC_ASSERT(std::abs((byOne->front().alcohol - shareOf(made[Constituent::Ethanol], made)).value) < 1e-7);
    RC_ASSERT(std::abs(byOne->front().mix[Constituent::Lactose] / byOne->front().mix[Constituent::Water] - 1.5 / 78.0) < 1e-9);

    made.amounts[Constituent::Ethanol] = made[Constituent::Ethanol] * alcoholFactor;
    const auto byBoth = solveBoth(made, {12.0}, base());
    RC_ASSERT(byBoth.has_value());
    RC_ASSERT(std::abs((byBoth->front().sugar - shareOf(sugars(made), made)).value) < 1e-6);
    RC_ASSERT(std::abs((byBoth->front().alcohol - shareOf(made[Constituent::Ethanol], made)).value) < 1e-6);
    RC_ASSERT(std::abs(byBoth->front().mix.mass().value - 1.0) < 1e-9);
}

// The index of strong spirit falls again: where the sugar is known, a weak and a strong mix read alike.
TEST(Measurement, TwoAnswersAreBothGiven)
{
    const auto found = solveOne(*refractometer(syrup(0, 90), {20.0}), {.sugar = MassFraction{0.0}});
    ASSERT_TRUE(found.has_value());
    ASSERT_EQ(found->size(), 2u);
    EXPECT_NEAR(percent(found->back().alcohol), 90.0, 0.001);
    EXPECT_LT(percent(found->front().alcohol), 80.0);
    for (const MixEstimate& estimate : *found)
        EXPECT_NEAR(*readings(estimate.mix, {20.0})->refractometer_brix, *readings(syrup(0, 90), {20.0})->refractometer_brix, 1e-6);
}

// With both instruments no two mixes of water, sugar and alcohol read alike, up to the strongest.
TEST(Measurement, BothInstrumentsTogetherHaveOneAnswer)
{
    for (double alcohol = 0.0; alcohol <= 90.0; alcohol += 7.5) {
        for (double sugar = 0.0; sugar <= 0.84 * (100.0 - alcohol); sugar += 7.0) {
            const auto found = solveBoth(syrup(sugar, alcohol), {20.0});
            ASSERT_TRUE(found.has_value()) << sugar << " " << alcohol;
            EXPECT_EQ(found->size(), 1u) << sugar << " " << alcohol;
            EXPECT_NEAR(percent(found->front().sugar), sugar, 0.001);
            EXPECT_NEAR(percent(found->front().alcohol), alcohol, 0.001);
        }
    }
}

TEST(Measurement, UncertaintyIsThatOfTheInstruments)
{
    const auto sugarOnly = solveOne(RefractometerReading{25.0, {20.0}, {}});
    EXPECT_NEAR(percent(sugarOnly->front().sugar_sd), combined(errorsOf(Refractometer{}, syrup(25), {20.0})), 0.005);
    const auto coarse = solveOne(RefractometerReading{25.0, {20.0}, {0.0, 90.0, false, 0.5}});
    EXPECT_GT(coarse->front().sugar_sd, sugarOnly->front().sugar_sd);
    const auto both = solveBoth(syrup(25, 8), {20.0});
    EXPECT_GT(both->front().sugar_sd, sugarOnly->front().sugar_sd);
    EXPECT_GT(percent(both->front().alcohol_sd), 0.2);
    EXPECT_LT(percent(both->front().alcohol_sd), 1.5);
}

// An error of one instrument by its sd moves the answer by no more than the stated uncertainties allow.
TEST(Measurement, AnErrorOfAnInstrumentIsWithinTheUncertainty)
{
    const Mix mix = syrup(25, 8);
    auto index = std::get<RefractometerReading>(*refractometer(mix, {20.0}));
    auto density = std::get<HydrometerReading>(*hydrometer(mix, {20.0}));
    const auto exact = solveBoth(mix, {20.0});
    index.brix += combined(errorsOf(index.instrument, mix, {20.0}));
    density.value -= combined(errorsOf(density.instrument, mix, {20.0}));
    const std::vector<Measurement> off{index, density};
    const auto found = solve(off);
    EXPECT_NEAR(found->front().alcohol.value, exact->front().alcohol.value, 1.5 * exact->front().alcohol_sd.value);
    EXPECT_GT(std::abs(found->front().alcohol.value - exact->front().alcohol.value), 0.5 * exact->front().alcohol_sd.value);
    EXPECT_NEAR(found->front().sugar.value, exact->front().sugar.value, 1.5 * exact->front().sugar_sd.value);
}

TEST(Measurement, PairThatIsOffByItsUncertaintyIsASyrupWithoutAlcohol)
{
    const std::vector<Measurement> pair{
        RefractometerReading{24.9, {20.0}, {}}, HydrometerReading{1.1063, {20.0}, wholeScale(HydrometerScale::SpecificGravity)}};
    const auto found = solve(pair);
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->front().alcohol.value, 0.0);
    EXPECT_GT(found->front().alcohol_sd.value, 0.0);
    EXPECT_NEAR(percent(found->front().sugar), 24.95, 0.06);
}

TEST(Measurement, PairWithKnownAlcoholIsTheirMean)
{
    const Mix mix = syrup(22, 10);
    std::vector<Measurement> pair{*refractometer(mix, {25.0}), *hydrometer(mix, {25.0})};
    const auto found = solve(pair, {.alcohol = fromPercent(10.0)});
    ASSERT_TRUE(found.has_value());
    EXPECT_NEAR(percent(found->front().sugar), 22.0, 1e-4);
    EXPECT_LT(found->front().sugar_sd, solveOne(pair[0], {.alcohol = fromPercent(10.0)})->front().sugar_sd);
    const auto bySugar = solve(pair, {.sugar = fromPercent(22.0)});
    EXPECT_NEAR(percent(bySugar->front().alcohol), 10.0, 1e-4);
    const auto wrong = solve(pair, {.alcohol = fromPercent(2.0)});
    ASSERT_FALSE(wrong.has_value());
    EXPECT_NE(english(wrong.error()).find("refractometer says"), std::string::npos);
}

std::string reason(const std::vector<Measurement>& measurements, const Beforehand& known = {}, const Mix& background = {})
{
    const auto found = solve(measurements, known, background);
    return found ? "found" : english(found.error());
}

Measurement gravity(double value, double temperature_c = 20.0)
{
    return HydrometerReading{value, {temperature_c}, wholeScale(HydrometerScale::SpecificGravity)};
}

Measurement brix(double value, double temperature_c = 20.0) { return RefractometerReading{value, {temperature_c}, {}}; }

TEST(Measurement, WhatCannotBeIsSaid)
{
    const auto expect = [](const std::string& sentence, std::string_view part) {
        EXPECT_NE(sentence.find(part), std::string::npos) << sentence;
    };
    expect(reason({brix(-2.0)}), "less than no sugar");
    expect(reason({brix(99.0)}), "off the scale");
    expect(reason({RefractometerReading{40.0, {20.0}, {0.0, 32.0}}}), "from 0.0 to 32.0");
    expect(reason({brix(94.0)}), "as much as 94.0 °Bx");
    expect(reason({gravity(0.7)}), "0.700 SG is lighter than pure alcohol, which shows 0.79");
    expect(reason({HydrometerReading{-45.0, {20.0}, wholeScale(HydrometerScale::Baume)}}), "lighter than pure alcohol");
    expect(reason({HydrometerReading{-3.0, {20.0}, wholeScale(HydrometerScale::Brix)}}), "specific gravity");
    expect(reason({gravity(0.97)}), "must hold more alcohol");
    expect(reason({gravity(1.49)}), "No mix shows as much as 1.490 SG");
    expect(reason({brix(3.0)}, {.alcohol = fromPercent(20.0)}), "Even without sugar");
    expect(reason({gravity(1.05)}, {.sugar = fromPercent(5.0)}), "no amount of alcohol");
    expect(reason({brix(10.0), gravity(1.100)}), "by the hydrometer the refractometer must show at least 23.8");
    expect(reason({brix(60.0), gravity(0.990)}), "No mix shows 60.0 °Bx and 0.990 SG together");
    expect(reason({brix(20.0), gravity(1.48)}), "denser than any syrup");
    expect(reason({brix(20.0)}, {.sugar = fromPercent(90.0)}), "from 0.0 to 84.0 %");
    expect(reason({brix(20.0)}, {.sugar = fromPercent(0.5)}, base()), "outside what this mix can hold");
    expect(reason({brix(20.0, -3.0)}), "0 °C to 60 °C");
    expect(reason({brix(20.0, 50.0)}, {.alcohol = fromPercent(5.0)}), "Let it cool");
    expect(reason({brix(20.0, 50.0)}), "found");
    expect(reason({}), "Give one reading");
    expect(reason({brix(20.0), brix(21.0)}), "Give one reading");
    expect(reason({brix(20.0)}, {fromPercent(20.0), fromPercent(5.0)}), "nothing to find");
    expect(reason({brix(20.0)}, {.alcohol = fromPercent(100.0)}), "less than 100");
    expect(reason({brix(20.0)}, {},
               [] {
                   Mix dry;
                   dry.amounts[Constituent::Sucrose] = {1.0};
                   return dry;
               }()),
        "no water");
}

}  // namespace
}  // namespace firn
