// Boiling-point elevation of sucrose solutions at normal pressure, K. C. A. Browne, Handbook of Sugar Analysis (1912), a spline through his points
// as reprinted at vk1od.net (BoilSugarSolution, Table 1), 1 decimal. Beside it the same from the water activity of M. Starzak and S. D. Peacock, Zuckerindustrie
// 122 (1997) 380, worked out outside this project with the saturation pressure of IAPWS, 2 decimals. The two disagree: by 0.2 to 0.4 K to 50 %,
// by 2.5 K at 80 %; below 20 % Browne is ten times what a dilute solution can show.

#include "solution/boiling_point.h"
#include "solutions.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_percent, browne_k, activity_k;
};

constexpr Row rows[] = {{2, 0.3, 0.03}, {10, 0.4, 0.17}, {20, 0.6, 0.39}, {32, 1.1, 0.78}, {40, 1.5, 1.15}, {50, 2.0, 1.82},
    {62, 3.4, 3.25}, {66, 4.8, 4.00}, {70, 6.5, 4.99}, {74, 8.4, 6.33}, {78, 10.6, 8.22}, {80, 12.0, 9.46}};

TEST(BoilingPoint, WithinAFifthOfAKelvinOfBothTo50Percent)
{
    for (const Row& row : rows) {
        if (row.sucrose_percent > 50.0)
            continue;
        const double found_k = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent))->elevation.value;
        EXPECT_NEAR(found_k, row.activity_k, 0.2) << row.sucrose_percent;
        if (row.sucrose_percent >= 10.0) {
            EXPECT_NEAR(found_k, row.browne_k, 0.2) << row.sucrose_percent;
        }
    }
}

TEST(BoilingPoint, BetweenBothBeyondAndTheUncertaintyReachesThem)
{
    constexpr double printed_k = 0.06;
    for (const Row& row : rows) {
        const auto found = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        EXPECT_GE(found->elevation.value, row.activity_k - printed_k) << row.sucrose_percent;
        EXPECT_LE(found->elevation.value, row.browne_k + printed_k) << row.sucrose_percent;
        if (row.sucrose_percent >= 20.0) {
            EXPECT_NEAR(found->elevation.value - found->halfGap.value, row.activity_k, printed_k) << row.sucrose_percent;
            EXPECT_NEAR(found->elevation.value + found->halfGap.value, row.browne_k, printed_k) << row.sucrose_percent;
        }
    }
}

// IAPWS: water boils at 99.974 °C at 1013.25 hPa and at 99.606 °C at 1000 hPa; 31.69 hPa at 25 °C.
TEST(BoilingPoint, OfWater)
{
    const Mix water = solutionOf(Constituent::Sucrose, 0.0);
    EXPECT_NEAR(boilingPointOf(water)->temperature.value, 99.974, 0.002);
    EXPECT_NEAR(boilingPointOf(water, {1000.0})->temperature.value, 99.606, 0.002);
    EXPECT_NEAR(saturationPressure({25.0}).value, 31.69, 0.02);
}

// ISO 2533:1975: 898.75 hPa at 1000 m, 794.95 hPa at 2000 m.
TEST(BoilingPoint, PressureAtAltitude)
{
    EXPECT_NEAR(pressureAtAltitude(0.0).value, 1013.25, 1e-9);
    EXPECT_NEAR(pressureAtAltitude(1000.0).value, 898.75, 0.1);
    EXPECT_NEAR(pressureAtAltitude(2000.0).value, 794.95, 0.1);
}

}  // namespace
}  // namespace firn
