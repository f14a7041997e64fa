// Creams, sauces, jellies and crumbles are parts of desserts and are not frozen: nothing may be said about their freezing.

#include "analysis/analysis.h"
#include "compare/comparison.h"
#include "exchange/report.h"
#include "explain/explain.h"
#include "explain/lesson.h"
#include "notebook/recipe_card.h"
#include "texture/serving.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace firn {
namespace {

Component component(std::string name, std::vector<std::pair<std::string, double>> rows, std::optional<Process> process = {})
{
    Component result;
    result.name = std::move(name);
    for (const auto& [ingredient, grams] : rows)
        result.rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    result.process = process;
    return result;
}

/// A coupe: granita under whipped cream and crumble.
Recipe coupe()
{
    Recipe recipe;
    recipe.title = "Coupe";
    recipe.process = Process::Scraped;
    recipe.components = {component("granita", {{"water", 750}, {"sucrose", 250}}),
        component("cream", {{"heavy cream", 300}, {"sucrose", 20}}, Process::Unfrozen),
        component("crumble", {{"flour", 100}, {"butter", 80}, {"sucrose", 80}}, Process::Unfrozen)};
    recipe.components[1].overrun_percent = 100.0;
    return recipe;
}

Analysis analysed(const Recipe& recipe, std::optional<std::size_t> component = {})
{
    return analyse(recipe, shippedCatalogue(), conditionsOf(recipe, component), component);
}

TEST(Unfrozen, PartHasNoClassOfIceNoAdviceAndNoWindow)
{
    for (const std::size_t part : {1u, 2u}) {
        const Analysis found = analysed(coupe(), part);
        EXPECT_EQ(found.texture.textureClass, TextureClass::Unfrozen);
        EXPECT_FALSE(found.texture.willFreeze);
        EXPECT_TRUE(found.texture.faults.empty());
        EXPECT_TRUE(found.texture.reasons.empty());
        EXPECT_TRUE(found.texture.regions.empty());
        EXPECT_FALSE(found.texture.servingWindow.has_value());
        for (const Caution& caution : found.cautions)
            EXPECT_EQ(english(caution.sentence).find("freez"), std::string::npos) << english(caution.sentence);
    }
}

TEST(Unfrozen, TheKindOfADessertIsThatOfItsFrozenParts)
{
    const Analysis granita = analysed(coupe(), 0), whole = analysed(coupe());
    EXPECT_EQ(whole.texture.textureClass, TextureClass::Granita);
    EXPECT_EQ(whole.texture.process, Process::Scraped);
    EXPECT_EQ(whole.texture.iceAtServing, granita.texture.iceAtServing);
    EXPECT_EQ(whole.freezing.freezingPoint->temperature, granita.freezing.freezingPoint->temperature);
    EXPECT_EQ(whole.textbook->freezingPoint, granita.textbook->freezingPoint);
    EXPECT_GT(whole.mass.value, granita.mass.value) << "mass and composition are still those of the whole";

    const RecipeCard card = withFigures(cardOf(coupe(), "coupe.firn", 0), whole);
    EXPECT_EQ(card.figures->textureClass, TextureClass::Granita);
}

TEST(Unfrozen, TheFrozenPartCountsAlsoWhereTheRecipeAsAWholeIsSaidNotToBeFrozen)
{
    Recipe recipe = coupe();
    recipe.process = Process::Unfrozen;
    recipe.components[0].process = Process::Churned;
    EXPECT_EQ(analysed(recipe).texture.textureClass, TextureClass::Sorbet);
    recipe.components[0].process = std::nullopt;
    EXPECT_EQ(analysed(recipe).texture.textureClass, TextureClass::Unfrozen);
    EXPECT_EQ(processOfWhole(recipe), Process::Unfrozen);
}

TEST(Unfrozen, AirInTheCreamDoesNotSoftenTheIce)
{
    Recipe plain = coupe();
    plain.components[1].overrun_percent = 0.0;
    plain.process = Process::Churned;
    Recipe whipped = coupe();
    whipped.process = Process::Churned;
    EXPECT_EQ(analysed(whipped).texture.servingWindow->warmest, analysed(plain).texture.servingWindow->warmest);
}

TEST(Unfrozen, ComesFromTheRefrigeratorWhateverTheFrozenPartsAreServedAt)
{
    Recipe recipe = coupe();
    EXPECT_EQ(conditionsOf(recipe, 1).serveAt, usualServing(Process::Unfrozen));
    recipe.serveAt_c = -8.0;
    EXPECT_EQ(conditionsOf(recipe, 0).serveAt, Celsius{-8.0});
    EXPECT_EQ(conditionsOf(recipe, 1).serveAt, usualServing(Process::Unfrozen));
    recipe.serveAt_c = 12.0;
    EXPECT_EQ(conditionsOf(recipe, 1).serveAt, Celsius{12.0});
}

TEST(Unfrozen, TheReportSaysNotFrozenAndNothingElseOfFreezing)
{
    Recipe cream = coupe();
    cream.components = {cream.components[1]};
    const std::string text = reportText(cream, analysed(cream));
    EXPECT_NE(text.find("Not frozen"), std::string::npos);
    for (const char* word : {"Freezing point", "Ice when served", "Water frozen", "Serve between"})
        EXPECT_EQ(text.find(word), std::string::npos) << word;
}

// The window shows no figure of its freezing; nor may the report have one, or a derivation lead to one.
TEST(Unfrozen, NeitherReportNorDerivationHasAFigureOfFreezing)
{
    Recipe cream = coupe();
    cream.components = {cream.components[1]};
    const nlohmann::json report = nlohmann::json::parse(reportJson(cream, analysed(cream)));
    EXPECT_EQ(report["texture"]["process"], "unfrozen");
    for (const char* figure : {"freezing_point_c", "freezing_point_textbook_c", "glass_limit_c"})
        EXPECT_TRUE(report[figure].is_null()) << figure;
    for (const char* figure : {"ice_percent_at_serving", "ice_percent_in_freezer", "serving_window_c"})
        EXPECT_TRUE(report["texture"][figure].is_null()) << figure;
    EXPECT_TRUE(report["freezing_curve"].empty());
    EXPECT_EQ(report["freezing_point_extrapolated"], false);
    for (const char* figure : {"freezing_point_c", "freezing_point_textbook_c", "glass_limit_c", "texture.ice_percent_at_serving",
             "freezing_curve[0].temperature_c"}) {
        const auto derivation = explain(figure, cream, shippedCatalogue(), conditionsOf(cream));
        ASSERT_FALSE(derivation) << figure;
        EXPECT_NE(english(derivation.error()).find("not frozen"), std::string::npos) << english(derivation.error());
    }
    EXPECT_TRUE(explain("percent.sugars", cream, shippedCatalogue(), conditionsOf(cream)));

    Recipe granita = coupe();
    granita.components.resize(1);
    const nlohmann::json frozen = nlohmann::json::parse(reportJson(granita, analysed(granita)));
    EXPECT_TRUE(frozen["freezing_point_c"].is_number());
    EXPECT_TRUE(frozen["texture"]["ice_percent_at_serving"].is_number());
    EXPECT_FALSE(frozen["freezing_curve"].empty());
}

TEST(Unfrozen, NoLessonIsAboutItsFreezing)
{
    Recipe cream = coupe();
    cream.components = {cream.components[1]};
    const auto topics = lessonTopics(analysed(cream));
    for (const LessonTopic topic : {LessonTopic::FreezingPoint, LessonTopic::FreezingCurve, LessonTopic::Texture})
        EXPECT_EQ(std::ranges::count(topics, topic), 0);
    EXPECT_EQ(std::ranges::count(topics, LessonTopic::Sugars), 1);
}

TEST(UsualServing, FollowsTheProcessAndTheRecipesOwnWins)
{
    Recipe recipe;
    for (const Process process : allProcesses) {
        recipe.process = process;
        EXPECT_EQ(conditionsOf(recipe).serveAt, usualServing(process));
        EXPECT_EQ(conditionsOf({}, {}, process).serveAt, usualServing(process)) << "asked for on the command line";
    }
    EXPECT_EQ(usualServing(Process::Churned), Celsius{-12.0});  // the interface of the command line promises it
    recipe.process = Process::Scraped;
    recipe.serveAt_c = -7.5;
    EXPECT_EQ(conditionsOf(recipe).serveAt, Celsius{-7.5});
    EXPECT_EQ(conditionsOf({}).serveAt, Celsius{-12.0}) << "churned, where nobody says";
}

TEST(UsualServing, RecipesThatDoNotSayAreComparedAtOneTemperature)
{
    Recipe granita = coupe();
    granita.components.resize(1);
    Recipe other = granita;
    other.process = std::nullopt;
    const auto comparison = compare({{.name = "a", .recipe = granita}, {.name = "b", .recipe = other}}, shippedCatalogue(), {});
    ASSERT_TRUE(comparison);
    for (const ComparedSide& side : comparison->sides)
        EXPECT_EQ(side.analysis.conditions.serveAt, usualServing(Process::Scraped));
}

}  // namespace
}  // namespace firn
