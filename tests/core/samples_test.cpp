#include "analysis/analysis.h"
#include "exchange/files.h"
#include "exchange/recipe_json.h"

#include "../shipped_catalogue.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Sample {
    const char* file;
    Process process;
    double leastSugars_percent;
    double mostSugars_percent;
};

class Samples : public testing::TestWithParam<Sample> {
protected:
    static std::filesystem::path path() { return std::filesystem::path(FIRN_SOURCE_DIR "/resources/samples") / GetParam().file; }
    static std::string contents() { return contentsOf(path()).value_or(""); }
};

TEST_P(Samples, AreWrittenAsFirnWritesThem)
{
    const auto recipe = recipeFromContents(contents(), path());
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipeToJson(*recipe), contents());
}

TEST_P(Samples, SayThatTheyAreInvented) { EXPECT_NE(contents().find("An invented recipe"), std::string::npos); }

TEST_P(Samples, CountEveryRowAndFreeze)
{
    const auto recipe = recipeFromContents(contents(), path());
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->process, GetParam().process);
    const Analysis analysis = analyse(*recipe, shippedCatalogue(), conditionsOf(*recipe));
    for (const RowAnalysis& row : analysis.components.at(0))
        EXPECT_FALSE(row.problem) << row.text << ": " << english(*row.problem);
    for (const RowAnalysis& row : analysis.components.at(0))
        EXPECT_FALSE(row.takenAs) << row.text << ": an id is exact";
    EXPECT_GE(percent(analysis.shares.sugars), GetParam().leastSugars_percent);
    EXPECT_LE(percent(analysis.shares.sugars), GetParam().mostSugars_percent);
    EXPECT_TRUE(analysis.texture.willFreeze);
}

// Bands of common practice for the kind of dessert, no source.
INSTANTIATE_TEST_SUITE_P(Menu, Samples,
    testing::Values(Sample{"rhubarb-hibiscus-granita.firn", Process::Scraped, 25, 26},
        Sample{"buttermilk-cream.firn", Process::Churned, 15, 20}, Sample{"pear-perry-sorbet.firn", Process::Churned, 30, 34},
        Sample{"toasted-buckwheat-ice-cream.firn", Process::Churned, 15, 20},
        Sample{"cucumber-gin-ice.firn", Process::Scraped, 15, 20}, Sample{"hazelnut-semifreddo.firn", Process::Folded, 15, 25}));

TEST(SampleFolder, HoldsTheTestedFilesAndNoOthers)
{
    const std::filesystem::directory_iterator samples(FIRN_SOURCE_DIR "/resources/samples");
    EXPECT_EQ(std::distance(begin(samples), end(samples)), 6);
}

TEST(FileFormatPage, ShowsARecipeAsFirnWritesIt)
{
    const std::string page = contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/docs/file-format.md")).value_or("");
    const std::string fence = "```json\n";
    const std::size_t start = page.find(fence) + fence.size();
    const std::string example = page.substr(start, page.find("```", start) - start);
    const auto recipe = recipeFromJson(example);
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipeToJson(*recipe), example);
}

}  // namespace
}  // namespace firn
