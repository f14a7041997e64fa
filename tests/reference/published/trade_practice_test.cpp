// Common practice, no source: granita about 25 to 26 % sugar by mass, as low as 20; sorbet about 35 to 36 %; the syrup of a granita at most 14 °Bé
//X
#include "../solutions.h"
#include "texture/texture.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Texture textureOf(const Mix& mix, Process process) { return texture(mix, freezingCurve(mix), {process, 0.0, {-12.0}, {-18.0}}); }

Texture ofSucrose(double sucrose_percent, Process process)
{
    return textureOf(solutionOf(Constituent::Sucrose, sucrose_percent), process);
}

Mix withSpirit(double sucrose_percent, double ethanol_percent)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sucrose_percent};
    mix.amounts[Constituent::Ethanol] = {ethanol_percent};
    mix.amounts[Constituent::Water] = {100.0 - sucrose_percent - ethanol_percent};
    return mix;
}

TEST(TradePractice, SugarBandsAndClassesAgree)
{
    for (const double sugar : {20.0, 25.0, 25.5, 26.0}) {
        const Texture granita = ofSucrose(sugar, Process::Scraped);
        EXPECT_EQ(granita.textureClass, TextureClass::Granita) << sugar;
        EXPECT_TRUE(granita.willFreeze);
    }
    for (const double sugar : {30.0, 32.5, 35.0, 36.0}) {
        const Texture sorbet = ofSucrose(sugar, Process::Churned);
        EXPECT_EQ(sorbet.textureClass, TextureClass::Sorbet) << sugar;
    }
    // The trade serves sorbet of 35 to 36 % from a case at -12 to -15 °C.
    const Texture sorbet = ofSucrose(35.5, Process::Churned);
    EXPECT_EQ(sorbet.firmness, Firmness::Scoopable);
    EXPECT_GE(sorbet.servingWindow->warmest.value, -12.0);
    EXPECT_LE(sorbet.servingWindow->coldest.value, -15.0);
}

TEST(TradePractice, SorbetAtGranitaSugarSetsLikeABrick)
{
    EXPECT_GE(ofSucrose(20.0, Process::Churned).firmness, Firmness::Block);
    EXPECT_FALSE(ofSucrose(20.0, Process::Churned).faults.empty());
}

TEST(TradePractice, TooMuchSpiritWillNotFreeze)
{
    const Texture weak = textureOf(withSpirit(25.5, 4.0), Process::Scraped);
    EXPECT_TRUE(weak.willFreeze);
    EXPECT_FALSE(weak.spiritExcess.has_value());
    const Texture strong = textureOf(withSpirit(25.5, 16.0), Process::Scraped);
    EXPECT_FALSE(strong.willFreeze);
    ASSERT_TRUE(strong.spiritExcess.has_value());
    EXPECT_GT(strong.spiritExcess->waterToAdd.value().value, 0.0);
}

TEST(TradePractice, DoingWhatIsSaidAboutTheSpiritMakesItFreeze)
{
    const Mix mix = withSpirit(20.0, 15.0);
    const auto excess = textureOf(mix, Process::Scraped).spiritExcess;
    ASSERT_TRUE(excess.has_value() && excess->spiritToRemove.has_value());
    Mix less = mix;
    const double spirit_g = excess->spiritToRemove->value * 0.94805;
    less.amounts[Constituent::Ethanol] += Grams{-0.3330 * spirit_g};
    less.amounts[Constituent::Water] += Grams{-0.6670 * spirit_g};
    EXPECT_NEAR(freezingCurve(less).iceAt({-18.0}).value, 0.40, 0.001);
    Mix more = mix;
    more.amounts[Constituent::Water] += excess->waterToAdd.value();
    EXPECT_NEAR(freezingCurve(more).iceAt({-18.0}).value, 0.40, 0.001);
}

}  // namespace
}  // namespace firn
