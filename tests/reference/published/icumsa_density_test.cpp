// ICUMSA SPS-4, density of sucrose solutions, in Z. Bubnik and others, Sugar Technologists Manual (Bartens 1995), p. 164: kg/m3, 3
// decimals, worked out from the printed coefficients outside this project.

#include "../solutions.h"
#include "solution/volume.h"

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

struct WarmRow {
    double temperature_c, sucrose_percent, density_kg_m3;
};

constexpr WarmRow warmRows[] = {{10, 0, 999.699}, {10, 10, 1040.147}, {10, 20, 1083.559}, {10, 30, 1130.172}, {10, 40, 1180.213},
    {10, 50, 1233.879}, {10, 60, 1291.312}, {10, 70, 1352.554}, {15, 0, 999.099}, {15, 10, 1039.262}, {15, 20, 1082.381},
    {15, 30, 1128.698}, {15, 40, 1178.443}, {15, 50, 1231.826}, {15, 60, 1289.006}, {15, 70, 1350.047}, {25, 0, 997.043},
    {25, 10, 1036.735}, {25, 20, 1079.371}, {25, 30, 1125.197}, {25, 40, 1174.455}, {25, 50, 1227.372}, {25, 60, 1284.136},
    {25, 70, 1344.850}, {30, 0, 995.645}, {30, 10, 1035.143}, {30, 20, 1077.581}, {30, 30, 1123.205}, {30, 40, 1172.263},
    {30, 50, 1224.990}, {30, 60, 1281.583}, {30, 70, 1342.165}, {40, 0, 992.212}, {40, 10, 1031.391}, {40, 20, 1073.500},
    {40, 30, 1118.792}, {40, 40, 1167.521}, {40, 50, 1219.935}, {40, 60, 1276.251}, {40, 70, 1336.621}};

TEST(IcumsaDensity, AlsoAwayFrom20Degrees)
{
    for (const WarmRow& row : warmRows)
        EXPECT_NEAR(1000.0 * densityOf(solutionOf(Constituent::Sucrose, row.sucrose_percent), {row.temperature_c})->value,
            row.density_kg_m3, 0.001)
            << row.sucrose_percent << " % at " << row.temperature_c << " °C";
}

}  // namespace
}  // namespace firn
