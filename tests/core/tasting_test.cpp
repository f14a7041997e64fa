#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/scales.h"
#include "tasting/scores.h"
#include "tasting/taster_cautions.h"
#include "tasting/triangle_test.h"

#include "exchange/linked_recipes.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace firn {
namespace {

/// Three versions, the first of them on the bench again.
Recipe threeVersions()
{
    Recipe recipe;
    for (const double sugar_g : {150.0, 180.0, 210.0}) {
        recipe.components.front().rows = {{"water", {700.0, Unit::Gram}, "", ""}, {"sucrose", {sugar_g, Unit::Gram}, "", ""}};
        recipe = withVersionKept(recipe, {"", "", ""});
    }
    recipe.scales = {{"iciness", 0.0, 10.0, "smooth", "crushed ice"}};
    return withVersionOnBench(recipe, "1", {});
}

Tasting tasted(const std::string& version, double score, const std::string& code = {})
{
    Tasting tasting;
    tasting.version = version;
    tasting.code = code;
    tasting.scores = {{"iciness", score}};
    return tasting;
}

TEST(BlindSheet, CodesAreDistinctThreeDigitsThatDoNotBeginWithZero)
{
    const std::vector<std::string> versions{"1", "2", "3", "4", "5", "6"};
    std::set<std::vector<std::string>> orders;
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        const BlindSheet sheet = blindSheet(versions, seed);
        std::set<std::string> codes;
        std::vector<std::string> order;
        for (const CodedSample& sample : sheet.samples) {
            EXPECT_EQ(sample.code.size(), 3u);
            EXPECT_TRUE(sample.code[0] >= '1' && sample.code[0] <= '9') << sample.code;
            codes.insert(sample.code);
            order.push_back(sample.version);
        }
        EXPECT_EQ(codes.size(), versions.size());
        EXPECT_TRUE(std::ranges::is_permutation(order, versions));
        EXPECT_FALSE(sheet.isRevealed);
        orders.insert(order);
    }
    EXPECT_GT(orders.size(), 100u);  // of the 720 that there are
    EXPECT_EQ(blindSheet(versions, 7), blindSheet(versions, 7));
}

TEST(BlindSheet, CodesOfEarlierSheetsAreNotUsedAgainAsLongAsOthersAreLeft)
{
    std::vector<std::string> taken;
    for (int code = 100; code <= 997; ++code)
        taken.push_back(std::to_string(code));
    for (std::uint64_t seed = 0; seed < 50; ++seed) {
        std::set<std::string> codes;
        for (const CodedSample& sample : blindSheet({"1", "2", "3"}, seed, taken).samples)
            codes.insert(sample.code);
        EXPECT_EQ(codes.size(), 3u);
        EXPECT_TRUE(codes.contains("998") && codes.contains("999"));
    }
}

TEST(BlindSheet, EachCupComesFirstEquallyOften)
{
    const BlindSheet sheet = blindSheet({"1", "2", "3"}, 1);
    std::set<std::string> first;
    for (std::size_t taster = 0; taster < 3; ++taster)
        first.insert(servingOrder(sheet, taster).front());
    EXPECT_EQ(first.size(), 3u);
    EXPECT_EQ(servingOrder(sheet, 3), servingOrder(sheet, 0));
    EXPECT_TRUE(servingOrder({}, 5).empty());
}

TEST(BlindSheet, ACodeStandsForAVersionOnceItIsRevealed)
{
    Recipe recipe = threeVersions();
    recipe.blindSheets = {{"", {{"417", "3"}, {"902", "2"}}}};
    const Tasting open = tasted("2", 4.0), blind = tasted({}, 7.0, "417"), unknown = tasted({}, 1.0, "555");
    EXPECT_EQ(versionOf(open, recipe), "2");
    EXPECT_EQ(versionOf(blind, recipe), std::nullopt);
    EXPECT_TRUE(isStillHidden(blind, recipe));
    EXPECT_TRUE(isBehindCode(recipe, "3"));
    EXPECT_FALSE(isBehindCode(recipe, "1"));
    EXPECT_EQ(versionOf(unknown, recipe), std::nullopt);
    EXPECT_FALSE(isStillHidden(unknown, recipe));

    recipe.blindSheets.front().isRevealed = true;
    EXPECT_EQ(versionOf(blind, recipe), "3");
    EXPECT_FALSE(isBehindCode(recipe, "3"));

    // The newest sheet that has the code.
    recipe.blindSheets.push_back({"", {{"417", "1"}}, true});
    EXPECT_EQ(versionOf(blind, recipe), "1");
    EXPECT_EQ(codesOf(recipe), (std::vector<std::string>{"417", "902", "417"}));
}

TEST(BlindSheet, AVersionInTheFileDoesNotBetrayAHiddenCode)
{
    Recipe recipe = threeVersions();
    recipe.blindSheets = {{"", {{"417", "3"}}}};
    EXPECT_EQ(versionOf(tasted("3", 7.0, "417"), recipe), std::nullopt);
}

TEST(BlindSheet, TastingsByCodeGoWithTheirDeletedVersion)
{
    Recipe recipe = threeVersions();
    recipe.blindSheets = {{"", {{"417", "3"}, {"902", "2"}}, true}};
    recipe.tastings = {tasted({}, 7.0, "417"), tasted({}, 6.0, "902"), tasted("3", 5.0)};
    const Recipe without = withoutVersion(recipe, "3");
    ASSERT_EQ(without.tastings.size(), 1u);
    EXPECT_EQ(without.tastings.front().code, "902");
}

TEST(Scores, AreThoseOfTheRecipeVersionByVersion)
{
    Recipe recipe = threeVersions();
    recipe.blindSheets = {{"", {{"417", "3"}}}};
    recipe.tastings = {tasted("2", 4.0), tasted("1", 8.0), tasted("2", 5.0), tasted({}, 1.0, "417"), tasted({}, 9.0)};
    recipe.tastings.push_back({});  // without a score
    ScoresOnScale scores = scoresOn(recipe, "iciness");
    ASSERT_EQ(scores.versions.size(), 3u);
    EXPECT_EQ(scores.versions[0].version, "1");
    EXPECT_EQ(scores.versions[1].version, "2");
    EXPECT_EQ(scores.versions[1].marks, (std::vector<ScoreMark>{{0, 4.0}, {2, 5.0}}));
    EXPECT_DOUBLE_EQ(scores.versions[1].mean, 4.5);
    EXPECT_EQ(scores.versions[2].version, "");  // the bench
    EXPECT_EQ(scores.hiddenTastings, 1u);

    recipe.blindSheets.front().isRevealed = true;
    scores = scoresOn(recipe, "iciness");
    ASSERT_EQ(scores.versions.size(), 4u);
    EXPECT_EQ(scores.versions[2].marks, (std::vector<ScoreMark>{{3, 1.0, true}}));
    EXPECT_EQ(scores.hiddenTastings, 0u);
    EXPECT_TRUE(scoresOn(recipe, "melt").versions.empty());
}

TEST(Scores, OtherTemperaturesOrAgesAreNotAFairComparison)
{
    Recipe recipe = threeVersions();
    recipe.tastings = {tasted("1", 8.0), tasted("2", 4.0)};
    const auto reasons = [&recipe] {
        std::string all;
        for (const Sentence& reason : scoresOn(recipe, "iciness").unfair)
            all += english(reason) + "\n";
        return all;
    };
    EXPECT_NE(reasons().find("not noted for each tasting how cold"), std::string::npos);
    recipe.tastings[0].servedAt_c = -8.0;
    recipe.tastings[1].servedAt_c = -8.5;
    EXPECT_EQ(reasons(), "");
    recipe.tastings[1].servedAt_c = -9.0;
    EXPECT_EQ(reasons(), "") << "a degree is not noticed";
    recipe.tastings[1].servedAt_c = -9.1;
    EXPECT_NE(reasons(), "");
    recipe.tastings[1].servedAt_c = -14.0;
    EXPECT_EQ(reasons(), "Not a fair comparison: they were served between -14 °C and -8 °C. Taste them equally cold.\n");
    recipe.tastings[1].servedAt_c = -4.5;
    EXPECT_EQ(reasons(), "Not a fair comparison: they were served between -8 °C and -4.5 °C. Taste them equally cold.\n")
        << "with the digits that were noted";
    recipe.tastings[1].servedAt_c = -14.0;
    recipe.tastings.push_back(tasted("2", 5.0));
    EXPECT_EQ(reasons(), "Not a fair comparison: they were served between -14 °C and -8 °C. Taste them equally cold.\n"
                         "Perhaps not a fair comparison: it is not noted for each tasting how cold it was served.\n");
    recipe.tastings.pop_back();
    recipe.tastings[1].servedAt_c = -8.0;
    recipe.tastings[0].frozen_h = 4.0;
    recipe.tastings[1].frozen_h = 10.0;
    EXPECT_EQ(reasons(), "") << "nor are six hours";
    recipe.tastings[1].frozen_h = 10.1;
    EXPECT_NE(reasons(), "");
    recipe.tastings[1].frozen_h = 48.0;
    EXPECT_EQ(reasons(), "Not a fair comparison: they had been frozen for 4 to 48 hours. Taste them equally old.\n");
    recipe.tastings[1].version = "1";  // one version only: nothing is compared
    EXPECT_EQ(reasons(), "");
}

TEST(Scales, AScoreOutsideIsRefusedInASentence)
{
    const TastingScale scale{"iciness", 0.0, 10.0, "", ""};
    EXPECT_FALSE(faultOfScore(scale, 0.0));
    EXPECT_FALSE(faultOfScore(scale, 10.0));
    ASSERT_TRUE(faultOfScore(scale, 12.5));
    EXPECT_EQ(english(*faultOfScore(scale, 12.5)), "12.5 is outside the scale of iciness, which goes from 0 to 10.");
    EXPECT_TRUE(faultOfScore(scale, -0.1));
    EXPECT_EQ(english(*faultOfScore(scale, 12.25)), "12.25 is outside the scale of iciness, which goes from 0 to 10.");
    EXPECT_EQ(english(*faultOfScore(scale, 12.247)), "12.25 is outside the scale of iciness, which goes from 0 to 10.");
}

TEST(Scales, RenamedTheyKeepTheirScoresAndDeletedTheyTakeThemAlong)
{
    Recipe recipe = threeVersions();
    recipe.scales.push_back({"melt", 0.0, 10.0, "", ""});
    recipe.tastings = {tasted("1", 8.0)};
    recipe.tastings.front().scores.push_back({"melt", 3.0});
    TastingScale renamed = recipe.scales.front();
    renamed.name = "crystals";
    EXPECT_FALSE(faultOfScale(recipe, 0, renamed));
    const Recipe after = withScale(recipe, 0, renamed);
    EXPECT_EQ(scoreOn(after.tastings.front(), "crystals"), 8.0);
    EXPECT_EQ(scoreOn(after.tastings.front(), "iciness"), std::nullopt);
    const Recipe without = withoutScale(after, 0);
    EXPECT_EQ(without.tastings.front().scores, (std::vector<Score>{{"melt", 3.0}}));
    EXPECT_EQ(without.scales.size(), 1u);

    renamed.name = "melt";
    EXPECT_EQ(english(*faultOfScale(recipe, 0, renamed)), "There is a scale melt already. Choose another name.");
    renamed.name = "";
    EXPECT_TRUE(faultOfScale(recipe, 0, renamed));
    renamed = {"ice", 0.0, 2e6, "", ""};
    EXPECT_EQ(
        english(*faultOfScale(recipe, 0, renamed)), "The scale of ice goes too far: its ends may be at most 1000000 from zero.");
    EXPECT_TRUE(faultOfScale(recipe, 0, {"ice", -2e6, 0.0, "", ""}));
    EXPECT_FALSE(faultOfScale(recipe, 0, {"ice", -1e6, 1e6, "", ""}));
    renamed = {"ice", 5.0, 5.0, "", ""};
    EXPECT_EQ(english(*faultOfScale(recipe, 0, renamed)), "The scale of ice must end above 5, where it begins.");
}

TEST(Scales, EverySuggestedOneIsAScale)
{
    Recipe recipe;
    recipe.scales = suggestedScales();
    for (std::size_t i = 0; i < recipe.scales.size(); ++i) {
        EXPECT_FALSE(faultOfScale(recipe, i, recipe.scales[i])) << recipe.scales[i].name;
        EXPECT_EQ(recipe.scales[i].from, 0.0) << recipe.scales[i].name;
        EXPECT_EQ(recipe.scales[i].to, 10.0) << recipe.scales[i].name;
        EXPECT_FALSE(recipe.scales[i].low.empty() || recipe.scales[i].high.empty()) << recipe.scales[i].name;
    }
}

TEST(TriangleTest, SaysWhetherADifferenceWasShown)
{
    EXPECT_NEAR(chanceByGuessing(6, 5), 13.0 / 729.0, 1e-12);  // (6 * 2 + 1) / 3^6
    EXPECT_NEAR(chanceByGuessing(mostTasters, 0), 1.0, 1e-9);
    EXPECT_EQ(leastRight(2), std::nullopt);  // even both of them guess right in 1 of 9 tests
    EXPECT_EQ(english(triangleTest(12, 8).value()),
        "A difference was shown. Guessing gives as many right answers in 1.9 % of such tests.");
    EXPECT_EQ(english(triangleTest(12, 7).value()).substr(0, 56), "A difference was not shown. 8 right answers are needed; ");
    EXPECT_EQ(english(triangleTest(5, 6).error()), "6 right answers of 5 tasters cannot be. Correct one of them.");
    EXPECT_EQ(english(triangleTest(5, 5).value()).substr(0, 23), "A difference was shown.");
    EXPECT_TRUE(triangleTest(mostTasters, 0));
    EXPECT_FALSE(triangleTest(2, 2));
    EXPECT_FALSE(triangleTest(mostTasters + 1, 0));
}

TEST(TasterCautions, NameAllergensAndTheStrongestAlcoholOnceWithoutSayingInWhich)
{
    Ingredient egg, spirit, water;
    egg.id = egg.name = "egg";
    egg.allergens = {Allergen::Egg};
    egg.hazards = {Hazard::RawEgg};
    egg.composition.per100g[Constituent::Water] = {100.0};
    spirit.id = spirit.name = "spirit";
    spirit.composition.per100g[Constituent::Water] = {60.0};
    spirit.composition.per100g[Constituent::Ethanol] = {40.0};
    water.id = water.name = "water";
    water.composition.per100g[Constituent::Water] = {100.0};
    const Catalogue catalogue({egg, spirit, water});
    Recipe recipe;
    const auto keep = [&recipe](std::vector<Row> rows) {
        recipe.components.front().rows = std::move(rows);
        recipe = withVersionKept(recipe, {});
    };
    keep({{"egg", {50.0, Unit::Gram}, "", ""}, {"water", {450.0, Unit::Gram}, "", ""}, {"moonbeams", {1.0, Unit::Gram}, "", ""}});
    keep({{"spirit", {25.0, Unit::Gram}, "", ""}, {"water", {975.0, Unit::Gram}, "", ""}});
    keep({{"spirit", {50.0, Unit::Gram}, "", ""}, {"water", {950.0, Unit::Gram}, "", ""}});
    std::string all;
    for (const Sentence& caution : tasterCautions(recipe, catalogue, {"1", "2", "3", "gone"}))
        all += english(caution) + "\n";
    EXPECT_NE(all.find("salmonella"), std::string::npos);
    EXPECT_NE(all.find("Contains EGG"), std::string::npos);
    EXPECT_NE(all.find("2.0 g in 100 g"), std::string::npos) << all;  // of the stronger one
    EXPECT_EQ(all.find("1.0 g in 100 g"), std::string::npos) << all;
    EXPECT_EQ(all.find("moonbeams"), std::string::npos) << all;
    EXPECT_TRUE(tasterCautions(recipe, catalogue, {"gone"}).empty());
}

TEST(TasterCautions, AreOfEatingItAndNotOfMakingIt)
{
    const auto toldOf = [](Hazard hazard) {
        Ingredient dangerous;
        dangerous.id = dangerous.name = "dangerous";
        dangerous.hazards = {hazard};
        dangerous.composition.per100g[Constituent::Water] = {100.0};
        Recipe recipe;
        recipe.components.front().rows = {{"dangerous", {50.0, Unit::Gram}, "", ""}};
        return tasterCautions(recipe, Catalogue({dangerous}), {""}).size();
    };
    EXPECT_EQ(toldOf(Hazard::ToxicLeaves), 0u);
    EXPECT_EQ(toldOf(Hazard::FruitKernels), 0u);
    EXPECT_EQ(toldOf(Hazard::Elderberry), 0u);
    EXPECT_EQ(toldOf(Hazard::RawEgg), 1u);
}

TEST(FilesOfARecipe, PhotosTravelWithTheFileAndLinksOfVersionsToo)
{
    Recipe recipe;
    recipe.tastings.resize(3);
    recipe.tastings[0].photo = "/home/cook/ices/photos/one.jpg";
    recipe.tastings[1].photo = "/mnt/camera/two.jpg";
    recipe.versions.emplace_back().recipe.linked = {{"Cream", "/home/cook/ices/cream.firn", {}}};
    const Recipe inFile = withLinksFrom("/home/cook/ices", recipe);
    EXPECT_EQ(inFile.tastings[0].photo, "photos/one.jpg");
    EXPECT_EQ(inFile.tastings[1].photo, "/mnt/camera/two.jpg");
    EXPECT_EQ(inFile.tastings[2].photo, "");
    EXPECT_EQ(inFile.versions.front().recipe.linked.front().file, "cream.firn");
    EXPECT_EQ(withAbsoluteLinks("/home/cook/ices", inFile), recipe);
}

}  // namespace
}  // namespace firn
