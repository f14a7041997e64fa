#include "exchange/recipe_json.h"
#include "recipe/versions.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Recipe granita(double sugar_g)
{
    Recipe recipe;
    recipe.title = "Rhubarb granita";
    recipe.components.front().rows = {{"rhubarb", {300.0, Unit::Gram}, "", ""}, {"sucrose", {sugar_g, Unit::Gram}, "", ""}};
    return recipe;
}

/// The recipe with other rows on the bench.
Recipe edited(Recipe recipe, double sugar_g)
{
    recipe.components = granita(sugar_g).components;
    return recipe;
}

VersionLabel on(const std::string& date) { return {"", "", date}; }

double sugarOf(const Recipe& recipe) { return recipe.components.front().rows.at(1).amount.value; }

TEST(Versions, KeepingHoldsTheRecipeAlone)
{
    Recipe recipe = granita(190.0);
    recipe.tags = {"spring"};
    recipe.unknown = R"({"cost":3})";
    recipe.readings.emplace_back();
    recipe.tastings.emplace_back();
    recipe = withVersionKept(recipe, {"first try", "too sweet?", "2026-04-03"});

    ASSERT_EQ(recipe.versions.size(), 1u);
    const Version& kept = recipe.versions.front();
    EXPECT_EQ(kept.id, "1");
    EXPECT_EQ(kept.name, "first try");
    EXPECT_EQ(kept.note, "too sweet?");
    EXPECT_EQ(kept.recipe, granita(190.0));
    EXPECT_EQ(recipe.basedOn, "1");
    EXPECT_EQ(recipe.readings.front().version, "1");
    EXPECT_EQ(recipe.tastings.front().version, "1");
    EXPECT_EQ(recipe.tags, std::vector<std::string>{"spring"});
    EXPECT_EQ(recipe.unknown, R"({"cost":3})");
    EXPECT_TRUE(isAsKept(recipe));
    EXPECT_EQ(versionOfBench(recipe), "1");
    EXPECT_EQ(versionOfBench(edited(recipe, 200.0)), "");
}

TEST(Versions, AloneIsEverythingThatFiguresFollowFrom)
{
    Recipe recipe = granita(190.0);
    recipe.process = Process::Scraped;
    recipe.overrun_percent = 20.0;
    recipe.serveAt_c = -8.0;
    recipe.freezerAt_c = -20.0;
    recipe.notes = "invented";
    recipe.components.emplace_back().name = "cream";
    recipe.ingredients.emplace_back().id = "plum-jam";
    recipe.linked.push_back({"Cream", "cream.firn", granita(1.0)});
    EXPECT_EQ(alone(recipe), recipe);
}

TEST(Versions, GoingBackKeepsWhatWasOnTheBench)
{
    Recipe recipe = edited(withVersionKept(granita(190.0), on("2026-04-03")), 220.0);
    recipe.readings.emplace_back();  // of the bench
    const Recipe back = withVersionOnBench(recipe, "1", {"", "before going back", "2026-04-04"});
    EXPECT_EQ(sugarOf(back), 190.0);
    EXPECT_EQ(back.basedOn, "1");
    ASSERT_EQ(back.versions.size(), 2u);
    EXPECT_EQ(sugarOf(back.versions[1].recipe), 220.0);
    EXPECT_EQ(back.versions[1].basedOn, "1");
    EXPECT_EQ(back.versions[1].note, "before going back");
    EXPECT_EQ(back.readings.front().version, "2");

    const Recipe forth = withVersionOnBench(back, "2", on("2026-04-05"));
    EXPECT_EQ(sugarOf(forth), 220.0);
    EXPECT_EQ(forth.versions, back.versions);  // nothing new to keep
    EXPECT_EQ(withVersionOnBench(forth, "7", on("")), forth);
}

TEST(Versions, TypedAgainAVersionIsNotKeptTwice)
{
    Recipe recipe = withVersionKept(granita(190.0), on(""));
    recipe = withVersionKept(edited(recipe, 220.0), on(""));
    recipe = edited(recipe, 190.0);  // as version 1, but based on version 2
    recipe.readings.emplace_back();
    const Recipe back = withVersionOnBench(recipe, "2", on(""));
    EXPECT_EQ(back.versions.size(), 2u);
    EXPECT_EQ(back.readings.front().version, "1");
}

TEST(Versions, AnEmptyBenchIsNotKept)
{
    Recipe recipe = withVersionKept(granita(190.0), on(""));
    const Recipe emptied = [&] {
        Recipe all = recipe;
        all.components = {Component{}};
        all.title.clear();
        return all;
    }();
    EXPECT_EQ(withVersionOnBench(emptied, "1", on("")), recipe);
}

TEST(Versions, HistoryPutsOtherTrialsUnderTheirOrigin)
{
    Recipe recipe = withVersionKept(granita(190.0), on(""));
    recipe = withVersionKept(edited(recipe, 200.0), on(""));                                   // 2 from 1
    recipe = withVersionKept(edited(recipe, 210.0), on(""));                                   // 3 from 2
    recipe = withVersionKept(edited(withVersionOnBench(recipe, "1", on("")), 180.0), on(""));  // 4 from 1
    recipe = withVersionKept(edited(recipe, 170.0), on(""));                                   // 5 from 4
    std::vector<std::pair<std::string, std::size_t>> placed;
    for (const PlacedVersion& one : history(recipe))
        placed.emplace_back(recipe.versions[one.version].id, one.depth);
    const std::vector<std::pair<std::string, std::size_t>> expected = {{"1", 0}, {"4", 1}, {"5", 1}, {"2", 0}, {"3", 0}};
    EXPECT_EQ(placed, expected);
}

TEST(Versions, HistoryHoldsVersionsBasedOnEachOtherOrOnNone)
{
    Recipe recipe;
    for (const auto& [id, base] : {std::pair("a", "b"), {"b", "a"}, {"c", "gone"}, {"d", "d"}}) {
        Version version;
        version.id = id;
        version.basedOn = base;
        recipe.versions.push_back(version);
    }
    EXPECT_EQ(history(recipe).size(), 4u);
}

TEST(Versions, DeletingHandsItsTrialsOn)
{
    Recipe recipe = withVersionKept(granita(190.0), on(""));
    recipe = withVersionKept(edited(recipe, 200.0), on(""));
    recipe = withVersionKept(edited(recipe, 210.0), on(""));
    recipe.readings = {ReadingRecord{}, ReadingRecord{}};
    recipe.readings[0].version = "2";
    recipe.readings[1].version = "3";
    const Recipe without = withoutVersion(recipe, "2");
    ASSERT_EQ(without.versions.size(), 2u);
    EXPECT_EQ(without.versions[1].basedOn, "1");
    ASSERT_EQ(without.readings.size(), 1u);
    EXPECT_EQ(without.readings[0].version, "3");
    EXPECT_EQ(sugarOf(without), 210.0);
    EXPECT_EQ(withoutVersion(recipe, "3").basedOn, "2");
    EXPECT_EQ(withVersionKept(edited(without, 1.0), on("")).versions.back().id, "4");  // 3 is taken
}

TEST(Versions, TheFileComesBackByteForByte)
{
    Recipe recipe = withVersionKept(granita(190.0), {"first", "note\nin two lines", "2026-04-03T15:20"});
    recipe = edited(recipe, 200.0);
    recipe.tags = {"spring", "\"quoted\""};
    recipe.isFavourite = recipe.isArchived = true;
    recipe.scales = {{"iciness", 0.0, 10.0, "smooth", "crushed ice", R"({"colour":"blue"})"}};
    Tasting tasting;
    tasting.date = "2026-04-04";
    tasting.version = "1";
    tasting.code = "417";
    tasting.tasters = "the kitchen";
    tasting.servedAt_c = -8.5;
    tasting.frozen_h = 20.0;
    tasting.scores = {{"iciness", 7.0}, {"sweetness", -1.5}};
    tasting.words = "<b>cold</b>";
    tasting.next = "less sugar";
    tasting.photo = "photos/one.jpg";
    tasting.unknown = R"({"mood":["good"]})";
    recipe.tastings = {tasting, Tasting{}};
    recipe.blindSheets = {{"2026-04-04", {{"417", "1"}, {"902", ""}}, true, R"({"by":"draw"})"}, {}};
    recipe.readings.emplace_back().version = "1";
    recipe.versions.front().unknown = R"({"weather":{"warm":true}})";

    const std::string text = recipeToJson(recipe);
    const auto again = recipeFromJson(text);
    ASSERT_TRUE(again) << english(again.error());
    EXPECT_EQ(*again, recipe);
    EXPECT_EQ(recipeToJson(*again), text);
}

std::string refusal(const std::string& fields)
{
    const auto read = recipeFromJson(R"({"format": "firn-recipe", "version": 1, "components": [], )" + fields + "}");
    return read ? "read" : english(read.error());
}

TEST(Versions, RefusalsNameThePlace)
{
    const std::string empty = R"({"format": "firn-recipe", "version": 1, "components": []})";
    const auto hasWords = [](const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; };
    EXPECT_EQ(refusal(R"("versions": [{"id": "1", "recipe": )" + empty + "}]"), "read");
    EXPECT_TRUE(hasWords(refusal(R"("versions": 3)"), "\"versions\" must be a list"));
    EXPECT_TRUE(hasWords(refusal(R"("versions": [{"id": "1"}])"), "Version 1: \"recipe\" is missing"));
    EXPECT_TRUE(hasWords(refusal(R"("versions": [{"id": "", "recipe": )" + empty + "}]"), "Version 1: \"id\""));
    EXPECT_TRUE(hasWords(refusal(R"("versions": [{"id": "1", "recipe": {}}])"), "Version 1: This is not a Firn recipe"));
    EXPECT_TRUE(hasWords(
        refusal(R"("versions": [{"id": "1", "recipe": )" + empty + R"(}, {"id": "1", "recipe": )" + empty + "}]"), "Two versions"));
    EXPECT_TRUE(hasWords(refusal(R"("tags": ["a", 3])"), "Tag 2"));
    EXPECT_TRUE(hasWords(refusal(R"("favourite": "yes")"), "\"favourite\" must be true or false"));
    EXPECT_TRUE(hasWords(refusal(R"("tastings": [{"date": "soon"}])"), "Tasting 1: “soon” is not a date"));
    EXPECT_TRUE(hasWords(refusal(R"("tastings": [{"scores": [{"scale": "ice"}]}])"), "Tasting 1: Score 1"));
    EXPECT_TRUE(hasWords(refusal(R"("scales": [{"name": "ice", "from": 10, "to": 0}])"), "Scale 1: \"from\""));
    EXPECT_TRUE(hasWords(refusal(R"("blind_sheets": [{}])"), "Blind sheet 1"));
    EXPECT_TRUE(hasWords(refusal(R"("blind_sheets": [{"samples": [{"code": 417, "version": "1"}]}])"), "Sample 1: \"code\""));
}

}  // namespace
}  // namespace firn
