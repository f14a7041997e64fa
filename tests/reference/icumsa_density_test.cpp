// ICUMSA SPS-4, density of sucrose solutions, in Z. Bubnik and others, Sugar Technologists Manual (Bartens 1995), p. 164: kg/m3 at 20 °C, 3
// decimals, worked out from the printed coefficients outside this project.

#include "solution/volume.h"
#include "solutions.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_percent, density_kg_m3;
};

constexpr Row rows[] = {{0, 998.203}, {5, 1017.805}, {10, 1038.115}, {15, 1059.162}, {20, 1080.977}, {25, 1103.591}, {30, 1127.032},
    {40, 1176.518}, {50, 1229.654}, {60, 1286.611}, {65, 1316.555}, {70, 1347.478}};

TEST(IcumsaDensity, AMixOfSucroseAndWaterHasIt)
{
    for (const Row& row : rows)
        EXPECT_NEAR(
            1000.0 * densityOf(solutionOf(Constituent::Sucrose, row.sucrose_percent), {20.0})->value, row.density_kg_m3, 0.001)
            << row.sucrose_percent;
}

}  // namespace
}  // namespace firn
