// Boiling-point elevation of sucrose solutions at normal pressure, C. A. Browne, Handbook of Sugar Analysis (1912), a spline through his points as
// reprinted at vk1od.net (BoilSugarSolution, Table 1), K, 1 decimal. Below 20 % it is ten times what a dilute solution can show, and the model
// leaves it for the water activity (tests/reference/derived/boiling_by_activity_test.cpp).

#include "../solutions.h"
#include "solution/boiling_point.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_percent, elevation_k;
};

constexpr Row rows[] = {{2, 0.3}, {10, 0.4}, {20, 0.6}, {32, 1.1}, {40, 1.5}, {50, 2.0}, {62, 3.4}, {66, 4.8}, {70, 6.5}, {74, 8.4},
    {78, 10.6}, {80, 12.0}};
constexpr double printed_k = 0.06;

TEST(BrowneBoilingPoint, WithinAFifthOfAKelvinFrom10To50Percent)
{
    for (const Row& row : rows) {
        if (row.sucrose_percent < 10.0 || row.sucrose_percent > 50.0)
            continue;
        const auto found = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        EXPECT_NEAR(found->elevation.value, row.elevation_k, 0.2) << row.sucrose_percent;
    }
}

TEST(BrowneBoilingPoint, IsTheUpperEndOfTheUncertainty)
{
    for (const Row& row : rows) {
        const auto found = boilingPointOf(solutionOf(Constituent::Sucrose, row.sucrose_percent));
        EXPECT_LE(found->elevation.value, row.elevation_k + printed_k) << row.sucrose_percent;
        if (row.sucrose_percent >= 20.0) {
            EXPECT_NEAR(found->elevation.value + found->halfGap.value, row.elevation_k, printed_k) << row.sucrose_percent;
        }
    }
}

}  // namespace
}  // namespace firn
