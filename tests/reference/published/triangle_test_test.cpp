// ISO 4120, Sensory analysis – Methodology – Triangle test: least number of correct responses at a risk of 5 %, as printed in tables of the
// exact binomial distribution with p = 1/3 (whole numbers, from memory; several textbooks print the same).
#include "tasting/triangle_test.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(TriangleTest, LeastRightAnswersAtFivePercent)
{
    struct Line {
        std::size_t tasters;
        std::size_t right;
    };
    for (const auto& [tasters, right] : {Line{6, 5}, {8, 6}, {10, 7}, {12, 8}, {15, 9}, {18, 10}, {20, 11}, {24, 13}, {30, 15}})
        EXPECT_EQ(leastRight(tasters), right) << tasters;
}

TEST(TriangleTest, LeastRightAnswersAtOnePercent)
{
    struct Line {
        std::size_t tasters;
        std::size_t right;
    };
    for (const auto& [tasters, right] : {Line{6, 6}, {8, 7}, {10, 8}, {12, 9}, {15, 10}, {18, 12}, {20, 13}, {24, 15}, {30, 17}})
        EXPECT_EQ(leastRight(tasters, 0.01), right) << tasters;
}

}  // namespace
}  // namespace firn
