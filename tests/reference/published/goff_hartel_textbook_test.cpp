// H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6, Example Problem 13 and Tables 6.1 and 6.2: a mix of 10 % milk
// solids-not-fat, 2 % whey solids, 12 % sucrose, 4 % corn syrup solids of 42 DE and 60 % water. Figures printed to 0.01.

#include "freezing/freezing_curve.h"
#include "freezing/textbook.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

constexpr double printed = 0.01;

TextbookMix exampleByFactors()
{
    // The book's factors: lactose of milk solids-not-fat and of whey solids, disaccharides, 42 DE solids.
    return {{10 * 0.545 + 2 * 0.765 + 12 * 1.0 + 4 * 0.8}, {10.0 + 2.0}, {60.0}};
}

/// The same mix by its constituents. Milk solids-not-fat: 54.5 % lactose, 37 % protein, 8.5 % minerals; whey solids: 76.5, 13, 8.5 (from
/// memory). The syrup's solids: glucose, maltose, and chains that keep its number of molecules. The rest is milk fat.
Mix exampleByConstituents()
{
    Mix mix;
    mix.amounts[Constituent::Water] = {60.0};
    mix.amounts[Constituent::Lactose] = {10 * 0.545 + 2 * 0.765};
    mix.amounts[Constituent::Protein] = {10 * 0.37 + 2 * 0.13};
    mix.amounts[Constituent::Minerals] = {10 * 0.085 + 2 * 0.085};
    mix.amounts[Constituent::Sucrose] = {12.0};
    mix.amounts[Constituent::Glucose] = {4 * 0.185};
    mix.amounts[Constituent::Maltose] = {4 * 0.139};
    mix.amounts[Constituent::Oligosaccharides] = {4 * 0.422};
    mix.amounts[Constituent::Dextrins] = {4 * 0.254};
    mix.amounts[Constituent::Fat] = {12.0};
    mix.milkFat = {12.0};
    mix.milkSolidsNotFat = {12.0};
    return mix;
}

TEST(GoffHartel, WorkedExampleStepByStep)
{
    const TextbookMix mix = exampleByFactors();
    EXPECT_NEAR(mix.sucroseEquivalents.value, 22.18, printed);
    const auto start = textbookFreezing(mix);
    EXPECT_NEAR(start->sucroseEquivalents_per100gWater, 36.97, printed);
    EXPECT_NEAR(start->depressionOfSugars.value, 2.27, printed);
    EXPECT_NEAR(start->depressionOfSalts.value, 0.47, printed);
    EXPECT_NEAR(start->freezingPoint.value, -2.74, printed);
}

TEST(GoffHartel, WithAFifthOfTheWaterFrozen)
{
    const auto frozen = textbookFreezing(exampleByFactors(), 0.20);
    EXPECT_NEAR(frozen->sucroseEquivalents_per100gWater, 46.21, printed);
    EXPECT_NEAR(frozen->depressionOfSugars.value, 2.86, printed);
    EXPECT_NEAR(frozen->depressionOfSalts.value, 0.59, printed);
    EXPECT_NEAR(frozen->freezingPoint.value, -3.45, printed);
}

TEST(GoffHartel, TheMixByItsConstituentsGivesTheSame)
{
    EXPECT_NEAR(textbookFreezing(textbookMix(exampleByConstituents()))->freezingPoint.value, -2.74, 2 * printed);
}

// By water activity the mix freezes 0.05 K colder. Both methods agree on what is dissolved; the difference is the water that the milk's protein
// keeps from dissolving anything, which the book does not count.
TEST(GoffHartel, WaterActivityAgreesAndTheDifferenceIsTheProteinsWater)
{
    Mix mix = exampleByConstituents();
    EXPECT_NEAR(freezingCurve(mix).freezingPoint->temperature.value, -2.74, 0.3);
    mix.amounts[Constituent::Protein] = {0.0};
    EXPECT_NEAR(freezingCurve(mix).freezingPoint->temperature.value, -2.74, 0.03);
    mix.amounts[Constituent::Minerals] = {0.0};
    EXPECT_NEAR(freezingCurve(mix).freezingPoint->temperature.value, -2.27, 0.06);
}

// Splitting a sugar into two that act alike changes nothing: what the book's sum of sucrose equivalents takes for granted.
TEST(GoffHartel, LikeSugarsCountAsOne)
{
    Mix split;
    split.amounts[Constituent::Sucrose] = {15.0};
    split.amounts[Constituent::Lactose] = {15.0};
    split.amounts[Constituent::Water] = {70.0};
    Mix whole;
    whole.amounts[Constituent::Sucrose] = {30.0};
    whole.amounts[Constituent::Water] = {70.0};
    EXPECT_NEAR(freezingCurve(split).freezingPoint->temperature.value, freezingCurve(whole).freezingPoint->temperature.value, 1e-9);
}

TEST(GoffHartel, BeyondTheTableIsSaid)
{
    EXPECT_FALSE(textbookFreezing({{180.0}, {0.0}, {100.0}})->isBeyondTable);
    EXPECT_TRUE(textbookFreezing({{184.83}, {0.0}, {100.0}})->isBeyondTable);
    // The book continues the last step's slope differently (14.27 K); a straight line gives 14.00.
    EXPECT_NEAR(textbookFreezing({{184.83}, {0.0}, {100.0}})->depressionOfSugars.value, 14.00, printed);
    EXPECT_FALSE(textbookFreezing({{10.0}, {0.0}, {0.0}}).has_value());
}

// "By the textbook -2,836.8 °C" for a row of icing sugar: the book goes no farther than 184.83 g.
TEST(GoffHartel, FarBeyondTheTableThereIsNoFigure)
{
    EXPECT_TRUE(textbookFreezing({{200.0}, {0.0}, {100.0}}).has_value());
    EXPECT_FALSE(textbookFreezing({{200.1}, {0.0}, {100.0}}).has_value());
    Mix icingSugar;
    icingSugar.amounts[Constituent::Sucrose] = {99.77};
    icingSugar.amounts[Constituent::Water] = {0.23};
    EXPECT_FALSE(textbookFreezing(textbookMix(icingSugar)).has_value());
}

}  // namespace
}  // namespace firn
