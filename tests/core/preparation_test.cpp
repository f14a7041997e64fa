#include "analysis/analysis.h"

#include "../shipped_catalogue.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Component component(const char* name, std::vector<Row> rows, std::vector<Step> steps = {})
{
    return {name, std::move(rows), {}, std::move(steps)};
}

Row row(const char* ingredient, double amount, Unit unit = Unit::Gram) { return {ingredient, {amount, unit}, {}, {}}; }

Recipe cup()
{
    Recipe recipe;
    recipe.components = {component("Granita", {row("water", 750), row("sucrose", 250)}),
        component("Cream", {row("heavy cream", 400), row("sucrose", 40)})};
    return recipe;
}

std::string problemsOf(const Analysis& analysis)
{
    std::string text;
    for (const Caution& caution : analysis.cautions)
        text += english(caution.sentence) + "\n";
    return text;
}

TEST(Components, EachHasItsOwnFiguresAndTheWholeHasTheSum)
{
    const Analysis granita = analyse(cup(), shippedCatalogue(), {}, 0);
    const Analysis cream = analyse(cup(), shippedCatalogue(), {}, 1);
    const Analysis whole = analyse(cup(), shippedCatalogue(), {});
    EXPECT_NEAR(percent(granita.shares.sugars), 25.0, 1e-9);
    EXPECT_NEAR(granita.mass.value, 1000.0, 1e-9);
    EXPECT_LT(cream.shares.sugars, granita.shares.sugars);
    EXPECT_NEAR(whole.mass.value, granita.mass.value + cream.mass.value, 1e-9);
    EXPECT_NEAR(granita.components[0][1].share.value, 0.25, 1e-12);
}

TEST(Components, OneCanBePartOfAnother)
{
    Recipe recipe;
    recipe.components = {component("Semifreddo", {row("syrup base", 200), row("heavy cream", 300)}),
        component("Syrup base", {row("sucrose", 500), row("water", 500)})};
    const Analysis semifreddo = analyse(recipe, shippedCatalogue(), {}, 0);
    EXPECT_NEAR(semifreddo.mix[Constituent::Sucrose].value, 100.0, 0.5);
    EXPECT_EQ(semifreddo.components[0][0].ingredientName, "Syrup base");
    // What is part of another counts once in the whole.
    EXPECT_NEAR(analyse(recipe, shippedCatalogue(), {}).mass.value, semifreddo.mass.value, 1e-9);
    // Volumes go by the density of the mix: 50 % sucrose, ICUMSA.
    recipe.components[0].rows[0].amount = {100.0, Unit::Millilitre};
    EXPECT_NEAR(analyse(recipe, shippedCatalogue(), {}, 0).components[0][0].mass.value, 122.97, 0.05);
}

TEST(Rows, TheMeasureIsTheOneThatTheWordsAskFor)
{
    const auto mass_g = [](const char* ingredient, const char* note, Unit unit) {
        Recipe recipe;
        recipe.components[0].rows = {{ingredient, {1.0, unit}, note, {}}};
        return analyse(recipe, shippedCatalogue(), {}).components[0][0].mass.value;
    };
    // USDA SR28, NDB 09316: a cup of strawberries weighs 152 g halved, 166 g sliced, 232 g puréed.
    EXPECT_EQ(mass_g("sliced strawberries", "", Unit::Cup), 166.0);
    EXPECT_EQ(mass_g("strawberries", "thinly sliced", Unit::Cup), 166.0);
    // USDA SR28, NDB 01123: 50 g large, 44 g medium.
    EXPECT_EQ(mass_g("large egg", "", Unit::Piece), 50.0);
    EXPECT_EQ(mass_g("medium eggs", "", Unit::Piece), 44.0);
}

TEST(Components, ACircleIsRefusedWithItsChain)
{
    Recipe recipe;
    recipe.components = {component("Pear sauce", {row("Cream sauce", 100), row("pear", 100)}),
        component("Cream sauce", {row("Third sauce", 50)}), component("Third sauce", {row("pear sauce", 10), row("water", 10)})};
    const std::string problems = problemsOf(analyse(recipe, shippedCatalogue(), {}, 0));
    EXPECT_NE(problems.find("A component cannot be part of itself: Pear sauce → Cream sauce → Third sauce → Pear sauce."),
        std::string::npos)
        << problems;
    EXPECT_GT(analyse(recipe, shippedCatalogue(), {}, 0).mass.value, 0.0);
}

TEST(Components, StepsChangeWhatTheGaugesShow)
{
    Recipe recipe = cup();
    recipe.components[0].steps = {Step{StepKind::Reduce, {}, {}, BoiledToMass{{800.0}}, {}, {}}};
    const Analysis found = analyse(recipe, shippedCatalogue(), {}, 0);
    EXPECT_NEAR(found.mass.value, 800.0, 1e-9);
    EXPECT_NEAR(percent(found.shares.sugars), 31.25, 1e-6);
    ASSERT_EQ(found.steps[0].size(), 1u);
    EXPECT_NEAR(found.steps[0][0].lost.mass().value, 200.0, 1e-9);
    EXPECT_NEAR(found.components[0][1].share.value, 0.25, 1e-12);  // of what was weighed out
}

TEST(Components, AStepThatCannotBeIsACaution)
{
    Recipe recipe = cup();
    recipe.components[0].steps = {Step{StepKind::Strain, {}, {}, HeldBack{{5000.0}}, {}, {}}};
    EXPECT_NE(problemsOf(analyse(recipe, shippedCatalogue(), {}, 0)).find("cannot hold back 5000 g"), std::string::npos);
}

TEST(MeasuredRow, TheReadingReplacesTheTable)
{
    Recipe recipe;
    recipe.components = {component("Purée", {row("pear", 500)})};
    const Analysis byTable = analyse(recipe, shippedCatalogue(), {}, 0);
    recipe.components[0].rows[0].measuredBrix = 16.0;
    const Analysis measured = analyse(recipe, shippedCatalogue(), {}, 0);
    EXPECT_NEAR(*measured.readings->refractometer_brix, 16.0, 0.01);
    EXPECT_NE(measured.shares.sugars, byTable.shares.sugars);
    EXPECT_EQ(measured.sugarsUncertainty.value, 0.0);
    EXPECT_NEAR(measured.mass.value, byTable.mass.value, 1e-9);
}

}  // namespace
}  // namespace firn
