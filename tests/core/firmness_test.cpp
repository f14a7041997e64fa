// From ice to firmness: the table of docs/models.md typed a second time, each edge on both of its sides.

#include "texture/firmness.h"

#include <gtest/gtest.h>

#include <utility>
#include <vector>

namespace firn {
namespace {

using Edges = std::vector<std::pair<double, Firmness>>;  // % of the mix that is ice, from which a firmness holds

const Edges ofOnePiece = {{15.0, Firmness::Slush}, {30.0, Firmness::Soft}, {38.0, Firmness::Scoopable}, {46.0, Firmness::Firm},
    {55.0, Firmness::Hard}, {65.0, Firmness::Block}};
const Edges ofLooseCrystals = {{15.0, Firmness::Slush}, {30.0, Firmness::Wet}, {48.0, Firmness::Loose}, {75.0, Firmness::Dry}};

void expectEdges(const Edges& edges, IceForm form)
{
    constexpr double beside = 0.01;
    Firmness before = Firmness::Liquid;
    for (const auto& [ice_percent, firmness] : edges) {
        EXPECT_EQ(firmnessOf({(ice_percent - beside) / 100.0}, {}, form), before) << ice_percent;
        EXPECT_EQ(firmnessOf({(ice_percent + beside) / 100.0}, {}, form), firmness) << ice_percent;
        EXPECT_DOUBLE_EQ(100.0 * iceWhere(firmness, {}).value, ice_percent);
        before = firmness;
    }
}

TEST(Firmness, EachEdgeOfWhatIsInOnePiece) { expectEdges(ofOnePiece, IceForm::OnePiece); }
TEST(Firmness, EachEdgeOfLooseCrystals) { expectEdges(ofLooseCrystals, IceForm::LooseCrystals); }

TEST(Firmness, OnlyScrapingLeavesLooseCrystals)
{
    EXPECT_EQ(iceFormOf(Process::Scraped), IceForm::LooseCrystals);
    for (const Process process : {Process::Still, Process::Churned, Process::Folded})
        EXPECT_EQ(iceFormOf(process), IceForm::OnePiece);
}

// 50 % of overrun moves an edge by 4 points of ice; of fat only what is beyond 10 % softens, in proportion.
TEST(Firmness, AirAndFatBeyondTenPerCentSoftenWhatIsInOnePiece)
{
    EXPECT_NEAR(iceWhere(Firmness::Firm, {{0.0}, 50.0}).value, 0.50, 1e-12);
    EXPECT_NEAR(iceWhere(Firmness::Firm, {{0.10}, 0.0}).value, 0.46, 1e-12);
    EXPECT_NEAR(iceWhere(Firmness::Firm, {{0.15}, 0.0}).value, 0.46 * 0.95, 1e-12);
    EXPECT_NEAR(iceWhere(Firmness::Scoopable, {{0.20}, 100.0}).value, (0.38 + 0.08) * 0.90, 1e-12);
    EXPECT_EQ(iceWhere(Firmness::Liquid, {{0.20}, 100.0}).value, 0.0);
    for (const auto& [ice_percent, firmness] : ofLooseCrystals) {
        if (firmness == Firmness::Slush)
            continue;
        EXPECT_DOUBLE_EQ(100.0 * iceWhere(firmness, {{0.20}, 100.0}).value, ice_percent);
    }
}

TEST(Firmness, EachKindIsServedBetweenItsOwnEdges)
{
    const auto expect = [](TextureClass kind, double leastServed, double leastBest, double mostBest, double mostServed) {
        const auto edges = servingEdges(kind, {});
        ASSERT_TRUE(edges.has_value());
        EXPECT_NEAR(100.0 * edges->leastServed.value, leastServed, 1e-9);
        EXPECT_NEAR(100.0 * edges->leastBest.value, leastBest, 1e-9);
        EXPECT_NEAR(100.0 * edges->mostBest.value, mostBest, 1e-9);
        EXPECT_NEAR(100.0 * edges->mostServed.value, mostServed, 1e-9);
    };
    for (const TextureClass scraped : {TextureClass::Granita, TextureClass::ScrapedIce})
        expect(scraped, 43.0, 48.0, 75.0, 80.0);
    expect(TextureClass::Semifreddo, 15.0, 30.0, 46.0, 55.0);
    for (const TextureClass churned : {TextureClass::Sorbet, TextureClass::Sherbet, TextureClass::MilkIce, TextureClass::IceCream,
             TextureClass::FrozenCustard, TextureClass::CreamyIce})
        expect(churned, 30.0, 38.0, 46.0, 55.0);
    for (const TextureClass none : {TextureClass::Nothing, TextureClass::Ice, TextureClass::Slush, TextureClass::StillFrozenIce,
             TextureClass::WillNotFreeze, TextureClass::Unfrozen})
        EXPECT_FALSE(servingEdges(none, {}).has_value());
}

}  // namespace
}  // namespace firn
