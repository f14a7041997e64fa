// Mixing two strengths: exact by definition, so the cases are arithmetic that can be checked by hand, in the forms that dairy and confectionery
// textbooks teach: the square, and s = m (b - a)/(100 - b) for sugar, w = m (a - b)/b for water, m (b - a)/(c - b) for a syrup of strength c.

#include "syrup/pearson.h"
#include "syrup/syrup.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

constexpr double rounding = 1e-9;

TEST(PearsonSquareByHand, CreamAndMilk)
{
    // 40 % and 3 % to 20 %: 17 parts and 20 parts; 37 kg take 17 and 20 kg.
    const auto blend = pearsonSquare({0.40}, {0.03}, {0.20}, {37000.0});
    EXPECT_NEAR(blend->partsOfFirst, 17.0, rounding);
    EXPECT_NEAR(blend->partsOfSecond, 20.0, rounding);
    EXPECT_NEAR(blend->first.value, 17000.0, 1e-8);
    EXPECT_NEAR(blend->second.value, 20000.0, 1e-8);
}

TEST(PearsonSquareByHand, TwoSyrups)
{
    // 65 and 20 °Bx to 35: 15 and 30 parts, so one third of the strong one.
    const auto blend = pearsonSquare({0.65}, {0.20}, {0.35}, {900.0});
    EXPECT_NEAR(blend->first.value, 300.0, rounding);
    EXPECT_NEAR(blend->second.value, 600.0, rounding);
}

TEST(PearsonSquareByHand, TheEndsTakeOneOnly)
{
    EXPECT_EQ(pearsonSquare({0.65}, {0.20}, {0.65}, {900.0})->second.value, 0.0);
    EXPECT_EQ(pearsonSquare({0.65}, {0.20}, {0.20}, {900.0})->first.value, 0.0);
}

TEST(AmountsByHand, SugarWaterAndSyrup)
{
    EXPECT_NEAR(amountToReach({0.25}, {1000.0}, {0.20}, {1.0})->value, 1000.0 * 5.0 / 75.0, rounding);
    EXPECT_NEAR(amountToReach({0.20}, {1000.0}, {0.25}, {0.0})->value, 250.0, rounding);
    EXPECT_NEAR(amountToReach({0.25}, {1000.0}, {0.20}, {0.65})->value, 125.0, rounding);
    EXPECT_NEAR(dilutedTo({0.30}, {500.0}, {0.60})->water.value, 500.0, rounding);
}

TEST(AmountsByHand, BoilingDown)
{
    // A kilogram of 20 °Bx boiled to 50 °Bx leaves 400 g.
    EXPECT_NEAR(boiledTo(MassFraction{0.50}, {1000.0}, {0.20})->waterDrivenOff.value, 600.0, rounding);
    EXPECT_NEAR(boiledTo(Grams{400.0}, {1000.0}, {0.20})->strength.value, 0.50, rounding);
}

}  // namespace
}  // namespace firn
