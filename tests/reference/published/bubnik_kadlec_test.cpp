// Z. Bubnik and P. Kadlec, in M. Mathlouthi and P. Reiser, Sucrose (1995): solubility of sucrose in % by mass,
//   64.447 + 0.08222 t + 1.6169e-3 t^2 - 1.558e-6 t^3 - 4.63e-8 t^4, 0 to 100 °C,
// worked out outside this project to 3 decimals.

#include "syrup/solubility.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double temperature_c, percent;
};

constexpr Row rows[] = {{0, 64.447}, {10, 65.429}, {20, 66.718}, {30, 68.289}, {40, 70.105}, {50, 72.116}, {60, 74.264},
    {70, 76.479}, {80, 78.679}, {90, 80.770}, {100, 82.650}};

TEST(BubnikKadlec, SolubilityOfSucrose)
{
    for (const Row& row : rows)
        EXPECT_NEAR(percent(solubilityOf(Constituent::Sucrose, {row.temperature_c})->share), row.percent, 0.0006)
            << row.temperature_c;
}

TEST(BubnikKadlec, HoldsFromFreezingToBoiling)
{
    EXPECT_FALSE(solubilityOf(Constituent::Sucrose, {-0.1}).has_value());
    EXPECT_TRUE(solubilityOf(Constituent::Sucrose, {0.0}).has_value());
    EXPECT_TRUE(solubilityOf(Constituent::Sucrose, {100.0}).has_value());
    EXPECT_FALSE(solubilityOf(Constituent::Sucrose, {100.1}).has_value());
}

}  // namespace
}  // namespace firn
