// Kitchen units, exact by definition: a US gallon is 231 cubic inches of 2.54 cm, 4 quarts, 8 pints, 16 cups, 128 fl oz, 256 tablespoons, 768
// teaspoons (NIST SP 430); the imperial gallon of 4.54609 L is 8 pints or 160 fl oz (Weights and Measures Act 1985); a pound is 453.59237 g, 16 oz.
// Metric spoons of 5 and 15 mL and a cup of 250 mL: common practice; an imperial cup of half a pint: from memory.

#include "units/unit.h"

#include <gtest/gtest.h>
#include <map>

namespace firn {
namespace {

TEST(KitchenUnits, SizeOfEach)
{
    constexpr double cubicInch_mL = 2.54 * 2.54 * 2.54;
    constexpr double gallon_mL = 231.0 * cubicInch_mL;
    constexpr double imperialGallon_mL = 4546.09;
    const std::map<Unit, double> sizes{{Unit::Gram, 1.0}, {Unit::Kilogram, 1000.0}, {Unit::Milligram, 0.001},
        {Unit::Ounce, 453.59237 / 16.0}, {Unit::Pound, 453.59237}, {Unit::Millilitre, 1.0}, {Unit::Litre, 1000.0},
        {Unit::Teaspoon, gallon_mL / 768.0}, {Unit::Tablespoon, gallon_mL / 256.0}, {Unit::Cup, gallon_mL / 16.0},
        {Unit::FluidOunce, gallon_mL / 128.0}, {Unit::Pint, gallon_mL / 8.0}, {Unit::Quart, gallon_mL / 4.0},
        {Unit::MetricTeaspoon, 5.0}, {Unit::MetricTablespoon, 15.0}, {Unit::MetricCup, 250.0},
        {Unit::ImperialCup, imperialGallon_mL / 16.0}, {Unit::ImperialFluidOunce, imperialGallon_mL / 160.0},
        {Unit::ImperialPint, imperialGallon_mL / 8.0}, {Unit::Piece, 1.0}, {Unit::PercentOfMix, 1.0}};
    for (const auto& [unit, size] : sizes)
        EXPECT_NEAR(factsOf(unit).size, size, 1e-9 * size) << factsOf(unit).symbol;
}

TEST(KitchenUnits, DimensionOfEach)
{
    for (const UnitFacts& facts : allUnits()) {
        const bool isMass = facts.unit <= Unit::Pound;
        const bool isVolume = facts.unit >= Unit::Millilitre && facts.unit <= Unit::ImperialPint;
        if (isMass) {
            EXPECT_EQ(facts.dimension, Dimension::Mass) << facts.symbol;
        } else if (isVolume) {
            EXPECT_EQ(facts.dimension, Dimension::Volume) << facts.symbol;
        }
    }
    EXPECT_EQ(factsOf(Unit::Piece).dimension, Dimension::Count);
    EXPECT_EQ(factsOf(Unit::PercentOfMix).dimension, Dimension::Share);
}

}  // namespace
}  // namespace firn
