// An egg of 57 g as a spheroid of length to breadth 1.30 lying in a sucrose solution at 20 °C: derived outside this project by bisection, with
// densities of the CRC Handbook (4 decimals). Columns: egg density, g/mL; sucrose, % by mass; floats; patch width, length and height, mm.

#include "../solutions.h"
#include "readings/readings.h"
#include "readings/sugar_by_egg.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double egg_g_mL, sucrose_percent;
    bool floats;
    double width_mm, length_mm, height_mm;
};

constexpr Row rows[] = {{1.03, 15, true, 25.90, 33.67, 4.30}, {1.03, 20, true, 29.26, 38.04, 5.69},
    {1.03, 30, true, 33.33, 43.33, 7.82}, {1.03, 35.5, true, 34.87, 45.34, 8.81}, {1.03, 50, true, 37.78, 49.11, 11.06},
    {1.05, 15, true, 19.60, 25.47, 2.36}, {1.05, 25.5, true, 29.52, 38.38, 5.86}, {1.05, 30, true, 31.53, 40.99, 6.87},
    {1.05, 40, true, 34.67, 45.07, 8.77}, {1.05, 50, true, 36.81, 47.85, 10.36}, {1.06, 20, true, 23.65, 30.74, 3.55},
    {1.06, 25.5, true, 28.16, 36.61, 5.27}, {1.06, 35.5, true, 32.62, 42.40, 7.51}, {1.06, 40, true, 33.99, 44.18, 8.36},
    {1.07, 15, false, 0, 0, 0}, {1.07, 20, true, 20.23, 26.29, 2.54}, {1.07, 30, true, 29.34, 38.14, 5.82},
    {1.07, 35.5, true, 31.74, 41.27, 7.05}, {1.07, 50, true, 35.76, 46.48, 9.65}, {1.08, 15, false, 0, 0, 0},
    {1.08, 25.5, true, 24.55, 31.91, 3.89}, {1.08, 30, true, 28.02, 36.42, 5.25}, {1.08, 40, true, 32.48, 42.22, 7.50},
    {1.08, 50, true, 35.20, 45.76, 9.29}, {1.09, 20, false, 0, 0, 0}, {1.09, 25.5, true, 21.83, 28.37, 3.02},
    {1.09, 35.5, true, 29.74, 38.66, 6.06}, {1.09, 40, true, 31.64, 41.13, 7.06}};

TEST(EggFloat, OfSpheroidInSucroseSolutions)
{
    constexpr double printed_mm = 0.1;  // the table's densities have four decimals
    for (const Row& row : rows) {
        SCOPED_TRACE(testing::Message() << row.egg_g_mL << " g/mL in " << row.sucrose_percent << " %");
        const auto found = readings(solutionOf(Constituent::Sucrose, row.sucrose_percent), {20.0}, {{57.0}, {row.egg_g_mL}, 1.30});
        EXPECT_EQ(found->egg.floats, row.floats);
        EXPECT_NEAR(found->egg.exposedWidth.value, row.width_mm, printed_mm);
        EXPECT_NEAR(found->egg.exposedLength.value, row.length_mm, printed_mm);
        EXPECT_NEAR(found->egg.exposedHeight.value, row.height_mm, printed_mm);
    }
}

// The patch leads back to the sugar: within what 0.3 mm of patch are worth.
TEST(EggFloat, PatchLeadsBackToTheSugar)
{
    for (const Row& row : rows) {
        if (!row.floats)
            continue;
        SCOPED_TRACE(testing::Message() << row.egg_g_mL << " g/mL in " << row.sucrose_percent << " %");
        const auto liquid = liquidFloating({{57.0}, {row.egg_g_mL}, 1.30}, {row.width_mm});
        ASSERT_TRUE(liquid.has_value());
        EXPECT_NEAR(floatEgg({{57.0}, {row.egg_g_mL}, 1.30}, *liquid).exposedWidth.value, row.width_mm, 1e-6);
        const GramsPerMillilitre egg{row.egg_g_mL};
        const auto range = sugarByEgg({.patchWidth = {row.width_mm}, .age = {"known", egg, egg, egg}});
        ASSERT_TRUE(range.has_value());
        EXPECT_NEAR(percent(range->likely), row.sucrose_percent, 0.3);
        EXPECT_LE(range->least, range->likely);
        EXPECT_GE(range->most, range->likely);
    }
}

// Common practice, no source: a large clean egg barely floats at 17 to 20 % (patch under an inch) and in granita of 25 to 26 % still shows
// less than an inch; in a syrup of equal volumes of sugar and water the patch is some two inches long.
TEST(EggFloat, AgreesWithCommonPractice)
{
    constexpr double inch_mm = 25.4;
    const auto widthIn = [](double sucrose_percent) {
        return readings(solutionOf(Constituent::Sucrose, sucrose_percent), {20.0})->egg.exposedWidth.value;
    };
    EXPECT_LT(widthIn(20.0), inch_mm);
    EXPECT_GT(widthIn(20.0), 0.0);
    EXPECT_LT(widthIn(25.5), inch_mm);
    const double equalVolumes_percent =
        100.0 * 200.0 / (200.0 + 236.2);  // a cup of sugar weighs 200 g (USDA SR28), of water 236.2 g
    EXPECT_NEAR(readings(solutionOf(Constituent::Sucrose, equalVolumes_percent), {20.0})->egg.exposedLength.value, 2.0 * inch_mm,
        0.3 * inch_mm);
}

}  // namespace
}  // namespace firn
