// Where cautions begin: each threshold on both of its sides.
#include "analysis/analysis.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string_view>

namespace firn {
namespace {

bool cautions(const char* ingredient, double grams_in100g, std::string_view of)
{
    Recipe recipe;
    recipe.components.front().rows = {
        {ingredient, {grams_in100g, Unit::Gram}, {}, {}}, {"water", {100.0 - grams_in100g, Unit::Gram}, {}, {}}};
    const Analysis analysis = analyse(recipe, shippedCatalogue(), {});
    return std::ranges::any_of(
        analysis.cautions, [&](const Caution& caution) { return english(caution.sentence).find(of) != std::string::npos; });
}

// 0.5 % vol are 0.396 g in 100 g, 5 % vol are 3.982 g (OIML R 22).
TEST(CautionThresholds, AlcoholIsNamedFromHalfAPercentByVolume)
{
    EXPECT_FALSE(cautions("ethanol", 0.39, "Contains alcohol"));
    EXPECT_TRUE(cautions("ethanol", 0.40, "Contains alcohol"));
}

TEST(CautionThresholds, SomePlacesStopAtFivePercentByVolume)
{
    EXPECT_FALSE(cautions("ethanol", 3.97, "above 5 % vol"));
    EXPECT_TRUE(cautions("ethanol", 3.99, "above 5 % vol"));
}

// Regulation (EU) 1169/2011, annex III: more than 10 % of added polyols.
TEST(CautionThresholds, SugarAlcoholsAboveTenPercent)
{
    for (const char* polyol : {"sorbitol", "xylitol", "erythritol", "maltitol"}) {
        EXPECT_FALSE(cautions(polyol, 9.95, "More than 10 % sugar alcohols")) << polyol;
        EXPECT_TRUE(cautions(polyol, 10.2, "More than 10 % sugar alcohols")) << polyol;
    }
}

// An allowance for small children, so that any of it is named.
TEST(CautionThresholds, AnyGlycerolIsNamed)
{
    EXPECT_FALSE(cautions("sucrose", 10.0, "Glycerol"));
    EXPECT_TRUE(cautions("glycerol", 0.1, "Glycerol"));
}

// Sucrose is measured to 42 %.
TEST(CautionThresholds, StrongerThanMeasured)
{
    EXPECT_FALSE(cautions("sucrose", 41.9, "stronger than the tables"));
    EXPECT_TRUE(cautions("sucrose", 42.2, "stronger than the tables"));
}

}  // namespace
}  // namespace firn
