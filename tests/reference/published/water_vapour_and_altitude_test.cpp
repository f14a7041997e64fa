// IAPWS: water boils at 99.974 °C at 1013.25 hPa and at 99.606 °C at 1000 hPa, 3 decimals; its vapour pressure is from the steam tables (from memory).
// ISO 2533:1975, standard atmosphere: pressure in hPa, 2 decimals.

#include "../solutions.h"
#include "solution/boiling_point.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(WaterVapour, BoilingPoints)
{
    const Mix water = solutionOf(Constituent::Sucrose, 0.0);
    EXPECT_NEAR(boilingPointOf(water)->temperature.value, 99.974, 0.002);
    EXPECT_NEAR(boilingPointOf(water, {1000.0})->temperature.value, 99.606, 0.002);
}

// Steam tables by IAPWS-95, hPa, 4 figures.
TEST(WaterVapour, SaturationPressure)
{
    struct Row {
        double temperature_c, pressure_hPa;
    };
    for (const Row& row : {Row{0.01, 6.117}, Row{10, 12.28}, Row{25, 31.70}, Row{50, 123.5}, Row{80, 474.1}, Row{100, 1014.2},
             Row{120, 1986.7}, Row{150, 4761.7}})
        EXPECT_NEAR(saturationPressure({row.temperature_c}).value / row.pressure_hPa, 1.0, 0.0005) << row.temperature_c;
}

TEST(Altitude, PressureOfTheStandardAtmosphere)
{
    EXPECT_NEAR(pressureAtAltitude(0.0).value, 1013.25, 1e-9);
    EXPECT_NEAR(pressureAtAltitude(1000.0).value, 898.75, 0.1);
    EXPECT_NEAR(pressureAtAltitude(2000.0).value, 794.95, 0.1);
}

}  // namespace
}  // namespace firn
