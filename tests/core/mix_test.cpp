#include "mix/composition_table.h"
#include "mix/mix.h"
#include "mix/symbols.h"

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

TEST(MixParts, EachHasItsFigureAndTheMassOfItsOwn)
{
    Mix mix;
    Composition composition;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        mix.amounts[static_cast<Constituent>(i)] = {10.0 + static_cast<double>(i)};
        composition.per100g[static_cast<Constituent>(i)] = {1.0 + static_cast<double>(i)};
    }
    mix.milkFat = {1.0};
    mix.milkSolidsNotFat = {2.0};
    mix.yolkSolids = {3.0};
    for (std::size_t i = 0; i < constituentCount; ++i) {
        const ConstituentFacts& facts = allConstituents()[i];
        const MixPart& part = partOf(facts.constituent);
        const bool isSugar = std::ranges::find(sugarKinds, facts.constituent) != sugarKinds.end();
        const std::string room = isSugar ? "sugars_g." : "constituents_g.";
        EXPECT_EQ(part.figure, facts.constituent == Constituent::Water ? "water_g" : room + std::string(facts.key));
        EXPECT_EQ(part.of(mix), mix[facts.constituent]) << facts.key;
        EXPECT_EQ(part.of(composition), composition.per100g[facts.constituent]) << facts.key;
    }
    EXPECT_EQ(milkFatPart().figure, "constituents_g.milk_fat");
    EXPECT_EQ(milkFatPart().of(mix).value, 1.0);
    EXPECT_EQ(milkSolidsNotFatPart().figure, "constituents_g.milk_solids_not_fat");
    EXPECT_EQ(milkSolidsNotFatPart().of(mix).value, 2.0);
    ASSERT_EQ(mixParts().size(), constituentCount + 3);
    EXPECT_EQ(mixParts().back().figure, "constituents_g.yolk_solids");
    EXPECT_EQ(mixParts().back().of(mix).value, 3.0);
}

TEST(CompositionLines, SeveralSugarsStandUnderTheirSum)
{
    const auto linesOf = [](const Composition& composition) {
        std::string text;
        for (const CompositionLine& line : compositionLines(composition))
            text +=
                (line.isPart ? "  " : "") + std::string(line.label) + " " + std::to_string(line.grams.value).substr(0, 4) + "\n";
        return text;
    };
    EXPECT_EQ(linesOf(milk()),
        "Water 88.0\nLactose 5.00\nFat 3.50\n  Milk fat 3.50\nProtein 3.00\nMinerals 0.50\n  Milk solids not fat 8.50\n");
    Composition sweetened = milk();
    sweetened.milkFat = {};
    sweetened.per100g[Constituent::Sucrose] = {10.0};
    sweetened.yolkSolids = {1.0};
    EXPECT_EQ(linesOf(sweetened), "Water 88.0\nSugars 15.0\n  Sucrose 10.0\n  Lactose 5.00\nFat 3.50\nProtein 3.00\nMinerals 0.50\n"
                                  "  Milk solids not fat 8.50\n  Egg yolk solids 1.00\n");
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
