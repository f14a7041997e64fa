#include "mix/mix.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>

namespace firn {
namespace {

Composition milk()
{
    Composition composition;
    composition.per100g[Constituent::Water] = {88.0};
    composition.per100g[Constituent::Lactose] = {5.0};
    composition.per100g[Constituent::Fat] = {3.5};
    composition.per100g[Constituent::Protein] = {3.0};
    composition.per100g[Constituent::Minerals] = {0.5};
    composition.milkFat = {3.5};
    composition.milkSolidsNotFat = {8.5};
    return composition;
}

TEST(Mix, AddsInProportion)
{
    Mix mix;
    mix.add(milk(), {250.0});
    EXPECT_DOUBLE_EQ(mix.mass().value, 250.0);
    EXPECT_DOUBLE_EQ(mix[Constituent::Water].value, 220.0);
    EXPECT_DOUBLE_EQ(mix.milkSolidsNotFat.value, 21.25);
    EXPECT_DOUBLE_EQ(sugars(mix).value, 12.5);
    EXPECT_DOUBLE_EQ(totalSolids(mix).value, 30.0);
    EXPECT_DOUBLE_EQ(shareOf(mix.milkFat, mix).value, 0.035);
}

TEST(Mix, AlcoholIsNoSolid)
{
    Mix mix;
    mix.amounts[Constituent::Ethanol] = {10.0};
    mix.amounts[Constituent::Water] = {90.0};
    EXPECT_DOUBLE_EQ(totalSolids(mix).value, 0.0);
}

TEST(Mix, AnEmptyOneHasNoShares)
{
    EXPECT_TRUE(Mix{}.isEmpty());
    EXPECT_EQ(shareOf({0.0}, Mix{}).value, 0.0);
    EXPECT_EQ(ribbonOf(Amounts{}), Ribbon{});
}

TEST(Ribbon, EveryConstituentIsInOnePart)
{
    Amounts one;
    for (std::size_t i = 0; i < constituentCount; ++i)
        one[static_cast<Constituent>(i)] = {1.0};
    const Ribbon ribbon = ribbonOf(one);
    const double sum =
        std::accumulate(ribbon.begin(), ribbon.end(), 0.0, [](double s, MassFraction part) { return s + part.value; });
    EXPECT_NEAR(sum, 1.0, 1e-12);
    EXPECT_NEAR(ribbon[static_cast<std::size_t>(RibbonPart::Sugars)].value, 7.0 / constituentCount, 1e-12);
    EXPECT_NEAR(ribbon[static_cast<std::size_t>(RibbonPart::SaltAndAcid)].value, 3.0 / constituentCount, 1e-12);
}

TEST(Mix, SugarsOfTheRibbonAreTheSugarKinds)
{
    for (const ConstituentFacts& facts : allConstituents())
        EXPECT_EQ(ribbonPartOf(facts.constituent) == RibbonPart::Sugars,
            std::ranges::find(sugarKinds, facts.constituent) != sugarKinds.end())
            << facts.key;
}

/// Published figures are rounded: whole milk adds up to 100.25 g, strawberries to less than 100.
TEST(Mix, ARowWeighsWhatWasWeighedWhateverItsSourceAddsUpTo)
{
    for (const Ingredient& ingredient : shippedCatalogue().all()) {
        Mix mix;
        mix.add(ingredient.composition, {600.0});
        EXPECT_NEAR(mix.mass().value, 600.0, 1e-9) << ingredient.id;
        const double scale = 600.0 / ingredient.composition.per100g.total().value;
        EXPECT_NEAR(mix.milkFat.value, scale * ingredient.composition.milkFat.value, 1e-9) << ingredient.id;
    }
    Mix nothing;
    nothing.add(Composition{}, {600.0});
    EXPECT_TRUE(nothing.isEmpty());
}

}  // namespace
}  // namespace firn
