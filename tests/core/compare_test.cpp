#include "../shipped_catalogue.h"
#include "compare/attribution_wording.h"
#include "compare/comparison.h"
#include "compare/shown_figures.h"
#include "exchange/comparison.h"
#include "exchange/report.h"
#include "recipe/blind_sheet.h"
#include "recipe/scaling.h"
#include "recipe/versions.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Row row(const std::string& ingredient, double grams) { return {ingredient, {grams, Unit::Gram}, "", ""}; }

Recipe granita(double sucrose_g = 190.0, double lemon_g = 30.0)
{
    Recipe recipe;
    recipe.title = "Rhubarb granita";
    recipe.process = Process::Scraped;
    recipe.components.front().rows = {
        row("rhubarb", 300.0), row("water", 420.0), row("sucrose", sucrose_g), row("glucose", 65.0), row("lemon juice", lemon_g)};
    return recipe;
}

Comparison compared(const std::vector<Recipe>& recipes, const ComparingWishes& wishes = {})
{
    std::vector<Candidate> candidates;
    for (const Recipe& recipe : recipes)
        candidates.push_back(benchCandidate(recipe, std::string(1, char('A' + candidates.size()))));
    auto comparison = compare(candidates, shippedCatalogue(), wishes);
    EXPECT_TRUE(comparison) << english(comparison.error());
    return comparison ? *comparison : Comparison{};
}

/// "sucrose same more" for each line.
std::string linesOf(const Comparison& comparison)
{
    std::string text;
    for (const ComparedComponent& component : comparison.components) {
        for (const ComparedRow& line : component.rows) {
            text += line.name;
            for (std::size_t i = 1; i < line.cells.size(); ++i)
                text += ", " + std::string(nameOf(line.cells[i].difference));
            text += "\n";
        }
    }
    return text;
}

double sumOf(const AttributedFigure& figure) { return std::accumulate(figure.parts.begin(), figure.parts.end(), 0.0); }
double wholeOf(const AttributedFigure& figure) { return *figure.to - *figure.from; }

bool says(const std::vector<Sentence>& sentences, const std::string& words)
{
    return std::ranges::any_of(
        sentences, [&](const Sentence& sentence) { return english(sentence).find(words) != std::string::npos; });
}

// Matching

TEST(CompareRows, AmountsAndWordings)
{
    Recipe other = granita(220.0);
    other.components.front().rows[1].amount = {0.42, Unit::Kilogram};
    other.components.front().rows[3].amount.value = 60.0;
    EXPECT_EQ(linesOf(compared({granita(), other})),
        "rhubarb, same\nwater, written differently\nsucrose, more\nglucose, less\nlemon juice, same\n");
}

TEST(CompareRows, WhatReplacesStandsUnderWhatIsReplaced)
{
    Recipe other = granita();
    other.components.front().rows[2] = row("fructose", 190.0);
    other.components.front().rows.erase(other.components.front().rows.begin() + 4);
    other.components.front().rows.push_back(row("salt", 1.0));
    EXPECT_EQ(linesOf(compared({granita(), other})),
        "rhubarb, same\nwater, same\nsucrose, left out\nfructose, added\nglucose, same\n"
        "lemon juice, left out\nsalt, added\n");
}

TEST(CompareRows, RepeatedIngredientsAreMatchedInTheirOrder)
{
    Recipe first, other;
    first.components.front().rows = {row("water", 100.0), row("sucrose", 10.0), row("water", 50.0)};
    other.components.front().rows = {row("sugar", 10.0), row("water", 100.0), row("water", 60.0), row("water", 5.0)};
    EXPECT_EQ(linesOf(compared({first, other})), "water, same\nsucrose, written differently\nwater, more\nwater, added\n");
}

TEST(CompareRows, ComponentsByNameThenByWhatTheyShare)
{
    Recipe first = granita();
    first.components.front().name = "granita";
    first.components.push_back({"cream", {row("heavy cream", 100.0)}, ""});
    Recipe other = first;
    std::swap(other.components[0], other.components[1]);
    other.components[0].name = "whipped cream";
    const Comparison comparison = compared({first, other});
    ASSERT_EQ(comparison.components.size(), 2u);
    EXPECT_EQ(comparison.components[0].name, "granita");
    EXPECT_EQ(
        linesOf(comparison), "rhubarb, same\nwater, same\nsucrose, same\nglucose, same\nlemon juice, same\nheavy cream, same\n");
}

TEST(CompareRows, UnknownNamesAreMatchedAsTheyStand)
{
    Recipe first, other;
    first.components.front().rows = {row("unicorn <b>dust</b>", 10.0), row("water", 90.0)};
    other.components.front().rows = {row("Unicorn <b>dust</b>", 12.0), row("water", 90.0)};
    const Comparison comparison = compared({first, other});
    EXPECT_EQ(linesOf(comparison), "unicorn <b>dust</b>, more\nwater, same\n");
    EXPECT_TRUE(comparison.components[0].rows[0].cells[0].problem);
    EXPECT_TRUE(says(comparison.fairness, "not counted"));
}

TEST(CompareRows, FourAtOnce)
{
    Recipe without = granita();
    without.components.front().rows.erase(without.components.front().rows.begin() + 3);
    const Comparison comparison = compared({granita(), granita(200.0), without, Recipe()});
    EXPECT_EQ(linesOf(comparison), "rhubarb, same, same, left out\nwater, same, same, left out\nsucrose, more, same, left out\n"
                                   "glucose, same, left out, left out\nlemon juice, same, same, left out\n");
    EXPECT_EQ(comparison.attributions.size(), 3u);
    EXPECT_TRUE(says(comparison.fairness, "Nothing in “D” has a weight"));
    EXPECT_TRUE(comparison.attributions[2].freezingPoint_c.whyNone);
}

TEST(CompareRows, AnotherBatchSizeIsNoDifference)
{
    Recipe larger = scaled(granita(), 2.5);
    larger.components.front().rows[4].amount.value = 100.0;
    const Comparison comparison = compared({granita(), larger});
    EXPECT_EQ(linesOf(comparison), "rhubarb, same\nwater, same\nsucrose, same\nglucose, same\nlemon juice, more\n");
    EXPECT_DOUBLE_EQ(comparison.sides[1].batchFactor, 2.5);
    ASSERT_EQ(comparison.attributions[0].changes.size(), 1u);
    EXPECT_TRUE(says(comparison.fairness, "2.50 times the amounts"));
}

TEST(CompareRows, OwnIngredientsThatWereChanged)
{
    Ingredient syrup;
    syrup.id = "house-syrup";
    syrup.name = "house syrup";
    syrup.composition.per100g[Constituent::Sucrose] = {60.0};
    syrup.composition.per100g[Constituent::Water] = {40.0};
    Recipe first = granita();
    first.components.front().rows.push_back(row("house syrup", 100.0));
    first.ingredients = {syrup};
    Recipe other = first;
    other.ingredients[0].composition.per100g[Constituent::Sucrose] = {50.0};
    other.ingredients[0].composition.per100g[Constituent::Water] = {50.0};
    const Comparison comparison = compared({first, other});
    EXPECT_EQ(comparison.components[0].rows.back().cells[1].difference, RowDifference::Ingredient);
    ASSERT_EQ(comparison.attributions[0].changes.size(), 1u);
    EXPECT_EQ(comparison.attributions[0].changes[0].kind, Change::OwnIngredient);
    const AttributedFigure& point = comparison.attributions[0].freezingPoint_c;
    EXPECT_GT(wholeOf(point), 0.05);
    EXPECT_NEAR(sumOf(point), wholeOf(point), 1e-6);
    ASSERT_EQ(comparison.differences.size(), 1u);
    EXPECT_EQ(comparison.differences[0].label, "Own ingredient");
}

// Figures and basis

TEST(CompareFigures, AreTheReportsToTheLastBit)
{
    const Comparison comparison = compared({granita(), granita(230.0)});
    for (const std::size_t side : {0u, 1u}) {
        const Recipe recipe = granita(side == 0 ? 190.0 : 230.0);
        const Analysis report = analyse(recipe, shippedCatalogue(), conditionsOf(recipe));
        const auto value = [&](std::string_view key) { return figureIn(comparison.figures, key)->values[side].value(); };
        EXPECT_EQ(value("percent.water"), percent(report.shares.water));
        EXPECT_EQ(value("percent.sugars"), percent(report.shares.sugars));
        EXPECT_EQ(value("percent.total_solids"), percent(report.shares.totalSolids));
        EXPECT_EQ(value("sweetness_percent_sucrose"), report.sweetness_percentSucrose);
        EXPECT_EQ(value("freezing_point_c"), report.freezing.freezingPoint->temperature.value);
        EXPECT_EQ(value("freezing_point_textbook_c"), report.textbook->freezingPoint.value);
        EXPECT_EQ(value("texture.ice_percent_at_serving"), percent(report.texture.iceAtServing));
        EXPECT_EQ(value("texture.ice_percent_in_freezer"), percent(report.texture.iceInFreezer));
        EXPECT_EQ(value("readings.refractometer_brix"), *report.readings->refractometer_brix);
        EXPECT_EQ(value("readings.specific_gravity_20_20"), report.readings->specificGravity_20_20);
        EXPECT_EQ(value("readings.baume"), report.readings->baume);
        EXPECT_EQ(figureIn(comparison.figures, "percent.sugars")->uncertainties[side], percent(report.sugarsUncertainty));
    }
    const ComparedFigure& point = *figureIn(comparison.figures, "freezing_point_c");
    EXPECT_EQ(point.changes[0], std::nullopt);
    EXPECT_EQ(point.changes[1].value(), *point.values[1] - *point.values[0]);
}

TEST(CompareFigures, MassesFollowTheBasis)
{
    const std::vector<Recipe> both{granita(), scaled(granita(), 2.0)};
    const auto masses = [&](const Basis& basis) {
        ComparingWishes wishes;
        wishes.basis = basis;
        const Comparison comparison = compared(both, wishes);
        const auto& sugar = comparison.components[0].rows[2].cells;
        return std::array{figureIn(comparison.figures, "mass_g")->values[1].value(), sugar[0].mass.value, sugar[1].mass.value};
    };
    const double batch = analyse(granita(), shippedCatalogue(), {}).mass.value;
    EXPECT_EQ(masses({Basis::Batch, {}}), (std::array{2.0 * batch, 190.0, 380.0}));
    const auto per100g = masses({Basis::HundredGrams, {}});
    EXPECT_NEAR(per100g[0], 100.0, 1e-9);
    EXPECT_NEAR(per100g[1], 19000.0 / batch, 1e-9);
    EXPECT_NEAR(per100g[2], per100g[1], 1e-9);
    EXPECT_NEAR(masses({Basis::Portion, {80.0}})[2], 0.8 * per100g[1], 1e-9);
}

TEST(CompareFigures, ChangesAreThoseOfTheFiguresShown)
{
    EXPECT_EQ(shownChange(-8.249, -5.851, 1), 2.3);  // -8.2 and -5.9, although they differ by 2.398
    EXPECT_EQ(shownChange(23.849, 19.051, 1), -4.7);
    EXPECT_EQ(shownChange(0.15, 0.25, 1), 0.1);  // neither is what it is written as: 0.1 and 0.2
    EXPECT_EQ(shownChange(0.04, -0.04, 1), 0.0);
    const Comparison comparison = compared({granita(), granita(223.0), granita(160.0)});
    int differing = 0;
    for (const ComparedFigure& figure : comparison.figures) {
        for (const std::size_t side : {1u, 2u}) {
            if (!figure.changes[side])
                continue;
            const double change = *shownChange(figure, side);
            const auto text = [&](double value) { return english(phrase("{0}", Figure{value, figure.decimals})); };
            EXPECT_EQ(text(std::stod(text(*figure.values[0])) + change), text(*figure.values[side])) << figure.key;
            differing += text(change) != text(*figure.changes[side]) ? 1 : 0;
            EXPECT_EQ(*figure.changes[side], *figure.values[side] - *figure.values[0]) << figure.key;  // as JSON has it
        }
    }
    EXPECT_GT(differing, 0);
}

TEST(CompareFigures, PartsAndWholeAreThoseOfTheTable)
{
    const Comparison comparison = compared({granita(), granita(223.0, 41.0)});
    const std::array keys{"freezing_point_c", "sweetness_percent_sucrose", "texture.ice_percent_at_serving"};
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const AttributedKind& kind = attributedKinds()[i];
        const ComparedFigure& figure = *figureIn(comparison.figures, keys[i]);
        EXPECT_EQ(figure.decimals, kind.decimals) << keys[i];
        EXPECT_EQ(*shownChange(figure, 1), shownWhole(comparison.attributions[0].*kind.figure, kind.decimals)) << keys[i];
    }
}

TEST(CompareFigures, WhatTheFreezerSetsIsNoChangeOfTheMix)
{
    const Comparison comparison = compared({granita(10.0), granita(30.0), granita()});
    const ComparedFigure& coldest = *figureIn(comparison.figures, "texture.serving_window_c.coldest");
    ASSERT_EQ(coldest.values[2].value(), -18.0);
    EXPECT_EQ(coldest.isFreezers, (std::vector{false, false, true}));
    EXPECT_TRUE(coldest.changes[1]);
    EXPECT_FALSE(coldest.changes[2]);
    const std::string text = comparisonText(comparison);
    EXPECT_NE(text.find("straight from freezer\n"), std::string::npos) << text;
    EXPECT_EQ(text.find("-18.0 ("), std::string::npos) << text;
    for (const ComparedFigure& figure : comparison.figures)
        EXPECT_EQ(std::ranges::count(figure.isFreezers, true), figure.key == coldest.key ? 1 : 0) << figure.key;
}

TEST(CompareFigures, NoUncertaintyThatIsNothing)
{
    Recipe syrup;
    syrup.components.front().rows = {row("water", 769.0), row("sucrose", 231.0)};
    const Comparison comparison = compared({syrup, granita()});
    const ComparedFigure& sugars = *figureIn(comparison.figures, "percent.sugars");
    EXPECT_EQ(shownUncertainty(sugars, 0), std::nullopt);
    EXPECT_TRUE(shownUncertainty(sugars, 1));
    EXPECT_EQ(comparisonText(comparison).find("± 0.0"), std::string::npos);
    const auto report = [](const Recipe& recipe) { return reportText(recipe, analyse(recipe, shippedCatalogue(), {})); };
    EXPECT_EQ(report(syrup).find("+-"), std::string::npos);
    EXPECT_NE(report(granita()).find("+- 0."), std::string::npos);
}

TEST(Compare, RefusesWhatCannotBeCompared)
{
    const Candidate one = benchCandidate(granita(), "A");
    EXPECT_FALSE(compare({one}, shippedCatalogue()));
    EXPECT_FALSE(compare({one, one, one, one, one}, shippedCatalogue()));
    ComparingWishes wishes;
    wishes.basis = {Basis::Portion, {0.0}};
    EXPECT_FALSE(compare({one, one}, shippedCatalogue(), wishes));
}

TEST(Compare, WhatARecipeDoesNotSayIsTakenFromTheOther)
{
    Recipe silent = granita();
    silent.process.reset();
    Recipe said = granita();
    said.serveAt_c = -8.0;
    said.freezerAt_c = -20.0;
    const Comparison comparison = compared({silent, said});
    EXPECT_EQ(comparison.sides[0].analysis.conditions.serveAt, Celsius{-8.0});
    EXPECT_EQ(comparison.sides[0].analysis.conditions.freezerAt, Celsius{-20.0});
    EXPECT_EQ(comparison.sides[0].analysis.texture.process, Process::Scraped);
    EXPECT_FALSE(says(comparison.fairness, "served at"));
    EXPECT_TRUE(says(comparison.fairness, "are the same mix"));
}

// Attribution

TEST(Attribution, OneChangedRowGetsAll)
{
    const Comparison comparison = compared({granita(), granita(230.0)});
    const Attribution& attribution = comparison.attributions[0];
    ASSERT_EQ(attribution.changes.size(), 1u);
    EXPECT_EQ(english(attribution.changes[0].what), "sucrose: 190 g → 230 g");
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        EXPECT_NEAR(figure.parts[0], wholeOf(figure), 1e-6) << kind.key;
    }
    EXPECT_LT(attribution.freezingPoint_c.parts[0], -0.1);
    EXPECT_GT(attribution.sweetness_percentSucrose.parts[0], 1.0);
}

TEST(Attribution, WaterAloneDilutes)
{
    Recipe thinner = granita();
    thinner.components.front().rows[1].amount.value = 520.0;
    const Attribution attribution = compared({granita(), thinner}).attributions[0];
    ASSERT_EQ(attribution.changes.size(), 1u);
    EXPECT_GT(attribution.freezingPoint_c.parts[0], 0.1);
    EXPECT_LT(attribution.sweetness_percentSucrose.parts[0], -1.0);
}

TEST(Attribution, EqualRowsGetEqualParts)
{
    Recipe first, other;
    first.components.front().rows = {row("water", 800.0), row("sucrose", 100.0)};
    other.components.front().rows = {row("water", 800.0), row("sucrose", 100.0), row("sucrose", 50.0), row("sucrose", 50.0)};
    const Attribution attribution = compared({first, other}).attributions[0];
    ASSERT_EQ(attribution.changes.size(), 2u);
    EXPECT_EQ(attribution.orders, 2u);
    for (const AttributedKind& kind : attributedKinds()) {
        const auto& parts = (attribution.*kind.figure).parts;
        EXPECT_NEAR(parts[0], parts[1], 1e-12) << kind.key;
    }
}

/// By hand: with shares s/(w + s) the sweetness of sucrose in water is 100 s/(w + s), and two changes have two orders.
TEST(Attribution, TwoChangesByHand)
{
    Recipe first, other;
    first.components.front().rows = {row("water", 900.0), row("sucrose", 100.0)};
    other.components.front().rows = {row("water", 700.0), row("sucrose", 300.0)};
    const Attribution attribution = compared({first, other}).attributions[0];
    const double start = 10.0, dry = 100.0 * 100.0 / 800.0, sweet = 100.0 * 300.0 / 1200.0, end = 30.0;
    const auto& parts = attribution.sweetness_percentSucrose.parts;
    EXPECT_NEAR(parts[0], 0.5 * ((dry - start) + (end - sweet)), 1e-9);
    EXPECT_NEAR(parts[1], 0.5 * ((sweet - start) + (end - dry)), 1e-9);
}

TEST(Attribution, NoOrderRunsOutOfWater)
{
    Recipe first, other;
    first.components.front().rows = {row("water", 800.0), row("sucrose", 150.0)};
    other.components.front().rows = {row("skim milk", 800.0), row("sucrose", 150.0)};
    const Comparison comparison = compared({first, other});
    const Attribution& attribution = comparison.attributions[0];
    ASSERT_EQ(attribution.changes.size(), 2u);
    EXPECT_EQ(attribution.orders, 1u);  // milk in, then water out
    EXPECT_FALSE(attribution.freezingPoint_c.whyNone);
    EXPECT_NEAR(sumOf(attribution.freezingPoint_c), wholeOf(attribution.freezingPoint_c), 1e-6);
    EXPECT_LT(std::abs(attribution.freezingPoint_c.parts[0]), 3.0);
}

TEST(Attribution, NoFreezingPointIsSaid)
{
    Recipe dry;
    dry.components.front().rows = {row("sucrose", 100.0)};
    const Comparison comparison = compared({granita(), dry});
    const Attribution& attribution = comparison.attributions[0];
    ASSERT_TRUE(attribution.freezingPoint_c.whyNone);
    EXPECT_TRUE(says(comparison.fairness, "“B” has no water to freeze"));
    EXPECT_TRUE(attribution.freezingPoint_c.parts.empty());
    EXPECT_NEAR(sumOf(attribution.sweetness_percentSucrose), wholeOf(attribution.sweetness_percentSucrose), 1e-6);
    EXPECT_NE(comparisonText(comparison).find("no water to freeze"), std::string::npos);
}

TEST(Attribution, StepsAndServingTemperatureAreChangesOfTheirOwn)
{
    Recipe other = granita(210.0);
    Step boiled;
    boiled.kind = StepKind::Reduce;
    boiled.loss = BoiledToMass{{900.0}};
    other.components.front().steps = {boiled};
    other.serveAt_c = -8.0;
    Recipe first = granita();
    first.serveAt_c = -12.0;
    const Comparison comparison = compared({first, other});
    const Attribution& attribution = comparison.attributions[0];
    ASSERT_EQ(attribution.changes.size(), 3u);
    EXPECT_EQ(attribution.changes[1].kind, Change::Steps);
    EXPECT_EQ(attribution.changes[2].kind, Change::ServingTemperature);
    EXPECT_LT(attribution.freezingPoint_c.parts[1], -0.1);
    EXPECT_EQ(attribution.freezingPoint_c.parts[2], 0.0);
    EXPECT_LT(attribution.iceAtServing_percent.parts[2], -1.0);
    for (const AttributedKind& kind : attributedKinds())
        EXPECT_NEAR(sumOf(attribution.*kind.figure), wholeOf(attribution.*kind.figure), 1e-6) << kind.key;
    EXPECT_TRUE(says(comparison.fairness, "3 things changed at once"));
    EXPECT_TRUE(says(comparison.fairness, "Choose one serving temperature"));
    ComparingWishes wishes;
    wishes.serveAt = Celsius{-10.0};
    EXPECT_FALSE(says(compared({first, other}, wishes).fairness, "serving temperature"));
}

TEST(Attribution, ANameThatMeansSomethingElseIsTheRest)
{
    Ingredient odd;
    odd.id = "odd";
    odd.name = "sucrose";  // in one recipe only
    odd.composition.per100g[Constituent::Fructose] = {100.0};
    Recipe other = granita();
    other.ingredients = {odd};
    const Attribution attribution = compared({granita(), other}).attributions[0];
    EXPECT_EQ(attribution.changes.back().kind, Change::Rest);
    for (const AttributedKind& kind : attributedKinds())
        EXPECT_NEAR(sumOf(attribution.*kind.figure), wholeOf(attribution.*kind.figure), 1e-6) << kind.key;
}

TEST(Attribution, NumbersShownAddUp)
{
    const AttributedFigure figure{1.0, 2.0, {1.0 / 3.0, 1.0 / 3.0, 1.0 / 3.0 + 0.2, -0.2}, {}};
    const std::vector<double> shown = roundedParts(figure, 1);
    ASSERT_EQ(shown.size(), 4u);
    EXPECT_NEAR(std::accumulate(shown.begin(), shown.end(), 0.0), 1.0, 1e-12);
    for (std::size_t i = 0; i < shown.size(); ++i)
        EXPECT_NEAR(shown[i], figure.parts[i], 0.1) << i;
    EXPECT_NEAR(shown[3], -0.2, 1e-12);
}

TEST(Attribution, NumbersShownAddUpWhenTheEndsAreRoundedTowardsEachOther)
{
    for (const auto& [from, to] : {std::pair(-8.249, -5.851), std::pair(-5.851, -8.249), std::pair(0.05001, 0.14999)}) {
        const double part = (to - from) / 3.0;
        const AttributedFigure figure{from, to, {part, part, part}, {}};
        const std::vector<double> shown = roundedParts(figure, 1);
        EXPECT_NEAR(std::accumulate(shown.begin(), shown.end(), 0.0), shownWhole(figure, 1), 1e-12);
        for (const double one : shown)
            EXPECT_NEAR(one, part, 0.1) << from;
    }
}

TEST(Attribution, IsToldInDegreesAndInPointsThatAreExplained)
{
    const Comparison comparison = compared({granita(), granita(230.0)});
    const auto sentence = [&](std::size_t kind) {
        return english(inASentence(comparison.attributions[0], attributedKinds()[kind], "A", "B"));
    };
    const std::string change =
        english(phrase("{0}", Figure{std::abs(shownWhole(comparison.attributions[0].freezingPoint_c, 2)), 2}));
    EXPECT_EQ(sentence(0),
        "From “A” to “B” the freezing point falls by " + change + " K; “sucrose: 190 g → 230 g” accounts for " + change + " K.");
    EXPECT_NE(sentence(1).find("sweetness points (1 point is as sweet as 1 % sugar)"), std::string::npos) << sentence(1);
}

const std::vector<std::string>& anyIngredients()
{
    static const std::vector<std::string> names = {"water", "sucrose", "glucose", "fructose", "whole milk", "heavy cream", "gin",
        "salt", "lemon juice", "strawberry", "egg yolk", "guar gum", "glucose syrup", "unicorn dust", "citric-acid"};
    return names;
}

Recipe anyRecipe()
{
    Recipe recipe;
    const auto count = *rc::gen::inRange(1, 9);
    for (int i = 0; i < count; ++i)
        recipe.components.front().rows.push_back(
            row(*rc::gen::elementOf(anyIngredients()), double(*rc::gen::inRange(0, 5000)) / 10.0));
    if (*rc::gen::inRange(0, 4) == 0) {
        Step step;
        step.loss = HeldBack{{double(*rc::gen::inRange(1, 50))}};
        recipe.components.front().steps = {step};
    }
    if (*rc::gen::inRange(0, 3) == 0)
        recipe.serveAt_c = -double(*rc::gen::inRange(0, 20));
    if (*rc::gen::inRange(0, 6) == 0)
        recipe.components.front().rows.push_back({"sucrose", {double(*rc::gen::inRange(1, 30)), Unit::PercentOfMix}, "", ""});
    return recipe;
}

/// As a cook changes a recipe: some rows, or another recipe altogether.
Recipe changed(Recipe recipe)
{
    if (*rc::gen::inRange(0, 5) == 0)
        return anyRecipe();
    for (Row& one : recipe.components.front().rows)
        if (*rc::gen::inRange(0, 3) == 0)
            one.amount.value = double(*rc::gen::inRange(0, 500)) / 5.0;
    if (*rc::gen::inRange(0, 2) == 0)
        recipe.components.front().rows.push_back(row(*rc::gen::elementOf(anyIngredients()), double(*rc::gen::inRange(1, 100))));
    return *rc::gen::inRange(0, 5) == 0 ? scaled(recipe, 3.0) : recipe;
}

RC_GTEST_PROP(Attribution, PartsOfAnyPairAddUp, ())
{
    const Recipe first = anyRecipe();
    const auto comparison = compare({benchCandidate(first, "A"), benchCandidate(changed(first), "B")}, shippedCatalogue());
    RC_ASSERT(comparison.has_value());
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = comparison->attributions[0].*kind.figure;
        if (figure.whyNone)
            RC_ASSERT(figure.parts.empty() && &kind == &attributedKinds().front());
        else
            RC_ASSERT(std::abs(sumOf(figure) - wholeOf(figure)) < 1e-6);
        if (!figure.parts.empty()) {
            const std::vector<double> shown = roundedParts(figure, kind.decimals);
            RC_ASSERT(std::abs(std::accumulate(shown.begin(), shown.end(), 0.0) - shownWhole(figure, kind.decimals)) < 1e-9);
        }
    }
    for (const Change& change : comparison->attributions[0].changes)
        RC_ASSERT(change.kind != Change::Rest);
}

// Fairness

TEST(Fairness, TwoChangesAndSmallOnes)
{
    Recipe other = granita(191.0, 31.0);
    const Comparison comparison = compared({granita(), other});
    EXPECT_TRUE(says(comparison.fairness,
        "Two things changed at once in “B”: sucrose, lemon juice. The sums can tell them apart; your tongue "
        "cannot."));
    EXPECT_TRUE(says(comparison.fairness, "less than the model is good for"));
    other.process = Process::Churned;
    EXPECT_TRUE(says(compared({granita(), other}).fairness, "“A” is scraped and “B” is churned"));
    EXPECT_FALSE(says(compared({granita(), granita(250.0)}).fairness, "changed at once"));
}

TEST(Fairness, TastingsAndReadingsOfOneAgeAndWarmth)
{
    Candidate first = benchCandidate(granita(), "A"), other = benchCandidate(granita(220.0), "B");
    Tasting tasting;
    tasting.servedAt_c = -12.0;
    tasting.frozen_h = 24.0;
    ReadingRecord reading;
    reading.value = 25.0;
    reading.temperature_c = 20.0;
    first.tastings = other.tastings = {tasting};
    first.readings = other.readings = {reading};
    const auto fairness = [&] { return compare({first, other}, shippedCatalogue())->fairness; };
    EXPECT_TRUE(fairness().empty()) << english(fairness().front());
    other.tastings[0].servedAt_c = -8.0;
    EXPECT_TRUE(says(fairness(), "“A” was tasted at -12.0 °C and “B” at -8.0 °C"));
    other.tastings[0].frozen_h = 72.0;
    EXPECT_TRUE(says(fairness(), "after 24.0 h in the freezer"));
    other.readings[0].temperature_c = 31.0;
    EXPECT_TRUE(says(fairness(), "was measured at 20.0 °C"));
}

// Candidates

TEST(Candidates, VersionsByIdAndNameWithTheirRecords)
{
    Recipe recipe = withVersionKept(granita(), {"first try", "", "2026-04-03"});
    recipe.readings.emplace_back().version = "1";
    recipe.components.front().rows[2].amount.value = 220.0;
    recipe.readings.emplace_back();
    Tasting hidden;
    hidden.code = "417";
    recipe.tastings = {hidden};
    const auto version = versionCandidate(recipe, "1");
    ASSERT_TRUE(version);
    EXPECT_EQ(version->name, "first try");
    EXPECT_EQ(version->readings.size(), 1u);
    EXPECT_EQ(versionCandidate(recipe, "First Try"), version);
    const Candidate bench = benchCandidate(recipe, "bench");
    EXPECT_EQ(bench.readings.size(), 1u);
    EXPECT_TRUE(bench.tastings.empty());  // nobody knows yet whose it is
    EXPECT_TRUE(bench.recipe.versions.empty());
    recipe.blindSheets = {{"", {{"417", "1"}}, false}};
    EXPECT_TRUE(versionCandidate(recipe, "1")->tastings.empty());
    recipe.blindSheets[0].isRevealed = true;
    EXPECT_EQ(versionCandidate(recipe, "1")->tastings.size(), 1u);
    const auto none = versionCandidate(recipe, "9");
    ASSERT_FALSE(none);
    EXPECT_NE(english(none.error()).find("There are: 1."), std::string::npos);
    EXPECT_NE(english(versionCandidate(granita(), "9").error()).find("keeps no versions"), std::string::npos);
}

RC_GTEST_PROP(Candidates, NoneHasATastingThatASheetStillHides, ())
{
    // Any mixture of versions and codes in the file, on sheets revealed or not: a file can have both fields.
    Recipe recipe = withVersionKept(granita(), {"first try", "", "2026-04-03"});
    recipe.components.front().rows[2].amount.value = 220.0;
    recipe = withVersionKept(std::move(recipe), {"second try", "", "2026-04-04"});
    const auto anyVersion = rc::gen::element<std::string>("", "1", "2");
    const auto anyCode = rc::gen::element<std::string>("", "417", "902", "555");
    const int sheets = *rc::gen::inRange(0, 3);
    for (int i = 0; i < sheets; ++i)
        recipe.blindSheets.push_back({"", {{*anyCode, *anyVersion}, {*anyCode, *anyVersion}}, *rc::gen::arbitrary<bool>()});
    const int tastings = *rc::gen::inRange(1, 6);
    for (int i = 0; i < tastings; ++i) {
        Tasting& tasting = recipe.tastings.emplace_back();
        tasting.version = *anyVersion;
        tasting.code = *anyCode;
    }
    for (const Candidate& candidate :
        {benchCandidate(recipe, "bench"), *versionCandidate(recipe, "1"), *versionCandidate(recipe, "2")}) {
        for (const Tasting& tasting : candidate.tastings) {
            RC_ASSERT(!isStillHidden(tasting, recipe));
            RC_ASSERT(versionOf(tasting, recipe).has_value());
        }
    }
}

// JSON and text

TEST(CompareOutput, JsonHasTheShapeThatIsDescribed)
{
    Recipe odd = granita(230.0);
    odd.components.front().rows[0].ingredient = "rhu\xff"
                                                "barb \x1b[31m";
    const auto json = nlohmann::json::parse(comparisonJson(compared({granita(), odd})));
    EXPECT_EQ(json["format"], "firn-comparison");
    EXPECT_EQ(json["basis"]["per"], "100g");
    EXPECT_EQ(json["recipes"].size(), 2u);
    EXPECT_EQ(json["rows"].size(), 6u);
    EXPECT_EQ(json["rows"][0]["in"][1]["difference"], "left out");
    EXPECT_TRUE(json["rows"][0]["in"][1]["grams"].is_null());
    double sum = 0.0;
    for (const auto& change : json["attributions"][0]["changes"])
        sum += change["freezing_point_k"].get<double>();
    EXPECT_NEAR(sum, json["attributions"][0]["whole"]["freezing_point_k"].get<double>(), 1e-6);
}

TEST(CompareOutput, TextIsOfOnePiece)
{
    Recipe odd = granita(230.0);
    odd.title = "\x1b[31m";
    odd.components.front().rows[3].ingredient = "<b>glucose</b>";
    const std::string text = comparisonText(compared({granita(), odd, Recipe(), granita()}));
    EXPECT_EQ(text.find('\x1b'), std::string::npos);
    EXPECT_NE(text.find("<b>glucose</b>"), std::string::npos);
    EXPECT_NE(text.find("▲ 230 g"), std::string::npos);
    EXPECT_NE(text.find("together"), std::string::npos);
}

}  // namespace
}  // namespace firn
