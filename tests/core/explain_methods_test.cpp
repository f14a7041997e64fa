#include "explain/methods.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

ExplainedAnalysis of(const std::vector<std::pair<std::string, double>>& rows)
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : rows)
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return analyseWithWorkings(recipe, shippedCatalogue(), {});
}

bool speaksOf(const MethodComparison& comparison, std::string_view word)
{
    return std::ranges::any_of(
        comparison.summary, [&](const Sentence& sentence) { return english(sentence).find(word) != std::string::npos; });
}

TEST(Methods, PartingsAddUpToTheDifferenceOfTheReport)
{
    const auto explained =
        of({{"whole milk", 400}, {"gin", 60}, {"sucrose", 120}, {"salt", 2}, {"citric-acid", 2}, {"gelatin", 3}, {"pear", 100}});
    const auto comparison = compareMethods(explained);
    ASSERT_TRUE(comparison);
    const Analysis& analysis = explained.analysis;
    EXPECT_DOUBLE_EQ(
        comparison->difference.value, (analysis.freezing.freezingPoint->temperature - analysis.textbook->freezingPoint).value);
    EXPECT_EQ(comparison->waterActivity.result().value, analysis.freezing.freezingPoint->temperature.value);
    EXPECT_EQ(comparison->textbook.result().value, analysis.textbook->freezingPoint.value);
    EXPECT_EQ(comparison->partings.size(), 6u);
    double sum_k = 0.0;
    for (const Parting& parting : comparison->partings)
        sum_k += parting.difference.value;
    EXPECT_NEAR(sum_k, comparison->difference.value, 1e-12);
}

TEST(Methods, TheSummaryNamesWhatPartsThem)
{
    const auto sugarOnly = compareMethods(of({{"water", 80}, {"sucrose", 20}}));
    EXPECT_LT(std::abs(sugarOnly->difference.value), 0.1);
    EXPECT_FALSE(speaksOf(*sugarOnly, "Alcohol"));
    EXPECT_TRUE(speaksOf(*compareMethods(of({{"water", 60}, {"sucrose", 15}, {"ethanol", 15}})), "Alcohol"));
    EXPECT_TRUE(speaksOf(*compareMethods(of({{"water", 80}, {"salt", 10}})), "Salt"));
    EXPECT_TRUE(speaksOf(*compareMethods(of({{"water", 30}, {"sucrose", 70}})), "stronger than the textbook's table"));
    EXPECT_TRUE(speaksOf(*compareMethods(of({{"water", 50}, {"skim milk powder", 50}})), "protein"));
}

TEST(Methods, WithoutWaterThereIsNothingToCompare)
{
    EXPECT_FALSE(compareMethods(of({{"sucrose", 10}})).has_value());
    EXPECT_FALSE(compareMethods(of({})).has_value());
}

}  // namespace
}  // namespace firn
