// Ice in pure sucrose solutions: derived outside this project from the activity model of M. Starzak and S. D. Peacock (Zuckerindustrie 122
// (1997) 380) and the ice of D. M. Murphy and T. Koop (Q. J. R. Meteorol. Soc. 131 (2005) 1539), by root finding. Columns: sucrose, % by mass;
// temperature, °C; ice, % of the mass; water frozen, %. No measurement below -9 °C was available; models differ by 1.5 points at -12 °C.

#include "../solutions.h"
#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_percent, temperature_c, ice_percent, waterFrozen_percent;
};

constexpr Row rows[] = {{10, -6, 78.33, 87.03}, {10, -10, 82.32, 91.46}, {10, -12, 83.36, 92.62}, {10, -16, 84.70, 94.12},
    {10, -18, 85.17, 94.63}, {15, -6, 67.49, 79.40}, {15, -8, 71.19, 83.75}, {15, -12, 75.04, 88.28}, {15, -14, 76.18, 89.62},
    {15, -18, 77.75, 91.47}, {15, -20, 78.32, 92.14}, {20, -8, 61.59, 76.98}, {20, -10, 64.63, 80.79}, {20, -14, 68.24, 85.30},
    {20, -16, 69.41, 86.76}, {20, -20, 71.09, 88.86}, {25.5, -6, 44.73, 60.04}, {25.5, -10, 54.91, 73.70},
    {25.5, -12, 57.56, 77.26}, {25.5, -16, 60.99, 81.87}, {25.5, -18, 62.18, 83.46}, {30, -6, 34.98, 49.97}, {30, -8, 42.38, 60.54},
    {30, -12, 50.07, 71.53}, {30, -14, 52.36, 74.80}, {30, -18, 55.50, 79.29}, {30, -20, 56.64, 80.91}, {35.5, -8, 31.82, 49.33},
    {35.5, -10, 37.22, 57.71}, {35.5, -14, 43.62, 67.63}, {35.5, -16, 45.70, 70.85}, {35.5, -20, 48.69, 75.48},
    {40, -6, 13.30, 22.17}, {40, -10, 29.26, 48.77}, {40, -12, 33.43, 55.72}, {40, -16, 38.81, 64.69}, {40, -18, 40.67, 67.78},
    {45, -6, 2.46, 4.48}, {45, -8, 13.57, 24.67}, {45, -12, 25.11, 45.65}, {45, -14, 28.54, 51.89}, {45, -18, 33.25, 60.46},
    {45, -20, 34.96, 63.55}};

TEST(IceFraction, OfSucroseSolutions)
{
    constexpr double sameModel_points = 0.03;  // printed to 0.01; the rest is interpolation
    for (const Row& row : rows) {
        SCOPED_TRACE(testing::Message() << row.sucrose_percent << " % at " << row.temperature_c << " °C");
        const FreezingCurve curve = freezingCurve(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        const double ice_percent = percent(curve.iceAt({row.temperature_c}));
        EXPECT_NEAR(ice_percent, row.ice_percent, sameModel_points);
        EXPECT_NEAR(100.0 * ice_percent / (100.0 - row.sucrose_percent), row.waterFrozen_percent, 2.0 * sameModel_points);
    }
}

// The same root finding, asked for the temperature. Columns: sucrose, % by mass; ice, % of the mass; temperature, °C. The shares of ice are edges of
// firmness: where crystals are loose, where sorbet is soft, scoopable and firm.
TEST(IceFraction, TemperatureWithSoMuchIceInSucroseSolutions)
{
    constexpr double sameModel_k = 0.02;  // molar masses to four digits
    constexpr struct {
        double sucrose_percent, ice_percent, temperature_c;
    } places[] = {{25.5, 48, -6.89}, {25.5, 30, -3.73}, {35.5, 30, -7.48}, {35.5, 38, -10.36}, {35.5, 46, -16.33}};
    for (const auto& [sucrose_percent, ice_percent, temperature_c] : places) {
        const auto found =
            freezingCurve(solutionOf(Constituent::Sucrose, sucrose_percent)).temperatureWithIce({ice_percent / 100.0});
        ASSERT_TRUE(found.has_value());
        EXPECT_NEAR(found->value, temperature_c, sameModel_k) << sucrose_percent << " % with " << ice_percent << " % of ice";
    }
}

}  // namespace
}  // namespace firn
