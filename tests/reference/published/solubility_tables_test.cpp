// Solubility in % by mass of the anhydrous solute, typed a second time. Glucose: R. F. Jackson and C. G. Silsbee, Bureau of Standards Scientific Paper
// 437 (1922); fructose: Jackson, Silsbee and M. J. Proffitt, Scientific Paper 519 (1926); salt: CRC Handbook, solubility of inorganic compounds: all
// from memory, 1 decimal. That glucose is 2 above two figures of Combs and Bele is shown in tests/reference/measured/lowe_solubility_test.cpp.

#include "syrup/solubility.h"

#include <gtest/gtest.h>
#include <span>

namespace firn {
namespace {

struct Row {
    double temperature_c, percent;
};

constexpr Row glucose[] = {{20, 47.7}, {30, 54.6}, {40, 61.8}, {50, 70.9}, {55, 73.1}, {70, 78.2}, {80, 81.5}, {90, 84.9}};
constexpr Row fructose[] = {{20, 78.9}, {30, 81.5}, {40, 84.3}, {50, 86.9}};
constexpr Row salt[] = {{0, 26.3}, {20, 26.4}, {40, 26.7}, {60, 27.0}, {80, 27.5}, {100, 28.1}};

void expectTable(Constituent solute, std::span<const Row> rows, double uncertainty_percent)
{
    for (const Row& row : rows) {
        const auto found = solubilityOf(solute, {row.temperature_c});
        EXPECT_NEAR(percent(found->share), row.percent, 1e-6) << row.temperature_c;
        EXPECT_NEAR(percent(found->uncertainty), uncertainty_percent, 1e-9);
    }
    EXPECT_FALSE(solubilityOf(solute, {rows.front().temperature_c - 0.1}).has_value());
    EXPECT_FALSE(solubilityOf(solute, {rows.back().temperature_c + 0.1}).has_value());
}

TEST(SolubilityTables, Glucose) { expectTable(Constituent::Glucose, glucose, 2.5); }
TEST(SolubilityTables, Fructose) { expectTable(Constituent::Fructose, fructose, 1.0); }
TEST(SolubilityTables, Salt) { expectTable(Constituent::Salt, salt, 0.2); }

// Lactose binds a molecule of water below 93.5 °C (from memory), so in all of its table.
TEST(SolubilityTables, LactoseBindsWater)
{
    for (const double t_c : {0.0, 40.0, 89.0}) {
        EXPECT_NEAR(solubilityOf(Constituent::Lactose, {t_c})->crystalWater_gPerGram, 18.015 / 342.297, 1e-9) << t_c;
        EXPECT_NEAR(percent(solubilityOf(Constituent::Lactose, {t_c})->uncertainty), 0.5, 1e-9);
    }
    for (const double t_c : {20.0, 60.0})
        EXPECT_EQ(solubilityOf(Constituent::Sucrose, {t_c})->crystalWater_gPerGram, 0.0);
    EXPECT_NEAR(percent(solubilityOf(Constituent::Sucrose, {20.0})->uncertainty), 0.5, 1e-9);
}

}  // namespace
}  // namespace firn
