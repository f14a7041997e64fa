#include "analysis/analysis.h"

#include "exchange/catalogue_json.h"
#include "exchange/files.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

const Catalogue& catalogue()
{
    static const Catalogue all =
        *catalogueFromJson(*contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/resources/catalogue.json")));
    return all;
}

Recipe recipeOf(std::vector<Row> rows)
{
    Recipe recipe;
    recipe.components.front().rows = std::move(rows);
    return recipe;
}

Row row(const char* ingredient, double amount, Unit unit = Unit::Gram) { return {ingredient, {amount, unit}, {}, {}}; }

Analysis analysed(const Recipe& recipe) { return analyse(recipe, catalogue(), conditionsOf(recipe)); }

std::string cautionsOf(const Analysis& analysis)
{
    std::string text;
    for (const Caution& caution : analysis.cautions)
        text += english(caution.sentence) + "\n";
    return text;
}

bool isFinite(const Analysis& a)
{
    bool finite = std::isfinite(a.mass.value) && std::isfinite(a.volume_20c.value) && std::isfinite(a.alcohol_percentByVolume)
                  && std::isfinite(a.sweetness_percentSucrose) && std::isfinite(a.sugarsUncertainty.value);
    for (const FreezingStep& step : a.freezing.steps)
        finite = finite && std::isfinite(step.ice.value) && std::isfinite(step.waterFrozen.value);
    if (a.readings)
        finite = finite && std::isfinite(a.readings->density.value) && std::isfinite(a.readings->refractiveIndex)
                 && std::isfinite(a.readings->baume);
    return finite;
}

TEST(Analysis, OfSugarAndWater)
{
    const Analysis found = analysed(recipeOf({row("sucrose", 250), row("water", 750)}));
    EXPECT_DOUBLE_EQ(found.mass.value, 1000.0);
    EXPECT_NEAR(percent(found.shares.sugars), 25.0, 1e-9);
    EXPECT_NEAR(percent(found.shares.totalSolids), 25.0, 1e-9);
    EXPECT_NEAR(found.sweetness_percentSucrose, 25.0, 1e-9);
    EXPECT_NEAR(found.volume_20c.value, 1000.0 / 1.103591, 0.01);  // ICUMSA, 25 %
    ASSERT_EQ(found.components.size(), 1u);
    EXPECT_EQ(found.components[0][0].ingredientId, "sucrose");
    EXPECT_NEAR(found.components[0][0].share.value, 0.25, 1e-12);
    EXPECT_EQ(found.components[0][0].text, "250 g sucrose");
}

TEST(Analysis, RowsReadAsAPersonWouldWriteThem)
{
    const Analysis found = analysed(recipeOf({row("strawberries", 1.5, Unit::Cup), row("eggs", 2, Unit::Piece)}));
    EXPECT_EQ(found.components[0][0].text, "1 1/2 cups strawberries");
    EXPECT_EQ(found.components[0][1].text, "2 eggs");
}

TEST(Analysis, EmptyRecipeSpeaks)
{
    const Analysis found = analysed(Recipe{});
    EXPECT_TRUE(found.mix.isEmpty());
    EXPECT_FALSE(found.freezing.freezingPoint.has_value());
    EXPECT_FALSE(found.readings.has_value());
    EXPECT_NE(cautionsOf(found).find("The recipe is empty"), std::string::npos);
    EXPECT_TRUE(isFinite(found));
}

TEST(Analysis, UnknownIngredientKeepsItsRowAndIsSaid)
{
    const Analysis found = analysed(recipeOf({row("water", 100), row("moon dust", 50)}));
    EXPECT_DOUBLE_EQ(found.mass.value, 100.0);
    EXPECT_EQ(found.components[0][1].ingredientId, "");
    EXPECT_EQ(found.components[0][1].text, "50 g moon dust");
    EXPECT_NE(cautionsOf(found).find("“moon dust” is not in the catalogue and is ignored"), std::string::npos);
}

TEST(Analysis, AGeneralWordAndASlipAreSaidWithWhatTheyAreTakenFor)
{
    const auto rows = analysed(recipeOf({row("cream", 100), row("strawberies", 50), row("heavy cream", 10)})).components[0];
    EXPECT_EQ(rows[0].ingredientId, "heavy-cream");
    ASSERT_TRUE(rows[0].takenAs);
    EXPECT_EQ(english(*rows[0].takenAs), "taken as Heavy cream, 36 % fat; choose another");
    EXPECT_EQ(rows[1].ingredientId, "strawberry");
    ASSERT_TRUE(rows[1].takenAs);
    EXPECT_EQ(english(*rows[1].takenAs), "read as Strawberry");
    EXPECT_FALSE(rows[2].takenAs);
}

TEST(Analysis, AComponentComesBeforeAGeneralWord)
{
    Recipe recipe = recipeOf({row("cream", 100)});
    recipe.components.push_back({"Cream", {row("heavy cream", 100), row("sucrose", 100)}, {}});
    const Analysis found = analysed(recipe);
    EXPECT_NE(found.components[0][0].ingredientId, "heavy-cream");
    EXPECT_FALSE(found.components[0][0].takenAs);
}

TEST(Analysis, AnUnknownNameCarriesTheThreeNearest)
{
    const RowAnalysis found = analysed(recipeOf({row("sugr", 100)})).components[0][0];
    EXPECT_EQ(found.unknownName, "sugr");
    ASSERT_EQ(found.suggestions.size(), 3U);
    EXPECT_EQ(found.suggestions.front(), "Sugar (sucrose)");
    ASSERT_TRUE(found.problem);
    EXPECT_NE(english(*found.problem).find("Did you mean Sugar (sucrose), "), std::string::npos);
}

TEST(Analysis, AmountsWithoutWeightAreSaid)
{
    Ingredient dust;
    dust.id = dust.name = "dust";
    dust.composition.per100g[Constituent::Other] = {100.0};
    const Catalogue tiny({dust});
    const Analysis found = analyse(recipeOf({row("dust", 1, Unit::Cup)}), tiny, {});
    ASSERT_TRUE(found.components[0][0].problem.has_value());
    EXPECT_NE(english(*found.components[0][0].problem).find("Give it in grams"), std::string::npos);
}

TEST(Analysis, SharesOfTheMixFillUpToAHundred)
{
    const Analysis found =
        analysed(recipeOf({row("water", 700), row("sucrose", 25, Unit::PercentOfMix), row("glucose", 5, Unit::PercentOfMix)}));
    EXPECT_NEAR(found.mass.value, 1000.0, 1e-9);
    EXPECT_NEAR(found.components[0][1].mass.value, 250.0, 1e-9);
    EXPECT_NEAR(percent(found.shares.sugars), 30.0, 1e-9);
}

TEST(Analysis, SharesThatLeaveNoRoomAreSaid)
{
    const Analysis full = analysed(recipeOf({row("water", 700), row("sucrose", 100, Unit::PercentOfMix)}));
    EXPECT_NE(cautionsOf(full).find("add up to 100.0 %"), std::string::npos);
    const Analysis alone = analysed(recipeOf({row("sucrose", 50, Unit::PercentOfMix)}));
    EXPECT_NE(cautionsOf(alone).find("at least one row with a weight"), std::string::npos);
    EXPECT_TRUE(isFinite(full) && isFinite(alone));
}

TEST(Analysis, AlcoholByVolume)
{
    // 45 mL gin at 40 % vol in 800 g of mix: 2.42 % vol, 14.2 g, 1.78 % by weight (worked out by hand with a mix of 1.075 g/mL).
    const double gin_g = 45.0 * 0.94805;
    const Analysis found =
        analysed(recipeOf({row("ethanol", gin_g * 0.333), row("water", 800 - gin_g * 0.333 - 152), row("sucrose", 152)}));
    EXPECT_NEAR(percent(found.shares.alcohol), 1.78, 0.01);
    EXPECT_NEAR(found.alcohol_percentByVolume, 2.42, 0.03);
    EXPECT_NE(cautionsOf(found).find("Contains alcohol"), std::string::npos);
}

TEST(Analysis, CautionsForEggMilkAndGlycerol)
{
    const std::string text =
        cautionsOf(analysed(recipeOf({row("egg yolk", 60), row("whole milk", 500), row("sucrose", 120), row("glycerol", 20)})));
    for (const char* words : {"salmonella", "MILK", "EGG", "not for children under 7"})
        EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
}

TEST(Analysis, MostSeriousCautionFirst)
{
    const Analysis found =
        analysed(recipeOf({row("hazelnut", 60), row("whole milk", 500), row("rhubarb", 500), row("moon dust", 1)}));
    for (std::size_t i = 1; i < found.cautions.size(); ++i)
        EXPECT_LE(found.cautions[i - 1].severity, found.cautions[i].severity);
}

TEST(Analysis, ExtremeAmountsStayFinite)
{
    for (const double amount : {0.0, 1e-300, 1e-9, largestAmount}) {
        for (const char* ingredient : {"water", "ethanol", "sucrose", "salt", "glycerol", "citric-acid", "whole milk"}) {
            const Analysis found = analysed(recipeOf({row(ingredient, amount, Unit::Kilogram), row("water", 1)}));
            EXPECT_TRUE(isFinite(found)) << amount << " kg " << ingredient;
        }
    }
}

TEST(Analysis, TenThousandRows)
{
    std::vector<Row> rows(10'000, row("sucrose", 1));
    rows.push_back(row("water", 30'000));
    const Analysis found = analysed(recipeOf(std::move(rows)));
    EXPECT_NEAR(percent(found.shares.sugars), 25.0, 1e-9);
    EXPECT_EQ(found.components[0].size(), 10'001u);
}

TEST(Analysis, ConditionsComeFromTheRecipe)
{
    Recipe recipe;
    recipe.serveAt_c = -9.0;
    EXPECT_EQ(conditionsOf(recipe).serveAt.value, -9.0);
    EXPECT_EQ(conditionsOf(recipe).freezerAt.value, -18.0);
}

TEST(Analysis, ProcessFromTheConditionsWinsOverTheRecipes)
{
    Recipe recipe = recipeOf({row("sucrose", 250), row("water", 750)});
    recipe.process = Process::Scraped;
    EXPECT_EQ(analysed(recipe).texture.process, Process::Scraped);
    Conditions conditions;
    conditions.process = Process::Still;
    EXPECT_EQ(analyse(recipe, catalogue(), conditions).texture.process, Process::Still);
}

RC_GTEST_PROP(Analysis, AnyRecipeOfKnownThingsStaysFiniteAndAddsUp, ())
{
    const auto all = catalogue().all();
    std::vector<Row> rows;
    const int count = *rc::gen::inRange(1, 12);
    for (int i = 0; i < count; ++i) {
        const auto index = *rc::gen::inRange<std::size_t>(0, all.size());
        rows.push_back({all[index].id, {*rc::gen::inRange(0, 5000) / 10.0, Unit::Gram}, {}, {}});
    }
    const Analysis found = analysed(recipeOf(std::move(rows)));
    RC_ASSERT(isFinite(found));
    double sum_g = 0.0;
    for (const RowAnalysis& each : found.components[0])
        sum_g += each.mass.value;
    // Compositions close to 100 g within 1 g.
    RC_ASSERT(std::abs(sum_g - found.mass.value) <= 0.0101 * sum_g);
}

}  // namespace
}  // namespace firn
