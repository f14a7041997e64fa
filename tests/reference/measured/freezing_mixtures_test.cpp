// Freezing points of drinks whose composition is only roughly known: ranges, good for order and sign. Wines: a table of wines of the Caucasus, Crimea and
// Dagestan (thermalinfo.ru), °C: dry white -6 to -4, red -5.8 to -3.9, port-type -11 (17 to 19 % vol), no wine above -3. Beer: rule of a brewing course,
// Tf = -(0.42 A + 0.04 E + 0.2), A alcohol in % by mass, E original extract in °P, ± 0.3 K. Osmolality of soft drinks and juices by freezing:
// van der Horst and others, S. Afr. Med. J. 66 (1984) 755-758: cola 430, grape juice 1297 mOsm/kg, ± 5 %; 1.858 K kg/mol. What is in the
// drinks is from memory.

#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>
#include <initializer_list>
#include <utility>

namespace firn {
namespace {

double freezes_c(std::initializer_list<std::pair<Constituent, double>> solutes_percent)
{
    Mix mix;
    double water_g = 100.0;
    for (const auto& [solute, percent] : solutes_percent) {
        mix.amounts[solute] = {percent};
        water_g -= percent;
    }
    mix.amounts[Constituent::Water] = {water_g};
    return freezingCurve(mix).freezingPoint->temperature.value;
}

using enum Constituent;

/// Half of the extract of a dry wine is acid and minerals, the rest glycerol and the like.
double wine_c(double ethanol_percent, double sugar_percent)
{
    return freezes_c({{Ethanol, ethanol_percent}, {Fructose, sugar_percent}, {Acid, 0.7}, {Minerals, 0.3}, {Glycerol, 0.7}});
}

// Dry wines of 8 to 10 % ethanol lie in the range, no wine freezes above -3 °C, and the sweetest and strongest port types come near -11.
TEST(FreezingMixtures, Wines)
{
    for (const double ethanol_percent : {8.0, 9.0, 10.0}) {
        EXPECT_GE(wine_c(ethanol_percent, 0.2), -6.0) << ethanol_percent;
        EXPECT_LE(wine_c(ethanol_percent, 0.2), -3.8) << ethanol_percent;
    }
    EXPECT_LT(wine_c(7.0, 0.0), -3.0);
    EXPECT_NEAR(wine_c(14.8, 11.0), -11.0, 1.0);
}

// Half a gram of carbon dioxide in 100 g, which is not a constituent of a mix, is worth 0.21 K.
TEST(FreezingMixtures, Beers)
{
    constexpr double carbonDioxide_k = 18.6 * 0.5 / 44.01;
    struct Beer {
        double ethanol_percent, extract_percent, temperature_c, bound_k;
    };
    for (const Beer& beer : {Beer{3.9, 4.4, -2.32, 0.3}, Beer{5.1, 5.3, -2.94, 0.3}, Beer{6.6, 5.6, -3.69, 0.4}})
        EXPECT_NEAR(freezes_c({{Ethanol, beer.ethanol_percent}, {Oligosaccharides, beer.extract_percent - 1.0}, {Maltose, 0.8},
                        {Minerals, 0.2}})
                        - carbonDioxide_k,
            beer.temperature_c, beer.bound_k);
}

// A cola of 10 % sugars, a third of them inverted, and grape juice of 15 %, to which a gram of sugar and 0.3 g of acid more or less belong: 0.17 K.
TEST(FreezingMixtures, SoftDrinkAndJuice)
{
    EXPECT_NEAR(freezes_c({{Sucrose, 7.1}, {Glucose, 1.6}, {Fructose, 1.6}, {Acid, 0.1}}), -0.80, 0.04 + 0.03);
    EXPECT_NEAR(freezes_c({{Glucose, 7.5}, {Fructose, 7.8}, {Acid, 0.7}, {Minerals, 0.4}}), -2.41, 0.12 + 0.17);
}

}  // namespace
}  // namespace firn
