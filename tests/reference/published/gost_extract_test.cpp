// GOST R 51620-2000, Alcoholic products and raw materials, reduced extract, Table 1: total extract, g/L, 1 decimal, by the relative density 20/20
// of the liquid without its alcohol (1.000 to 1.009), and the rule of Tabarié for it: d_extract = d_product - d_distillate + 1.000. MEBAK
// has the same rule for beer: SG = SG of the alcohol part + SG of the extract part - 1. It is a rule, not a measurement.

#include "readings/readings.h"
#include "solution/volume.h"
#include "syrup/scales.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double relativeDensity, extract_g_L;
};

constexpr Row rows[] = {{1.000, 0.0}, {1.001, 2.6}, {1.002, 5.1}, {1.003, 7.7}, {1.004, 10.3}, {1.005, 12.9}, {1.006, 15.4},
    {1.007, 18.0}, {1.008, 20.6}, {1.009, 23.2}};
constexpr double printed_g_L = 0.05;
constexpr double model_g_L = 2580.0 * 0.00003;  // the stated error of a specific gravity up to 8 °Bx

TEST(GostExtract, TableOfTotalExtract)
{
    for (const Row& row : rows) {
        const MassFraction sucrose = *strengthFrom(SyrupScale::SpecificGravity, row.relativeDensity);
        EXPECT_NEAR(*valueOn(SyrupScale::GramsPerLitre, sucrose), row.extract_g_L, printed_g_L + model_g_L) << row.relativeDensity;
    }
}

/// What is in a litre at 20 °C, filled up with water.
double relativeDensityOf(double ethanol_g_L, double sugar_g_L)
{
    Mix mix;
    mix.amounts[Constituent::Ethanol] = {ethanol_g_L};
    mix.amounts[Constituent::Sucrose] = {sugar_g_L};
    mix.amounts[Constituent::Water] = {900.0};
    for (int i = 0; i < 40; ++i)
        mix.amounts[Constituent::Water] += Grams{1000.0 - volumeOf(mix, {20.0}).value};
    return readings(mix, {20.0})->specificGravity_20_20;
}

// Wines, a beer and a liqueur wine. For a wine the extract found by the rule is within 2 % of what is in it.
TEST(GostExtract, RuleOfTabarie)
{
    struct Drink {
        double ethanol_g_L, sugar_g_L;
    };
    for (const auto& [ethanol_g_L, sugar_g_L] :
        {Drink{39.5, 44.0}, {63.0, 20.0}, {94.7, 20.0}, {94.7, 60.0}, {94.7, 120.0}, {140.0, 90.0}}) {
        const double ofExtract = relativeDensityOf(ethanol_g_L, sugar_g_L) - relativeDensityOf(ethanol_g_L, 0.0) + 1.0;
        const double extract_g_L = *valueOn(SyrupScale::GramsPerLitre, *strengthFrom(SyrupScale::SpecificGravity, ofExtract));
        EXPECT_NEAR(extract_g_L / sugar_g_L, 1.0, 0.02) << ethanol_g_L << " g/L ethanol, " << sugar_g_L << " g/L sugar";
    }
}

}  // namespace
}  // namespace firn
