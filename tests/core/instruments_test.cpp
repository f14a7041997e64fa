// Instruments with scales of their own: limits, compensation, calibration, glass, and the errors that go with them.
#include "readings/hydrometer.h"
#include "readings/jar.h"
#include "readings/readings.h"
#include "readings/refractometer.h"
#include "solution/sucrose.h"
#include "solution/volume.h"

#include "syrup_mix.h"

#include <gtest/gtest.h>
#include <numbers>

namespace firn {
namespace {

bool names(const std::vector<ErrorPart>& errors, std::string_view word)
{
    for (const ErrorPart& part : errors) {
        if (english(part.reason).find(word) != std::string::npos)
            return true;
    }
    return false;
}

TEST(Hydrometer, ReadsWaterAtTheEndOfItsScale)
{
    Mix water;
    for (int tenths = 150; tenths <= 200; ++tenths) {
        water.amounts[Constituent::Water] = {tenths * 0.777};
        const auto reading = read(wholeScale(HydrometerScale::Brix, Calibration::At20C), water, {tenths / 10.0});
        ASSERT_TRUE(reading);
        EXPECT_NEAR(reading->value.value_or(0.0), 0.0, 0.5);
    }
}

TEST(Refractometer, BeyondItsScaleItShowsNothing)
{
    const Refractometer weak{0.0, 32.0};
    const auto within = read(weak, syrup(32, 68), {20.0});
    EXPECT_EQ(within->onScale, OnScale::Yes);
    EXPECT_NEAR(*within->value, 32.0, 1e-6);
    const auto above = read(weak, syrup(33, 67), {20.0});
    EXPECT_EQ(above->onScale, OnScale::Above);
    EXPECT_FALSE(above->value.has_value());
    EXPECT_EQ(read({28.0, 62.0}, syrup(20, 80), {20.0})->onScale, OnScale::Below);
    EXPECT_EQ(read(weak, syrup(0.1, 99.9), {30.0})->onScale, OnScale::Below);  // warm water reads less than nothing
    EXPECT_FALSE(read(weak, Mix{}, {20.0}).has_value());
    for (const Refractometer& scale : commonRefractometers())
        EXPECT_LT(scale.from_brix, scale.to_brix);
}

TEST(Refractometer, CompensatedItReadsSyrupAsItIsAtAnyTemperature)
{
    const Refractometer instrument{0.0, 95.0, true};
    for (const double temperature_c : {10.0, 20.0, 30.0}) {
        for (const double brix : {0.0, 12.0, 40.0, 80.0})
            EXPECT_NEAR(*read(instrument, syrup(brix, 100.0 - brix), {temperature_c})->value, brix, 1e-6);
    }
    // In spirit it corrects for a syrup, whose index changes less with temperature than that of alcohol.
    const double warm = *read(instrument, syrup(20, 60, 20), {30.0})->value;
    EXPECT_LT(warm, *read(instrument, syrup(20, 60, 20), {20.0})->value - 0.1);
}

TEST(Refractometer, WithoutCompensationItReadsAsReadingsSay)
{
    for (const double temperature_c : {8.0, 20.0, 31.0}) {
        const Mix mix = syrup(18, 74, 8);
        EXPECT_NEAR(*read(Refractometer{}, mix, {temperature_c})->value, *readings(mix, {temperature_c})->refractometer_brix, 1e-9);
    }
}

TEST(Refractometer, ItsErrorsHaveReasons)
{
    const Refractometer plain;
    const Refractometer compensated{0.0, 32.0, true, 0.2};
    EXPECT_TRUE(names(errorsOf(plain, syrup(20, 80), {31.0}), "temperature"));
    EXPECT_GT(combined(errorsOf(plain, syrup(20, 80), {40.0})), combined(errorsOf(plain, syrup(20, 80), {20.0})));
    EXPECT_TRUE(names(errorsOf(compensated, syrup(20, 80), {40.0}), "compensation ends"));
    EXPECT_FALSE(names(errorsOf(compensated, syrup(20, 80), {25.0}), "compensation ends"));
    EXPECT_TRUE(names(errorsOf(plain, syrup(20, 60, 20), {20.0}), "alcohol"));
    Mix milk = syrup(10, 80);
    milk.milkSolidsNotFat = {9.0};
    EXPECT_GT(combined(errorsOf(plain, milk, {20.0})), 0.5);
    EXPECT_GT(combined(errorsOf({58.0, 90.0, false, 0.5}, syrup(70, 30), {20.0})), 0.25);
}

TEST(Hydrometer, TheGlassHasLessRoomWhenCold)
{
    // Water at 10 °C, 0.99970 g/mL, is 0.99825 g/mL times 1.00145; the glass made for 20 °C is smaller by 25e-6 * 10.
    const Hydrometer instrument = wholeScale(HydrometerScale::SpecificGravity);
    const double density = waterDensity({10.0}).value * (1.0 - 25e-6 * 10.0);
    EXPECT_NEAR(*read(instrument, syrup(0, 100), {10.0})->value, (density - 0.0012) / (waterDensity({20.0}).value - 0.0012), 1e-9);
}

TEST(Hydrometer, SixtyFahrenheitReadsLessInTheSameSyrup)
{
    const Mix mix = syrup(30, 70);
    const double at20 = *read(wholeScale(HydrometerScale::SpecificGravity), mix, {20.0})->value;
    const double at60F = *read(wholeScale(HydrometerScale::SpecificGravity, Calibration::At60F), mix, {20.0})->value;
    // Water at 60 °F is 1.00084 times as dense as at 20 °C, and the glass 0.0001 smaller.
    EXPECT_NEAR(at20 - at60F, 0.0009 - 0.0001, 0.0002);
    EXPECT_NEAR(temperatureOf(Calibration::At60F).value, 15.5556, 1e-4);
}

TEST(Hydrometer, ScalesAgreeAndEnd)
{
    const Mix mix = syrup(25, 75);
    EXPECT_NEAR(*read(wholeScale(HydrometerScale::Brix), mix, {20.0})->value, 25.0, 1e-6);
    EXPECT_NEAR(*read(wholeScale(HydrometerScale::Baume), mix, {20.0})->value, readings(mix, {20.0})->baume, 1e-9);
    EXPECT_NEAR(*read(wholeScale(HydrometerScale::SpecificGravity), mix, {20.0})->value,
        readings(mix, {20.0})->specificGravity_20_20, 1e-9);
    const Hydrometer weak{HydrometerScale::Brix, Calibration::At20C, 0.0, 20.0, 0.5};
    EXPECT_EQ(read(weak, mix, {20.0})->onScale, OnScale::Above);
    EXPECT_EQ(read(weak, syrup(0, 90, 10), {20.0})->onScale, OnScale::Below);
    EXPECT_FALSE(read(weak, Mix{}, {20.0}).has_value());
    for (const Hydrometer& scale : commonHydrometers())
        EXPECT_EQ(read(scale, syrup(20, 80), {20.0})->onScale, OnScale::Yes);
}

TEST(Hydrometer, WhatItShowsLeadsBackToTheDensity)
{
    for (const auto scale : {HydrometerScale::Brix, HydrometerScale::SpecificGravity, HydrometerScale::Baume}) {
        for (const auto calibration : {Calibration::At20C, Calibration::At60F}) {
            const Hydrometer instrument = wholeScale(scale, calibration);
            for (const double temperature_c : {5.0, 20.0, 40.0}) {
                const GramsPerMillilitre density{1.123};
                const auto value = read(instrument, density, {temperature_c}).value;
                EXPECT_NEAR(densityAt(instrument, *value, {temperature_c}).value, density.value, 1e-9);
            }
        }
    }
}

TEST(Hydrometer, ItsErrorsHaveReasons)
{
    const Hydrometer instrument = wholeScale(HydrometerScale::SpecificGravity);
    const auto plain = errorsOf(instrument, syrup(20, 80), {20.0});
    EXPECT_NEAR(combined(plain), 0.0011, 0.0002);  // half of 0.002, and 1 °C is worth 0.0003
    EXPECT_TRUE(names(errorsOf(instrument, syrup(20, 65, 15), {20.0}), "together"));
    Mix pulp = syrup(15, 80);
    pulp.amounts[Constituent::Fibre] = {3.0};
    EXPECT_GT(combined(errorsOf(instrument, pulp, {20.0})), 2.0 * combined(plain));
}

TEST(Jar, HoldsWhatIsLeftBesideTheHydrometer)
{
    const Jar jar;
    const HydrometerBody body;
    const auto filling = fillingFor(jar, body, {1.08});
    ASSERT_TRUE(filling.has_value());
    // Displaced 50/1.08 mL, of which the stem has what the bulb of 43.5 mL leaves.
    const double stem_mm = (50.0 / 1.08 - 43.5) * 1000.0 / (std::numbers::pi * 16.0);
    EXPECT_NEAR(filling->submerged.value, 130.0 + stem_mm, 1e-9);
    EXPECT_NEAR(filling->liquid.value, std::numbers::pi * 19.0 * 19.0 * filling->height.value / 1000.0 - 50.0 / 1.08, 1e-9);
    EXPECT_GT(fillingFor(jar, body, {1.02})->submerged, filling->submerged);
}

TEST(Jar, WhatCannotFloatIsSaid)
{
    const auto reason = [](const Jar& jar, double density) { return english(fillingFor(jar, {}, {density}).error()); };
    EXPECT_NE(reason({{25.0}, {280.0}}, 1.08).find("narrow"), std::string::npos);
    EXPECT_NE(reason({{38.0}, {150.0}}, 1.08).find("shallow"), std::string::npos);
    EXPECT_NE(reason({}, 0.9).find("sinks"), std::string::npos);
    EXPECT_NE(reason({}, 1.3).find("bulb"), std::string::npos);
}

}  // namespace
}  // namespace firn
