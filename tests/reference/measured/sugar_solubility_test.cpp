// Solubilities that were read, % by mass unless it says otherwise. Glucose: R. F. Jackson and C. G. Silsbee, Sci. Pap. Bur. Stand. 17 (1922) 715-724,
// abstract: ice and monohydrate together at -5.3 °C and 31 to 32 % (± 0.1 K), monohydrate to anhydrous at 50 °C; an encyclopedia's chapter on
// sweeteners: 51.2 at 25 °C after mutarotation (± 0.3). Fructose: H. McGee, On Food and Cooking, 4 parts in 1 of water at room temperature.
// Sucrose: table of a sugar-machinery works (k-mashzavod.narod.ru), 2 decimals, ± 0.3.

#include "../solutions.h"
#include "freezing/freezing_curve.h"
#include "syrup/solubility.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

double saturated_percent(Constituent solute, double temperature_c) { return percent(solubilityOf(solute, {temperature_c})->share); }

TEST(SugarSolubility, GlucoseFreezesWhereItsEutecticIs)
{
    const auto freezes_c = [](double glucose_percent) {
        return freezingCurve(solutionOf(Constituent::Glucose, glucose_percent)).freezingPoint->temperature.value;
    };
    EXPECT_GT(freezes_c(31.0), -5.3 - 0.1);
    EXPECT_LT(freezes_c(32.0), -5.3 + 0.1);
}

TEST(SugarSolubility, GlucoseAt25Degrees) { EXPECT_NEAR(saturated_percent(Constituent::Glucose, 25.0), 51.2, 0.3 + 0.1); }

TEST(SugarSolubility, GlucoseBindsWaterOnlyTo50Degrees)
{
    EXPECT_NEAR(solubilityOf(Constituent::Glucose, {49.9})->crystalWater_gPerGram, 18.015 / 180.156, 1e-6);
    EXPECT_EQ(solubilityOf(Constituent::Glucose, {50.1})->crystalWater_gPerGram, 0.0);
}

TEST(SugarSolubility, FructoseInAQuarterOfItsMassOfWater)
{
    EXPECT_LT(saturated_percent(Constituent::Fructose, 20.0), 80.0);
    EXPECT_GT(saturated_percent(Constituent::Fructose, 28.0), 80.0);
}

// The machinery works lie between Bubnik and Kadlec, whom the model follows, and the handbook's table.
TEST(SugarSolubility, Sucrose)
{
    struct Row {
        double temperature_c, percent;
    };
    for (const Row& row : {Row{0, 64.44}, Row{20, 66.74}, Row{40, 70.22}, Row{60, 74.32}, Row{80, 78.74}, Row{100, 82.89}})
        EXPECT_NEAR(saturated_percent(Constituent::Sucrose, row.temperature_c), row.percent, 0.3) << row.temperature_c;
}

}  // namespace
}  // namespace firn
