#include "exchange/batch_correction_json.h"

#include "exchange/recipe_json.h"
#include "recipe/versions.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

const std::string example =
    "{\"date\": \"2026-04-03T15:20\", \"component\": \"ice\", \"version\": \"2\", "
    "\"sugars_before_percent\": 18, \"sugars_after_percent\": 24.9, "
    "\"added\": [{\"ingredient\": \"Sugar (sucrose)\", \"g\": 127}, {\"ingredient\": \"Water\", \"g\": 0.5}], "
    "\"scale\": \"small\"}";

std::string refusalOf(std::string_view text)
{
    const auto correction = batchCorrectionFromJson(*jsonFromText(text));
    return correction ? "read" : english(correction.error());
}

TEST(BatchCorrection, ComesBackByteForByte)
{
    const auto correction = batchCorrectionFromJson(*jsonFromText(example));
    ASSERT_TRUE(correction) << english(correction.error());
    EXPECT_EQ(correction->added.size(), 2U);
    EXPECT_EQ(correction->sugarsAfter_percent, 24.9);
    EXPECT_EQ(batchCorrectionToJson(*correction), example);
}

TEST(BatchCorrection, IsKeptInTheRecipeAndFollowsItsVersion)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {100.0, Unit::Gram}, {}, {}}};
    recipe.batchCorrections = {*batchCorrectionFromJson(*jsonFromText(example))};
    recipe.batchCorrections.front().version.clear();
    const auto again = recipeFromJson(recipeToJson(recipe));
    ASSERT_TRUE(again) << english(again.error());
    EXPECT_EQ(*again, recipe);

    const Recipe kept = withVersionKept(recipe, {"first", "", "2026-04-04"});
    EXPECT_EQ(kept.batchCorrections.front().version, "1");
    EXPECT_TRUE(alone(kept).batchCorrections.empty());
    EXPECT_EQ(withVersionOnBench(kept, "1", {}).batchCorrections, kept.batchCorrections);
    EXPECT_TRUE(withoutVersion(kept, "1").batchCorrections.empty());
}

TEST(BatchCorrection, RefusalsNameTheField)
{
    EXPECT_EQ(refusalOf("3"), "A batch correction must be an object with \"added\".");
    EXPECT_EQ(refusalOf(R"({"date": "2026-04-03"})"), "A batch correction must be an object with \"added\".");
    EXPECT_EQ(refusalOf(R"({"added": [{"ingredient": "water"}]})"),
        "Addition 1: What was added must be an object with \"ingredient\" and \"g\".");
    EXPECT_TRUE(
        refusalOf(R"({"added": [{"ingredient": "water", "g": -1}]})").starts_with("Addition 1: \"g\" must be a number from 0"));
    EXPECT_EQ(
        refusalOf(R"({"added": [], "sugars_after_percent": 101})"), "\"sugars_after_percent\" must be a number from 0 to 100.");
    EXPECT_NE(refusalOf(R"({"added": [], "date": "soon"})"), "read");
}

}  // namespace
}  // namespace firn
