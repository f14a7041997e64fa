#include "units/unit.h"

#include <gtest/gtest.h>
#include <set>
#include <string>

namespace firn {
namespace {

struct Spelled {
    std::string_view word;
    Unit unit;
};

class UnitSpelling : public testing::TestWithParam<Spelled> {};

TEST_P(UnitSpelling, IsUnderstood) { EXPECT_EQ(unitNamed(GetParam().word), GetParam().unit) << GetParam().word; }

INSTANTIATE_TEST_SUITE_P(Units, UnitSpelling,
    testing::Values(Spelled{"g", Unit::Gram}, Spelled{"G", Unit::Gram}, Spelled{"gr", Unit::Gram}, Spelled{"gm", Unit::Gram},
        Spelled{"gr.", Unit::Gram}, Spelled{"grams", Unit::Gram}, Spelled{"Grammes", Unit::Gram}, Spelled{"kilo", Unit::Kilogram},
        Spelled{"KG", Unit::Kilogram}, Spelled{"mg", Unit::Milligram}, Spelled{"oz.", Unit::Ounce}, Spelled{"ounces", Unit::Ounce},
        Spelled{"lbs", Unit::Pound}, Spelled{"pound", Unit::Pound}, Spelled{"ml", Unit::Millilitre},
        Spelled{"mL", Unit::Millilitre}, Spelled{"ML", Unit::Millilitre}, Spelled{"l", Unit::Litre}, Spelled{"L", Unit::Litre},
        Spelled{"litre", Unit::Litre}, Spelled{"liters", Unit::Litre}, Spelled{"t", Unit::Teaspoon}, Spelled{"t.", Unit::Teaspoon},
        Spelled{"Tsp.", Unit::Teaspoon}, Spelled{"teaspoons", Unit::Teaspoon}, Spelled{"T", Unit::Tablespoon},
        Spelled{"T.", Unit::Tablespoon}, Spelled{"Tbsp.", Unit::Tablespoon}, Spelled{"tablespoons", Unit::Tablespoon},
        Spelled{"tbs", Unit::Tablespoon}, Spelled{"c.", Unit::Cup}, Spelled{"C", Unit::Cup}, Spelled{"cups", Unit::Cup},
        Spelled{"Cup", Unit::Cup}, Spelled{"metric cup", Unit::MetricCup}, Spelled{"metric  tbsp", Unit::MetricTablespoon},
        Spelled{"metric teaspoons", Unit::MetricTeaspoon}, Spelled{"imperial cups", Unit::ImperialCup},
        Spelled{"fl oz", Unit::FluidOunce}, Spelled{"fl. oz.", Unit::FluidOunce}, Spelled{"fl.oz.", Unit::FluidOunce},
        Spelled{"fluid ounces", Unit::FluidOunce}, Spelled{"pint", Unit::Pint}, Spelled{"qt", Unit::Quart},
        Spelled{"imperial fl. oz.", Unit::ImperialFluidOunce}, Spelled{"Imperial Pints", Unit::ImperialPint},
        Spelled{"Pinches", Unit::Pinch}, Spelled{"dash", Unit::Dash}, Spelled{"shots", Unit::Shot}, Spelled{"jigger", Unit::Shot},
        Spelled{"drops", Unit::Drop}, Spelled{"pc", Unit::Piece}, Spelled{"pieces", Unit::Piece}, Spelled{"%", Unit::PercentOfMix},
        Spelled{"% of mix", Unit::PercentOfMix}, Spelled{"percent", Unit::PercentOfMix}, Spelled{" g ", Unit::Gram}));

TEST(Unit, UnknownWordsAreNoUnits)
{
    for (const std::string_view word : {"", " ", ".", "smidgen", "cl", "gs", "g2", "gé", "%%", "cups of", "tS p", "TT", "g.g"})
        EXPECT_EQ(unitNamed(word), std::nullopt) << word;
}

TEST(Unit, EverySymbolAndPluralNamesItsOwnUnit)
{
    std::set<std::string_view> symbols;
    for (const UnitFacts& unit : allUnits()) {
        EXPECT_EQ(unitNamed(unit.symbol), unit.unit) << unit.symbol;
        EXPECT_EQ(unitNamed(unit.plural), unit.unit) << unit.plural;
        EXPECT_EQ(&factsOf(unit.unit), &unit);
        EXPECT_FALSE(unit.source.empty()) << unit.symbol;
        EXPECT_TRUE(symbols.insert(unit.symbol).second) << unit.symbol << " stands for two units";
    }
    EXPECT_EQ(symbols.size(), 25U);
}

// US customary measures follow from the gallon of 231 cubic inches of 2.54 cm: 3785.411784 mL.
TEST(Unit, UsMeasuresAreFractionsOfTheGallon)
{
    constexpr double gallon_ml = 231.0 * 2.54 * 2.54 * 2.54;
    constexpr double rounding = 1e-9;
    EXPECT_NEAR(factsOf(Unit::Quart).size, gallon_ml / 4, rounding);
    EXPECT_NEAR(factsOf(Unit::Pint).size, gallon_ml / 8, rounding);
    EXPECT_NEAR(factsOf(Unit::Cup).size, gallon_ml / 16, rounding);
    EXPECT_NEAR(factsOf(Unit::FluidOunce).size, gallon_ml / 128, rounding);
    EXPECT_NEAR(factsOf(Unit::Tablespoon).size, gallon_ml / 256, rounding);
    EXPECT_NEAR(factsOf(Unit::Teaspoon).size, gallon_ml / 768, rounding);
}

// NIST SP 430 prints 237, 15, 4.9, 473 and 946 mL; half of the last digit that it prints.
TEST(Unit, UsMeasuresRoundToTheHouseholdTableOfNist)
{
    EXPECT_NEAR(factsOf(Unit::Cup).size, 237.0, 0.5);
    EXPECT_NEAR(factsOf(Unit::Tablespoon).size, 15.0, 0.5);
    EXPECT_NEAR(factsOf(Unit::Teaspoon).size, 4.9, 0.05);
    EXPECT_NEAR(factsOf(Unit::Pint).size, 473.0, 0.5);
    EXPECT_NEAR(factsOf(Unit::Quart).size, 946.0, 0.5);
}

// The imperial gallon is 4.54609 L; Weights and Measures Act 1985 (UK), schedule 1.
TEST(Unit, ImperialMeasuresAreFractionsOfTheImperialGallon)
{
    constexpr double gallon_ml = 4546.09;
    constexpr double rounding = 1e-9;
    EXPECT_NEAR(factsOf(Unit::ImperialPint).size, gallon_ml / 8, rounding);
    EXPECT_NEAR(factsOf(Unit::ImperialCup).size, gallon_ml / 16, rounding);
    EXPECT_NEAR(factsOf(Unit::ImperialFluidOunce).size, gallon_ml / 160, rounding);
}

// Sets of small measuring spoons: dash 1/8 and pinch 1/16 of a teaspoon (common practice, no source); a shot is
// the jigger of 1.5 US fl oz (USDA SR28, NDB 14037).
TEST(Unit, SmallSpoonsAndTheShotAreFractionsOfTheGallon)
{
    constexpr double gallon_ml = 231.0 * 2.54 * 2.54 * 2.54;
    constexpr double rounding = 1e-9;
    EXPECT_NEAR(factsOf(Unit::Dash).size, gallon_ml / 768 / 8, rounding);
    EXPECT_NEAR(factsOf(Unit::Pinch).size, gallon_ml / 768 / 16, rounding);
    EXPECT_NEAR(factsOf(Unit::Shot).size, gallon_ml / 128 * 1.5, rounding);
}

// Of a dropper, 20 to the millilitre (common practice, no source).
TEST(Unit, TwentyDropsAreAMillilitre) { EXPECT_DOUBLE_EQ(20 * factsOf(Unit::Drop).size, 1.0); }

TEST(Unit, PoundHasSixteenOunces)
{
    EXPECT_DOUBLE_EQ(factsOf(Unit::Pound).size, 16 * factsOf(Unit::Ounce).size);
    EXPECT_EQ(factsOf(Unit::Pound).size, 453.59237);
}

TEST(LeadingUnit, TakesTheLongestName)
{
    const auto check = [](std::string_view text, Unit unit, std::size_t length) {
        const auto found = leadingUnit(text);
        ASSERT_TRUE(found) << text;
        EXPECT_EQ(found->unit, unit) << text;
        EXPECT_EQ(found->length, length) << text;
    };
    check("fl oz sugar", Unit::FluidOunce, 5);
    check("fl. oz. sugar", Unit::FluidOunce, 7);
    check("metric cups milk", Unit::MetricCup, 11);
    check("% of mix sugar", Unit::PercentOfMix, 8);
    check("% of sugar", Unit::PercentOfMix, 1);
    check("%sugar", Unit::PercentOfMix, 1);
    check("c. sugar", Unit::Cup, 2);
    check("g", Unit::Gram, 1);
    check("g\u00a0water", Unit::Gram, 1);
    check("g, sifted", Unit::Gram, 1);
    check("T sugar", Unit::Tablespoon, 1);
    check("t sugar", Unit::Teaspoon, 1);
}

TEST(LeadingUnit, NeverEndsInTheMiddleOfAWord)
{
    for (const std::string_view text :
        {"", " g", "granulated sugar", "large eggs", "tbspx", "gâteau", "cupola", "metric", "fl", "1 g"})
        EXPECT_FALSE(leadingUnit(text)) << text;
}

}  // namespace
}  // namespace firn
