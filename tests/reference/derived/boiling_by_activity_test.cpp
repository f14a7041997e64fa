// Boiling-point elevation of sucrose solutions at normal pressure from the water activity of M. Starzak and S. D. Peacock, Zuckerindustrie 122
// (1997) 380, worked out outside this project with the saturation pressure of IAPWS: K, 2 decimals. Browne's table is higher by 0.2 to 0.4 K
// to 50 % and by 2.5 K at 80 %; the model answers midway (tests/reference/measured/browne_boiling_point_test.cpp).

#include "../solutions.h"
#include "solution/boiling_point.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_percent, elevation_k;
};

constexpr Row rows[] = {{2, 0.03}, {10, 0.17}, {20, 0.39}, {32, 0.78}, {40, 1.15}, {50, 1.82}, {62, 3.25}, {66, 4.00}, {70, 4.99},
    {74, 6.33}, {78, 8.22}, {80, 9.46}};
constexpr double worked_k = 0.06;

TEST(BoilingByActivity, WithinAFifthOfAKelvinTo50Percent)
{
    for (const Row& row : rows) {
        if (row.sucrose_percent > 50.0)
            continue;
        const auto found = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        EXPECT_NEAR(found->elevation.value, row.elevation_k, 0.2) << row.sucrose_percent;
    }
}

TEST(BoilingByActivity, IsTheLowerEndOfTheUncertainty)
{
    for (const Row& row : rows) {
        const auto found = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        EXPECT_GE(found->elevation.value, row.elevation_k - worked_k) << row.sucrose_percent;
        if (row.sucrose_percent >= 20.0) {
            EXPECT_NEAR(found->elevation.value - found->halfGap.value, row.elevation_k, worked_k) << row.sucrose_percent;
        }
    }
}

}  // namespace
}  // namespace firn
