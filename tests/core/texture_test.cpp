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

// Crystals are loose from 48 % of ice (docs/models.md), and a sucrose solution of 25.5 % holds so much at this temperature: worked out outside
// this project, tests/reference/derived/ice_fraction_test.cpp.
constexpr double looseAt25_5percent_c = -6.89;
constexpr double derived_k = 0.02;  // molar masses to four digits

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
    EXPECT_EQ(textureOf(mixOf(20, 5, 4, 0), Process::Scraped).textureClass, TextureClass::ScrapedIce);
    EXPECT_EQ(textureOf(mixOf(20, 0, 0, 0), Process::Still).textureClass, TextureClass::StillFrozenIce);
    EXPECT_EQ(textureOf(mixOf(0, 0, 0, 0), Process::Churned).textureClass, TextureClass::Ice);
    EXPECT_EQ(textureOf(mixOf(20, 0, 0, 25), Process::Scraped).textureClass, TextureClass::WillNotFreeze);
    EXPECT_EQ(textureOf(Mix{}, Process::Churned).textureClass, TextureClass::Nothing);
}

TEST(Texture, SpiritOnlyWillNotFreezeAndNothingSmallerThanAnotherMixHelps)
{
    const Texture found = textureOf(mixOf(0, 0, 0, 33.3), Process::Scraped);
    EXPECT_FALSE(found.willFreeze);
    EXPECT_NE(allText(found.faults).find("It will not freeze at -18 °C. No ice forms."), std::string::npos);
    EXPECT_NE(allText(found.faults).find("The main cause is alcohol: 33.3 % by mass."), std::string::npos) << allText(found.faults);
    EXPECT_FALSE(found.spiritExcess->spiritToRemove.has_value());  // nothing would be left
    EXPECT_FALSE(found.spiritExcess->waterToAdd.has_value());      // more than the mix
    EXPECT_TRUE(found.advice.empty());
}

TEST(Texture, TheClassDoesNotDependOnTheServingTemperature)
{
    for (const double serveAt_c : {-3.0, -6.0, -12.0, -17.0}) {
        const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {serveAt_c});
        EXPECT_EQ(found.textureClass, TextureClass::Granita) << serveAt_c;
        EXPECT_NEAR(found.servingWindow->warmest.value, looseAt25_5percent_c, derived_k) << serveAt_c;
    }
}

TEST(Texture, ServedOutsideItsWindowIsAFault)
{
    EXPECT_NE(allText(textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {-4.0}).faults).find("At -4 °C it is wetter"),
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
    EXPECT_NE(allText(found.faults).find("The main cause is sugar: 60.0 % by mass."), std::string::npos) << allText(found.faults);
    EXPECT_EQ(allText(found.faults).find("spirit"), std::string::npos);
}

TEST(Texture, ReasonsNameIceTemperatureAndProcess)
{
    const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped);
    ASSERT_GE(found.reasons.size(), 3u);
    // 57.56 % and 77.26 %, in the same table of tests/reference/derived.
    EXPECT_EQ(english(found.reasons[0]), "58 % of the mix is ice at -12 °C (77 % of its water): loose.");
    EXPECT_EQ(english(found.reasons[1]), "25.5 % sugars. Usual for granita: 20 to 26 % (unverified).");
    EXPECT_NE(english(found.reasons[2]).find("loose crystals of about a millimetre"), std::string::npos);
    EXPECT_TRUE(found.faults.empty()) << allText(found.faults);
}

TEST(Texture, ScrapedIceIsWetLooseOrDryAndNeverABlock)
{
    const auto firmness = [](double sugar, double serveAt_c) {
        return textureOf(mixOf(sugar, 0, 0, 0), Process::Scraped, 0.0, {serveAt_c}, {-24.0}).firmness;
    };
    EXPECT_EQ(firmness(25.5, -1.0), Firmness::Liquid);
    EXPECT_EQ(firmness(25.5, -3.0), Firmness::Slush);
    EXPECT_EQ(firmness(25.5, -5.0), Firmness::Wet);
    EXPECT_EQ(firmness(25.5, -10.0), Firmness::Loose);
    EXPECT_EQ(firmness(15.0, -18.0), Firmness::Dry);
    for (double sugar = 2.0; sugar <= 45.0; sugar += 1.0) {
        for (double serveAt_c = -1.0; serveAt_c >= -24.0; serveAt_c -= 1.0) {
            const Firmness found = firmness(sugar, serveAt_c);
            EXPECT_TRUE(found <= Firmness::Slush || found >= Firmness::Wet) << sugar << " % at " << serveAt_c;
        }
    }
    EXPECT_EQ(textureOf(mixOf(15, 0, 0, 0), Process::Still).firmness, Firmness::Block) << "unstirred it is one";
}

// Lemon granita of 17.6 % and coffee granita of 16.6 % sugar, as many cooks make them (C14).
TEST(Texture, ClassicGranitasOfLittleSugarAreLoose)
{
    for (const double sugar : {15.0, 16.6, 17.6, 20.0, 22.0}) {
        for (const double serveAt_c : {-8.0, -10.0, -12.0}) {
            const Texture found = textureOf(mixOf(sugar, 0, 0, 0), Process::Scraped, 0.0, {serveAt_c});
            EXPECT_EQ(found.firmness, sugar > 15.0 || serveAt_c > -12.0 ? Firmness::Loose : found.firmness);
            EXPECT_TRUE(found.faults.empty()) << sugar << " % at " << serveAt_c << ": " << allText(found.faults);
        }
    }
    const std::string said = allText(textureOf(mixOf(17.6, 0, 0, 0), Process::Scraped, 0.0, {-10.0}).reasons);
    EXPECT_NE(said.find("That agrees with a baking school's text: 8 to 12 °Bé: 14.4 to 21.6 %."), std::string::npos) << said;
}

TEST(Texture, OverrunIsAirOnMix)
{
    const std::string said = allText(textureOf(mixOf(18, 10, 9, 0), Process::Churned, 30.0).reasons);
    EXPECT_NE(said.find("30 % overrun: 23 % of the volume is air"), std::string::npos) << said;
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
    EXPECT_NE(
        allText(textureOf(mixOf(14, 8, 15, 0), Process::Churned).faults).find("It may turn sandy within days."), std::string::npos);
    EXPECT_EQ(
        allText(textureOf(mixOf(16, 10, 9, 0), Process::Churned).faults).find("It may turn sandy within days."), std::string::npos);
}

// "0 to 0 °C" for a mix that is nearly water (L5), "-2 to -2 °C" for a weak one (C10).
TEST(Texture, NoWindowIsNarrowerThanAKelvinOrAboveTheFreezingPoint)
{
    EXPECT_FALSE(textureOf(mixOf(0, 0, 0, 0), Process::Scraped).servingWindow.has_value());
    for (const Process process : {Process::Still, Process::Scraped, Process::Churned, Process::Folded}) {
        for (double sugar = 0.0; sugar <= 60.0; sugar += 0.5) {
            for (const double freezer_c : {-1.0, -4.0, -12.0, -18.0, -24.0}) {
                const Mix mix = mixOf(sugar, 0, 0, 0);
                const auto window = textureOf(mix, process, 0.0, {-12.0}, {freezer_c}).servingWindow;
                if (!window)
                    continue;
                EXPECT_GE((window->warmest - window->coldest).value, 1.0) << sugar << " % in " << freezer_c;
                EXPECT_LT(window->warmest, freezingCurve(mix).freezingPoint->temperature);
                EXPECT_GE(window->coldest.value, freezer_c);
            }
        }
    }
}

TEST(Texture, ServingWindowIsNoColderThanTheFreezer)
{
    const Texture found = textureOf(mixOf(25.5, 0, 0, 0), Process::Scraped, 0.0, {-12.0}, {-15.0});
    EXPECT_EQ(found.servingWindow->coldest.value, -15.0);
    EXPECT_NEAR(found.servingWindow->warmest.value, looseAt25_5percent_c, derived_k);
}

TEST(Texture, ServingColderThanTheFreezerIsAFault)
{
    EXPECT_NE(
        allText(textureOf(mixOf(25, 0, 0, 0), Process::Scraped, 0.0, {-20.0}, {-18.0}).faults).find("colder than the freezer"),
        std::string::npos);
}

}  // namespace
}  // namespace firn
