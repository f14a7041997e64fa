#include "solution/alcohol_by_volume.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

using enum Constituent;

TEST(AlcoholByVolume, IsNamedInSeveralWays)
{
    for (const std::string_view unit : {"% vol", "%vol", "vol%", "% vol.", "% ABV", "abv", "% v/v", "% by volume"})
        EXPECT_TRUE(isAlcoholByVolume(unit)) << unit;
    for (const std::string_view unit : {"", "%", "g", "g/100 g", "% wt", "volt"})
        EXPECT_FALSE(isAlcoholByVolume(unit)) << unit;
}

// A liqueur of 29 % vol with 40 g of sugar in 100 g is denser than water: fewer grams than in water alone, where it would be 23.7.
TEST(AlcoholByVolume, SugarMakesADrinkDenserAndItsAlcoholLess)
{
    Amounts sugar;
    sugar[Sucrose] = {40.0};
    const double plain_g = ethanolIn100g(29.0, {})->value;
    const double liqueur_g = ethanolIn100g(29.0, sugar)->value;
    EXPECT_NEAR(plain_g, 23.7, 0.1);
    EXPECT_LT(liqueur_g, plain_g - 1.5);
    EXPECT_LT(liqueur_g, 29.0);
}

TEST(AlcoholByVolume, NeverTakesWhatItCannotBe)
{
    Amounts sugar;
    sugar[Sucrose] = {80.0};
    EXPECT_EQ(english(ethanolIn100g(101.0, {}).error()), "101.0 % vol cannot be. Write a strength from 0 to 100 % vol.");
    EXPECT_FALSE(ethanolIn100g(-1.0, {}));
    EXPECT_EQ(english(ethanolIn100g(60.0, sugar).error()),
        "60.0 % vol has no room beside 80.0 g of other constituents. Correct one of them.");
    EXPECT_EQ(ethanolIn100g(0.0, sugar)->value, 0.0);
    EXPECT_NEAR(ethanolIn100g(100.0, {})->value, 100.0, 0.01);
}

TEST(AlcoholByVolume, LeavesTheGivenWaterWhereTheRestIsSomethingElse)
{
    Amounts wine;
    wine[Water] = {87.0};
    const double ethanol_g = ethanolIn100g(12.0, wine, Other)->value;
    Amounts whole = wine;
    whole[Ethanol] = {ethanol_g};
    whole[Other] = {100.0 - 87.0 - ethanol_g};
    EXPECT_NEAR(alcoholByVolume_percent(whole), 12.0, 1e-9);
}

RC_GTEST_PROP(AlcoholByVolume, ThereAndBackIsTheSame, ())
{
    Amounts others;
    others[Sucrose] = {*rc::gen::inRange(0, 500) / 10.0};
    others[Acid] = {*rc::gen::inRange(0, 30) / 10.0};
    const double strength_percent = *rc::gen::inRange(0, 450) / 10.0;
    const Grams ethanol = ethanolIn100g(strength_percent, others).value();
    others[Ethanol] = ethanol;
    others[Water] = Grams{100.0} - others.total();
    RC_ASSERT(std::abs(alcoholByVolume_percent(others) - strength_percent) < 1e-6);
}

}  // namespace
}  // namespace firn
