// OIML R 22, International Alcoholometric Tables (1973); the same in Council Directive 76/766/EEC. Percent by volume at 20 °C, percent by mass,
// density in kg/m3 at 20 °C, each to 3 decimals, worked out from the printed formula outside this project.

#include "../solutions.h"
#include "solution/alcohol_by_volume.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double volume_percent, mass_percent, density_kg_m3;
};

constexpr Row rows[] = {{0, 0.000, 998.201}, {5, 3.982, 991.055}, {8, 6.396, 987.164}, {10, 8.015, 984.710}, {12, 9.641, 982.355},
    {13, 10.457, 981.209}, {15, 12.093, 978.971}, {18, 14.560, 975.706}, {20, 16.214, 973.557}, {25, 20.381, 968.098},
    {30, 24.607, 962.211}, {35, 28.907, 955.586}, {37.5, 31.091, 951.936}, {40, 33.300, 948.045}, {43, 35.986, 943.057},
    {50, 42.426, 930.142}, {60, 52.088, 909.115}, {70, 62.386, 885.562}, {96, 93.838, 807.420}};

TEST(OimlR22, DensityOfEthanolSolutions)
{
    for (const Row& row : rows)
        EXPECT_NEAR(1000.0 * densityOf(solutionOf(Constituent::Ethanol, row.mass_percent), {20.0})->value, row.density_kg_m3, 0.003)
            << row.volume_percent;
}

TEST(OimlR22, PercentByVolume)
{
    for (const Row& row : rows) {
        const Mix mix = solutionOf(Constituent::Ethanol, row.mass_percent);
        EXPECT_NEAR(alcoholByVolume_percent(mix.amounts), row.volume_percent, 0.002) << row.mass_percent;
        EXPECT_NEAR(ethanolIn100g(row.volume_percent, {})->value, row.mass_percent, 0.002) << row.volume_percent;
    }
}

struct WarmRow {
    double mass_percent, temperature_c, density_kg_m3;
};

constexpr WarmRow warmRows[] = {{5, -20, 985.985}, {15, -20, 978.901}, {33.3, -20, 971.819}, {50, -20, 943.762}, {70, -20, 900.050},
    {90, -20, 851.586}, {100, -20, 823.120}, {5, 0, 991.274}, {15, 0, 979.806}, {33.3, 0, 960.628}, {50, 0, 929.172},
    {70, 0, 884.169}, {90, 0, 834.955}, {100, 0, 806.215}, {5, 10, 990.984}, {15, 10, 978.018}, {33.3, 10, 954.517},
    {50, 10, 921.589}, {70, 10, 875.991}, {90, 10, 826.488}, {100, 10, 797.755}, {5, 30, 986.680}, {15, 30, 971.317},
    {33.3, 30, 941.189}, {50, 30, 905.712}, {70, 30, 859.023}, {90, 30, 809.134}, {100, 30, 780.648}, {5, 40, 983.054},
    {15, 40, 966.735}, {33.3, 40, 933.969}, {50, 40, 897.440}, {70, 40, 850.219}, {90, 40, 800.207}, {100, 40, 771.932}};

TEST(OimlR22, DensityAwayFrom20Degrees)
{
    for (const WarmRow& row : warmRows)
        EXPECT_NEAR(
            1000.0 * ethanolSolutionDensity(fromPercent(row.mass_percent), {row.temperature_c}).value, row.density_kg_m3, 0.001)
            << row.mass_percent << " % at " << row.temperature_c << " °C";
}

}  // namespace
}  // namespace firn
