// OIML R 22, International Alcoholometric Tables (1973); the same in Council Directive 76/766/EEC. Percent by volume at 20 °C, percent by mass,
// density in kg/m3 at 20 °C, each to 3 decimals, worked out from the printed formula outside this project.

#include "solution/alcohol_by_volume.h"
#include "solution/ethanol.h"
#include "solution/volume.h"
#include "solutions.h"

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

}  // namespace
}  // namespace firn
