// The picture behind the bands of sugar.

#include "texture/sugar_ice_curve.h"

#include "freezing/freezing_curve.h"
#include "mix_of.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace firn {
namespace {

// Ice of sucrose solutions at -12 °C: derived outside this project from Starzak and Peacock's activity and Murphy and Koop's ice, ±1.5 points;
// printed for 10, 15, 25.5, 30, 40 and 45 %.
TEST(SugarIceCurve, OfSucroseIsThatOfItsSolutions)
{
    const SugarIceCurve curve = sugarIceCurve(mixOf({{Constituent::Sucrose, 24.0}}), TextureClass::Granita, {-12.0});
    const auto iceAt = [&](double sugars_percent) { return percent(curve.points.at(std::size_t(sugars_percent)).ice); };
    for (const auto& [sugars, ice] : {std::pair{10.0, 83.36}, {15.0, 75.04}, {30.0, 50.07}, {40.0, 33.43}, {45.0, 25.11}}) {
        EXPECT_NEAR(percent(curve.points.at(std::size_t(sugars)).sugars), sugars, 1e-9);
        EXPECT_NEAR(iceAt(sugars), ice, 0.1) << sugars;
    }
    for (std::size_t i = 1; i < curve.points.size(); ++i)
        EXPECT_LE(curve.points[i].ice, curve.points[i - 1].ice) << "more sugar, less ice";
    EXPECT_NEAR(percent(curve.points.back().sugars), 50.0, 1e-9);
}

TEST(SugarIceCurve, PassesThroughTheMixWhateverIsInIt)
{
    Mix milky = mixOf({{Constituent::Sucrose, 15.0}, {Constituent::Glucose, 3.0}, {Constituent::Lactose, 5.0},
        {Constituent::Fat, 9.0}, {Constituent::Protein, 4.0}});
    milky.milkFat = {9.0};
    milky.milkSolidsNotFat = {9.5};
    const Mix spirited = mixOf({{Constituent::Sucrose, 20.0}, {Constituent::Fructose, 4.0}, {Constituent::Ethanol, 4.0}});
    for (const auto& [mix, kind] : {std::pair{milky, TextureClass::IceCream}, {spirited, TextureClass::Sorbet},
             {mixOf({{Constituent::Sucrose, 25.0}}), TextureClass::Granita}}) {
        const SugarIceCurve curve = sugarIceCurve(mix, kind, {-10.0});
        EXPECT_NEAR(curve.mix.ice.value, freezingCurve(mix).iceAt({-10.0}).value, 2e-4);
        const auto after = std::ranges::find_if(curve.points, [&](const auto& point) { return point.sugars >= curve.mix.sugars; });
        ASSERT_NE(after, curve.points.end());
        ASSERT_NE(after, curve.points.begin());
        EXPECT_LE(after->ice.value, curve.mix.ice.value + 1e-6);
        EXPECT_GE(std::prev(after)->ice.value, curve.mix.ice.value - 1e-6);
    }
}

TEST(SugarIceCurve, HasTheBandsOfItsKindAndTheBooksBesideThem)
{
    const Mix mix = mixOf({{Constituent::Sucrose, 28.0}});
    const SugarIceCurve curve = sugarIceCurve(mix, TextureClass::Sorbet, {-12.0});
    ASSERT_EQ(curve.bands.size(), 2u);
    EXPECT_EQ(curve.bands[0].band->textureClass, TextureClass::Granita);
    EXPECT_GT(curve.bands[0].iceAtLow, curve.bands[0].iceAtHigh);
    // What the bands are for: granita lies loose, sorbet is scooped, each all across its band within a class.
    EXPECT_GE(curve.bands[0].iceAtHigh, curve.bands[0].leastBest);
    EXPECT_LE(curve.bands[0].iceAtLow, curve.bands[0].mostBest);
    EXPECT_GE(curve.bands[1].iceAtHigh.value, curve.bands[1].leastBest.value);
    EXPECT_FALSE(curve.ofSources.empty());
    std::string text;
    for (const Sentence& each : saidBy(curve))
        text += english(each) + "\n";
    for (const char* part : {"This mix: 28.0 % sugars", "Usual for granita: 20 to 26 % (unverified).",
             "Usual for sorbet: 30 to 36 % (unverified).", "Escoffier", "30.0 to 32.5 %"})
        EXPECT_NE(text.find(part), std::string::npos) << part << " is not in\n" << text;

    const SugarIceCurve cream =
        sugarIceCurve(mixOf({{Constituent::Sucrose, 18.0}, {Constituent::Fat, 10.0}}), TextureClass::IceCream, {-12.0});
    ASSERT_EQ(cream.bands.size(), 1u);
    EXPECT_EQ(cream.bands[0].band->textureClass, TextureClass::IceCream);
    const SugarIceCurve custard =
        sugarIceCurve(mixOf({{Constituent::Sucrose, 18.0}, {Constituent::Fat, 10.0}}), TextureClass::FrozenCustard, {-12.0});
    ASSERT_EQ(custard.bands.size(), 1u);
    EXPECT_EQ(custard.bands[0].band->textureClass, TextureClass::IceCream) << "with yolk it is still one";
    EXPECT_EQ(custard.counts, SugarCount::WithoutMilkSugar);
}

TEST(SugarIceCurve, OfNothingIsEmpty)
{
    EXPECT_TRUE(sugarIceCurve(Mix{}, TextureClass::Nothing, {-12.0}).points.empty());
    Mix dry;
    dry.amounts[Constituent::Sucrose] = {100.0};
    EXPECT_TRUE(sugarIceCurve(dry, TextureClass::Nothing, {-12.0}).points.empty());
    EXPECT_TRUE(saidBy(sugarIceCurve(dry, TextureClass::Nothing, {-12.0})).empty());
}

}  // namespace
}  // namespace firn
