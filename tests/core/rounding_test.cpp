#include "recipe/rounding.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

std::string said(const Amount& exact, const Rounding& rounding = {}) { return amountText(rounded(exact, rounding).amount); }

TEST(Rounding, WeightsGoToTheScale)
{
    EXPECT_EQ(said({152.4, Unit::Gram}), "152 g");
    EXPECT_EQ(said({0.1524, Unit::Kilogram}), "0.152 kg");
    EXPECT_EQ(said({152.4, Unit::Gram}, {{5.0}}), "150 g");
    EXPECT_EQ(said({152.44, Unit::Gram}, {{0.1}}), "152.4 g");
    EXPECT_EQ(said({0.0, Unit::Gram}), "0 g");
}

TEST(Rounding, SmallWeightsGoToATenthOfAGram)
{
    EXPECT_EQ(said({0.33, Unit::Gram}), "0.3 g");
    EXPECT_EQ(said({9.96, Unit::Gram}, {{5.0}}), "10 g");
    EXPECT_EQ(said({8.04, Unit::Gram}, {{5.0}}), "8 g");
    EXPECT_EQ(said({8.04, Unit::Gram}, {{0.01}}), "8.04 g");
    EXPECT_EQ(said({0.004, Unit::Gram}), "0.1 g");  // never nothing
    EXPECT_EQ(said({53.0, Unit::Milligram}), "53 mg");
}

// A scale that shows whole grams cannot say 10.5 g within 2 %, and one that shows 5 g cannot say 52 g.
TEST(Rounding, WeightsTooSmallForTheScaleGoToATenthOfAGram)
{
    EXPECT_EQ(said({10.46, Unit::Gram}), "10.5 g");
    EXPECT_EQ(said({52.0, Unit::Gram}, {{5.0}}), "52 g");
}

TEST(Rounding, PoundsAndOuncesGoToQuarters)
{
    EXPECT_EQ(said({1.26, Unit::Pound}), "1 1/4 lb");
    EXPECT_EQ(said({0.9, Unit::Pound}), "14 1/2 oz");
    EXPECT_EQ(said({1.1, Unit::Ounce}), "31 g");
}

TEST(Rounding, CupsGoToQuartersAndThirds)
{
    EXPECT_EQ(said({1.499, Unit::Cup}), "1 1/2 cups");
    EXPECT_EQ(said({1.33, Unit::Cup}), "1 1/3 cups");
    EXPECT_EQ(said({25.5, Unit::Cup}), "25 1/2 cups");
    EXPECT_EQ(said({0.2, Unit::Cup}), "9 1/2 tsp");
    EXPECT_EQ(said({0.1, Unit::MetricCup}), "5 metric tsp");
}

TEST(Rounding, SmallSpoonsGoDownToPinches)
{
    EXPECT_EQ(said({0.126, Unit::Teaspoon}), "1/8 tsp");
    EXPECT_EQ(said({0.0625, Unit::Teaspoon}), "1 pinch");
    EXPECT_EQ(said({0.5, Unit::Pinch}), "1/2 pinch");
}

TEST(Rounding, JugsAndSyringesSayMillilitres)
{
    EXPECT_EQ(said({503.0, Unit::Millilitre}), "505 mL");
    EXPECT_EQ(said({1.503, Unit::Litre}), "1.505 L");
    EXPECT_EQ(said({24.2, Unit::Millilitre}), "24 mL");
    EXPECT_EQ(said({2.47, Unit::Millilitre}), "2.5 mL");
    EXPECT_EQ(said({0.616, Unit::Millilitre}), "0.62 mL");
}

TEST(Rounding, PiecesAreHalvedAtMost)
{
    EXPECT_EQ(said({4.5, Unit::Piece}), "4 1/2 pieces");
    EXPECT_EQ(said({4.45, Unit::Piece}), "4 1/2 pieces");
    const RoundedAmount unknown = rounded({2.3, Unit::Piece}, {});
    EXPECT_EQ(amountText(unknown.amount), "2 1/2 pieces");
    EXPECT_NEAR(unknown.deviation_percent, 100.0 * (2.5 / 2.3 - 1.0), 1e-9);
    EXPECT_TRUE(unknown.isOff());
    const auto fiftyGrams = [](const Amount& amount) -> std::optional<Grams> {
        return amount.unit == Unit::Piece ? Grams{50.0} * amount.value : Grams{amount.value};
    };
    const RoundedAmount egg = rounded({2.3, Unit::Piece}, {}, Grams{115.0}, fiftyGrams);
    EXPECT_EQ(egg, (RoundedAmount{{115.0, Unit::Gram}, 0.0}));
    EXPECT_FALSE(egg.isOff());
}

// Of a powder that packs closer in the cup: 8 g a tablespoon, 2 g a teaspoon.
TEST(Rounding, ASmallerSpoonMakesTheSameMassNotTheSameVolume)
{
    const auto powder = [](const Amount& amount) -> std::optional<Grams> {
        switch (amount.unit) {
        case Unit::Tablespoon:
            return Grams{8.0} * amount.value;
        case Unit::Teaspoon:
            return Grams{2.0} * amount.value;
        case Unit::Gram:
            return Grams{amount.value};
        default:
            return std::nullopt;
        }
    };
    EXPECT_EQ(rounded({0.25, Unit::Tablespoon}, {}, Grams{2.0}, powder), (RoundedAmount{{1.0, Unit::Teaspoon}, 0.0}));
}

// Exactly two per cent is still passed, a little more is not.
TEST(Rounding, IsOffBeyondTwoPerCent)
{
    EXPECT_FALSE((RoundedAmount{{}, 2.0}.isOff()));
    EXPECT_FALSE((RoundedAmount{{}, -2.0}.isOff()));
    EXPECT_TRUE((RoundedAmount{{}, 2.001}.isOff()));
    EXPECT_TRUE((RoundedAmount{{}, -2.001}.isOff()));
    EXPECT_TRUE((RoundedAmount{{}, std::nan("")}.isOff()));
}

TEST(Rounding, CanBeLeftOff)
{
    EXPECT_EQ(rounded({1.234, Unit::Cup}, {{1.0}, false}), (RoundedAmount{{1.234, Unit::Cup}, 0.0}));
    EXPECT_EQ(rounded({2.3, Unit::Piece}, {{1.0}, false}), (RoundedAmount{{2.3, Unit::Piece}, 0.0}));
    EXPECT_EQ(rounded({152.44, Unit::Gram}, {{0.0}, true}), (RoundedAmount{{152.44, Unit::Gram}, 0.0}));
    EXPECT_EQ(rounded({1.234, Unit::Pound}, {{0.0}, true}), (RoundedAmount{{1.234, Unit::Pound}, 0.0}));
}

RC_GTEST_PROP(Rounding, ShowsHowFarAnyAmountIsOffAndKeepsTheDimensionWithoutAMass, ())
{
    const Amount exact{
        *rc::gen::inRange(1, 1000000) / 3331.0, allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit};
    const RoundedAmount result = rounded(exact, {{*rc::gen::element(0.0, 0.01, 0.1, 1.0, 2.0, 5.0)}, *rc::gen::arbitrary<bool>()});
    const UnitFacts &before = factsOf(exact.unit), &after = factsOf(result.amount.unit);
    RC_ASSERT(before.dimension == after.dimension);
    RC_ASSERT(result.amount.value > 0.0);
    const double deviation_percent = 100.0 * (result.amount.value * after.size / (exact.value * before.size) - 1.0);
    RC_ASSERT(std::abs(deviation_percent - result.deviation_percent) <= 1e-9 * std::max(1.0, std::abs(deviation_percent)));
}

RC_GTEST_PROP(Rounding, NeverMovesAWeightFromTwoAndAHalfGramsOnByMoreThanTwoPerCent, ())
{
    const double grams = *rc::gen::inRange(2500, 10000000) / 1000.0;
    RC_ASSERT(!rounded({grams, Unit::Gram}, {{*rc::gen::element(0.1, 1.0, 2.0, 5.0)}}).isOff());
}

}  // namespace
}  // namespace firn
