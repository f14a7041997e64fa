#include "texture/texture.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Mix mixOf(double sugar, double fat, double milkSolidsNotFat, double ethanol, double yolkSolids = 0.0)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sugar};
    mix.amounts[Constituent::Fat] = {fat};
    mix.amounts[Constituent::Lactose] = {milkSolidsNotFat * 0.545};
    mix.amounts[Constituent::Protein] = {milkSolidsNotFat * 0.37};
    mix.amounts[Constituent::Minerals] = {milkSolidsNotFat * 0.085};
    mix.amounts[Constituent::Ethanol] = {ethanol};
    mix.milkFat = milkSolidsNotFat > 0.0 ? Grams{fat} : Grams{};
    mix.milkSolidsNotFat = {milkSolidsNotFat};
    mix.yolkSolids = {yolkSolids};
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

Texture textureOf(
    const Mix& mix, Process process, double overrun_percent = 0.0, Celsius serveAt = {-12.0}, Celsius freezerAt = {-18.0})
{
    return texture(mix, freezingCurve(mix), {process, overrun_percent, serveAt, freezerAt});
}

std::string allText(const std::vector<Sentence>& sentences)
{
    std::string text;
    for (const Sentence& sentence : sentences)
        text += english(sentence) + "\n";
    return text;
}

TEST(TextureClass, FollowsProcessThenComposition)
{
    EXPECT_EQ(textureOf(mixOf(24, 0, 0, 0), Process::Scraped).textureClass, TextureClass::Granita);
    EXPECT_EQ(textureOf(mixOf(32, 0, 0, 0), Process::Churned).textureClass, TextureClass::Sorbet);
    EXPECT_EQ(textureOf(mixOf(28, 1.5, 2.5, 0), Process::Churned).textureClass, TextureClass::Sherbet);
    EXPECT_EQ(textureOf(mixOf(18, 3.5, 9, 0), Process::Churned).textureClass, TextureClass::MilkIce);
    EXPECT_EQ(textureOf(mixOf(16, 10, 10, 0), Process::Churned).textureClass, TextureClass::IceCream);
    EXPECT_EQ(textureOf(mixOf(16, 12, 8, 0, 2.0), Process::Churned).textureClass, TextureClass::FrozenCustard);
    EXPECT_EQ(textureOf(mixOf(20, 12, 0, 0), Process::Churned).textureClass, TextureClass::CreamyIce);
    EXPECT_EQ(textureOf(mixOf(20, 22, 4, 0), Process::Folded).textureClass, TextureClass::Semifreddo);
    EXPECT_EQ(textureOf(mixOf(20, 0, 0, 0), Process::Still).textureClass, TextureClass::StillFrozenIce);
    EXPECT_EQ(textureOf(mixOf(0, 0, 0, 0), Process::Churned).textureClass, TextureClass::Ice);
    EXPECT_EQ(textureOf(mixOf(20, 0, 0, 25), Process::Scraped).textureClass, TextureClass::WillNotFreeze);
    EXPECT_EQ(textureOf(Mix{}, Process::Churned).textureClass, TextureClass::Nothing);
}

TEST(Texture, SpiritOnlyWillNotFreezeAndTheSentenceSaysWhatToDo)
{
    const Texture found = textureOf(mixOf(0, 0, 0, 33.3), Process::Scraped);
    EXPECT_FALSE(found.willFreeze);
    EXPECT_NE(allText(found.faults).find("Will not freeze at -18 °C: no ice forms."), std::string::npos);
    EXPECT_NE(allText(found.faults).find("of water"), std::string::npos) << allText(found.faults);
    EXPECT_FALSE(found.spiritExcess->spiritToRemove.has_value());  // nothing would be left
}

TEST(Texture, TheClassDoesNotDependOnTheServingTemperature)
{
    for (const double serveAt_c : {-3.0, -6.0, -12.0, -17.0}) {
        const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {serveAt_c});
        EXPECT_EQ(found.textureClass, TextureClass::Granita) << serveAt_c;
        EXPECT_NEAR(found.servingWindow->warmest.value, -6.9, 0.3) << serveAt_c;
    }
}

TEST(Texture, ServedOutsideItsWindowIsAFault)
{
    EXPECT_NE(allText(textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {-4.0}).faults).find("At -4 °C it is softer"),
        std::string::npos);
    EXPECT_NE(allText(textureOf(mixOf(24, 0, 0, 0), Process::Churned, 0.0, {-17.0}).faults).find("At -17 °C it is harder"),
        std::string::npos);
    EXPECT_TRUE(textureOf(mixOf(35.5, 0, 0, 0), Process::Churned, 0.0, {-13.0}).faults.empty());
}

TEST(Texture, TooMuchSugarIsSaidWithoutTalkingOfSpirit)
{
    const Texture found = textureOf(mixOf(60, 0, 0, 0), Process::Churned);
    EXPECT_FALSE(found.willFreeze);
    EXPECT_FALSE(found.spiritExcess.has_value());
    EXPECT_NE(allText(found.faults).find("Less sugar or more water"), std::string::npos);
}

TEST(Texture, ReasonsNameIceTemperatureAndProcess)
{
    const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped);
    ASSERT_GE(found.reasons.size(), 3u);
    EXPECT_EQ(english(found.reasons[0]), "58 % of the mix is ice at -12 °C (77 % of its water): hard.");
    EXPECT_NE(english(found.reasons[1]).find("coarse and dry"), std::string::npos);
    EXPECT_EQ(english(found.reasons[2]), "25.5 % sugars; granita usually has 20 to 26 % (common practice, no source).");
    EXPECT_TRUE(found.faults.empty()) << allText(found.faults);
}

TEST(Texture, AirAndFatSoften)
{
    const Mix mix = mixOf(18, 10, 9, 0);
    EXPECT_LE(textureOf(mix, Process::Churned, 100.0).firmness, textureOf(mix, Process::Churned, 0.0).firmness);
    EXPECT_LT(
        textureOf(mix, Process::Churned, 0.0).servingWindow->coldest, textureOf(mix, Process::Churned, 0.0).servingWindow->warmest);
    EXPECT_LT(textureOf(mix, Process::Churned, 100.0).servingWindow->warmest,
        textureOf(mix, Process::Churned, 0.0).servingWindow->warmest);
}

TEST(Texture, RegionsCoverTheWholeRangeWithoutGaps)
{
    for (const Mix& mix : {mixOf(25, 0, 0, 0), mixOf(0, 0, 0, 0), mixOf(20, 0, 0, 25), mixOf(16, 10, 10, 0), Mix{}}) {
        const auto regions = textureOf(mix, Process::Churned).regions;
        ASSERT_FALSE(regions.empty());
        EXPECT_EQ(regions.front().range.warmest.value, 0.0);
        EXPECT_EQ(regions.back().range.coldest, coldestOfCurve);
        for (std::size_t i = 1; i < regions.size(); ++i) {
            EXPECT_EQ(regions[i].range.warmest, regions[i - 1].range.coldest);
            EXPECT_GT(regions[i].firmness, regions[i - 1].firmness);
        }
    }
}

TEST(Texture, MuchLactoseTurnsSandy)
{
    EXPECT_NE(allText(textureOf(mixOf(14, 8, 15, 0), Process::Churned).faults).find("Sandy"), std::string::npos);
    EXPECT_EQ(allText(textureOf(mixOf(16, 10, 9, 0), Process::Churned).faults).find("Sandy"), std::string::npos);
}

TEST(Texture, PlainIceHasNoServingWindow)
{
    EXPECT_FALSE(textureOf(mixOf(0, 0, 0, 0), Process::Scraped).servingWindow.has_value());
}

TEST(Texture, ServingWindowIsNoColderThanTheFreezer)
{
    const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {-12.0}, {-15.0});
    EXPECT_EQ(found.servingWindow->coldest.value, -15.0);
    EXPECT_NEAR(found.servingWindow->warmest.value, -6.9, 0.3);
}

TEST(Texture, ServingColderThanTheFreezerIsAFault)
{
    EXPECT_NE(
        allText(textureOf(mixOf(25, 0, 0, 0), Process::Scraped, 0.0, {-20.0}, {-18.0}).faults).find("colder than the freezer"),
        std::string::npos);
}

}  // namespace
}  // namespace firn
