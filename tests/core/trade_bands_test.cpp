// Bands count what their sources count, and say so.

#include "texture/trade_bands.h"

#include "mix_of.h"
#include "texture/ice_wanted.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

std::string textOf(const std::vector<Sentence>& sentences)
{
    std::string text;
    for (const Sentence& each : sentences)
        text += english(each) + "\n";
    return text;
}

Mix iceCream(double sucrose, double lactose)
{
    Mix mix = mixOf(
        {{Constituent::Sucrose, sucrose}, {Constituent::Lactose, lactose}, {Constituent::Fat, 10.0}, {Constituent::Protein, 4.0}});
    mix.milkSolidsNotFat = {lactose + 4.5};
    mix.milkFat = {10.0};
    return mix;
}

// 23.4 % sugars beside a band of 13 to 20 %: the band counts added sugar, of which there were 18 % (C15).
TEST(TradeBands, OfIceCreamCountAddedSugars)
{
    const TradeBand& band = *tradeBandOf(TextureClass::IceCream);
    const Mix mix = iceCream(18.0, 5.4);
    EXPECT_TRUE(isIn(band, mix));
    EXPECT_EQ(textOf(standingInBand(mix, TextureClass::IceCream)), "18.0 % added sugars, not counting 5.4 % milk sugar. Usual for "
                                                                   "ice cream: 13 to 20 % (McGee, On Food and Cooking: 13 to 16 % "
                                                                   "premium, 15 to 20 % hand-made).\n");
    EXPECT_FALSE(isIn(band, iceCream(20.2, 0.0)));
    EXPECT_FALSE(isIn(band, iceCream(12.8, 6.0))) << "milk sugar must not lift it into the band";
}

TEST(TradeBands, MilkSugarIsThatOfTheMilkAlone)
{
    Mix mix = iceCream(10.0, 5.0);
    mix.milkSolidsNotFat = {0.0};  // pure lactose, stirred in
    EXPECT_NEAR(percent(countedSugars(mix, SugarCount::WithoutMilkSugar).sugars), 15.0, 1e-9);
    mix.milkSolidsNotFat = {9.0};
    EXPECT_NEAR(percent(countedSugars(mix, SugarCount::WithoutMilkSugar).sugars), 10.0, 1e-9);
    EXPECT_NEAR(percent(countedSugars(mix, SugarCount::AllSugars).sugars), 15.0, 1e-9);
}

// Vodka and prosecco: "sorbet usually has 30 to 36 %" though the alcohol was doing the work (C17).
TEST(TradeBands, AlcoholCountsAsTheSugarThatSoftensAsMuch)
{
    const Mix mix = mixOf({{Constituent::Sucrose, 24.0}, {Constituent::Ethanol, 3.5}});
    EXPECT_TRUE(isIn(*tradeBandOf(TextureClass::Sorbet), mix));
    EXPECT_EQ(textOf(standingInBand(mix, TextureClass::Sorbet)),
        "24.0 % sugars, and alcohol that softens like 8.1 % more: 32.1 % in all. Usual for sorbet: 30 to 36 % (unverified).\n");
}

// Independent of how the count is made: the ice is what the trade's figure is about.
TEST(TradeBands, AMixWithAlcoholHasTheIceOfTheSugarThatItCountsAs)
{
    for (const double sucrose : {16.0, 22.0, 26.0, 30.0}) {
        for (const double ethanol : {1.0, 2.0, 4.0}) {
            const Mix mix = mixOf({{Constituent::Sucrose, sucrose}, {Constituent::Ethanol, ethanol}});
            const double counted = percent(countedSugars(mix, SugarCount::AllSugars).total());
            const Mix plain = mixOf({{Constituent::Sucrose, counted}});
            EXPECT_NEAR(percent(iceOnceAt(mix, {-18.0})), percent(iceOnceAt(plain, {-18.0})), 3.0) << sucrose << ", " << ethanol;
        }
    }
}

TEST(TradeBands, AMixThatHasLeftItsBandIsToldWhereItIs)
{
    const auto said = [](double sugar, TextureClass kind) {
        return textOf(standingInBand(mixOf({{Constituent::Sucrose, sugar}}), kind));
    };
    EXPECT_NE(said(28.0, TextureClass::Sorbet).find("between granita (20 to 26 %) and sorbet (30 to 36 %)"), std::string::npos);
    EXPECT_NE(said(28.0, TextureClass::Granita).find("between granita"), std::string::npos);
    EXPECT_NE(said(32.0, TextureClass::Granita).find("That is usual for sorbet (30 to 36 %)."), std::string::npos);
    EXPECT_NE(said(22.0, TextureClass::Sorbet).find("That is usual for granita (20 to 26 %)."), std::string::npos);
    EXPECT_NE(said(29.5, TextureClass::Sorbet).find("between granita"), std::string::npos);
    EXPECT_NE(said(40.0, TextureClass::Sorbet).find("This mix is 4.0 percentage points above that."), std::string::npos);
    EXPECT_NE(said(10.0, TextureClass::Granita).find("This mix is 10.0 percentage points below that."), std::string::npos);
    EXPECT_EQ(said(32.0, TextureClass::Sorbet).find("This mix"), std::string::npos) << "in its band";
    EXPECT_EQ(said(25.0, TextureClass::StillFrozenIce), "");
}

TEST(TradeBands, EdgesBelongToTheBand)
{
    const TradeBand& sorbet = *tradeBandOf(TextureClass::Sorbet);
    for (const double sugar : {30.0, 36.0})
        EXPECT_TRUE(isIn(sorbet, mixOf({{Constituent::Sucrose, sugar}}))) << sugar;
    for (const double sugar : {29.9, 36.1})
        EXPECT_FALSE(isIn(sorbet, mixOf({{Constituent::Sucrose, sugar}}))) << sugar;
}

}  // namespace
}  // namespace firn
