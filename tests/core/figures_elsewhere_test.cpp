// Figures that stand in other windows than the bench, and how they come about: those of a comparison, a measuring and a tasting.
#include "compare/comparison_workings.h"
#include "correction/measuring.h"
#include "derivation/formula_text.h"
#include "explain/explain.h"
#include "explain/figures.h"
#include "tasting/scores.h"
#include "tasting/triangle_test.h"

#include "../shipped_catalogue.h"

#include <bit>
#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

Row row(const std::string& ingredient, double grams) { return {ingredient, {grams, Unit::Gram}, "", ""}; }

Recipe granita(double sucrose_g, double gin_g)
{
    Recipe recipe;
    recipe.title = "Pear granita";
    recipe.components.front().rows = {
        row("pear", 300.0), row("water", 420.0), row("sucrose", sucrose_g), row("gin", gin_g), row("nobody knows", 10.0)};
    return recipe;
}

std::string faultOf(const WorkingStep& step)
{
    const auto& sides = std::get<Operation>(step.formula.node).parts;
    const auto left = valueOf(sides[0]), right = valueOf(sides[1]);
    if (!std::isfinite(step.result.value) || (left && right && std::abs(*left - *right) > 1e-7 + 1e-7 * std::abs(*left)))
        return textOf(withValues(step.formula, &step.result)) + "\n";
    return {};
}

/// Steps whose sides do not agree, and symbols that lead to no figure or to one of another value.
std::string faultsOf(const Workings& workings, const std::vector<const Workings*>& sides = {})
{
    std::string faults;
    const auto lookUp = [&](const std::string& key) {
        const bool isOfSide = key.starts_with("sides[");
        return isOfSide ? sides.at(std::size_t(key[6] - '0'))->find(key.substr(9)) : workings.find(key);
    };
    for (const auto& [key, working] : workings.all()) {
        for (const WorkingStep& step : working.steps()) {
            faults += faultOf(step);
            for (const Symbol& symbol : symbolsOf(step.formula)) {
                if (symbol.figure.empty() || symbol.value == -1e-6)  // no rounding of the freezing curve's first point
                    continue;
                const Working* other = lookUp(symbol.figure);
                if (!other)
                    faults += key + ": " + textOf(symbol) + " leads to " + symbol.figure + ", which has no derivation\n";
                else if (other->steps().back().result.value != symbol.value)
                    faults += key + ": " + textOf(symbol) + " is not what " + symbol.figure + " says\n";
            }
        }
    }
    return faults.substr(0, 4000);
}

/// To the last bit.
void expectEndsWith(const Workings& workings, const std::string& key, double value)
{
    const auto derivation = explain(key, workings);
    ASSERT_TRUE(derivation) << english(derivation.error());
    EXPECT_EQ(std::bit_cast<std::uint64_t>(derivation->result().value), std::bit_cast<std::uint64_t>(value)) << key;
}

Comparison compared(const ComparingWishes& wishes)
{
    std::vector<Candidate> candidates;
    for (const auto& [sucrose_g, gin_g] : {std::pair(150.0, 0.0), std::pair(190.0, 0.0), std::pair(160.0, 40.0)})
        candidates.push_back(benchCandidate(granita(sucrose_g, gin_g), std::string(1, char('A' + candidates.size()))));
    candidates[1].recipe.serveAt_c = -7.0;
    return compare(candidates, shippedCatalogue(), wishes).value();
}

const std::vector<ComparingWishes> allWishes{
    {{Basis::HundredGrams}}, {{Basis::Batch}}, {{Basis::Portion, {80.0}}, Celsius{-9.5}, Celsius{-20.0}, {6.0}}};

TEST(FiguresOfAComparison, EveryCellEndsItsDerivation)
{
    for (const ComparingWishes& wishes : allWishes) {
        const Comparison comparison = compared(wishes);
        std::size_t cells = 0;
        for (std::size_t side = 0; side < comparison.sides.size(); ++side) {
            const ComparedSide& of = comparison.sides[side];
            const Workings workings = workingsOfSide(comparison, side, shippedCatalogue());
            EXPECT_EQ(faultsOf(workings), "");
            for (const ComparedFigure& figure : comparison.figures) {
                if (figure.values[side])
                    expectEndsWith(workings, figureOfSide(figure, of), *figure.values[side]);
                cells += figure.values[side] ? 1 : 0;
            }
            for (const ComparedRow& line : comparison.components.front().rows)
                expectEndsWith(workings, figureOfSide(line.cells[side], of), line.cells[side].mass.value);
        }
        EXPECT_GT(cells, 40u);
    }
}

TEST(FiguresOfAComparison, DifferencesLeadToBothSides)
{
    for (const ComparingWishes& wishes : allWishes) {
        const Comparison comparison = compared(wishes);
        const Workings first = workingsOfSide(comparison, 0, shippedCatalogue());
        for (std::size_t side = 1; side < comparison.sides.size(); ++side) {
            const Workings other = workingsOfSide(comparison, side, shippedCatalogue());
            const Workings differences = workingsOfDifferences(comparison, side, first, other);
            EXPECT_EQ(faultsOf(differences, {&first, &other}), "");
            for (const ComparedFigure& figure : comparison.figures) {
                ASSERT_EQ(figure.changes[side].has_value(), explain(figureOfChange(figure), differences).has_value()) << figure.key;
                if (figure.changes[side])
                    expectEndsWith(differences, figureOfChange(figure), *figure.changes[side]);
            }
            for (const AttributedKind& kind : attributedKinds()) {
                const AttributedFigure& whole = comparison.attributions[side - 1].*kind.figure;
                expectEndsWith(differences, figureOfAttribution(kind), *whole.to - *whole.from);
                const auto& steps = differences.find(figureOfAttribution(kind))->steps();
                ASSERT_EQ(steps.size(), 2u);
                EXPECT_EQ(termsOf(steps.back().formula)->size(), whole.parts.size());
                EXPECT_TRUE(steps.back().method);
            }
        }
    }
}

TEST(FiguresOfAComparison, WhatDoesNotFreezeHasNoDifferenceToExplain)
{
    Recipe dry;
    dry.components.front().rows = {row("sucrose", 100.0)};
    const Comparison comparison =
        compare({benchCandidate(granita(150.0, 0.0), "A"), benchCandidate(dry, "B")}, shippedCatalogue()).value();
    const Workings first = workingsOfSide(comparison, 0, shippedCatalogue());
    const Workings differences = workingsOfDifferences(comparison, 1, first, workingsOfSide(comparison, 1, shippedCatalogue()));
    EXPECT_FALSE(differences.find("change.freezing_point_c"));
    EXPECT_FALSE(differences.find("attribution.freezing_point_k"));
    EXPECT_TRUE(differences.find("change.percent.sugars"));
}

TEST(FiguresOfAMeasuring, EachColumnEndsItsDerivation)
{
    for (const Instrument instrument : {Instrument::Refractometer, Instrument::HydrometerBrix, Instrument::HydrometerGravity,
             Instrument::HydrometerBaume, Instrument::Egg, Instrument::BoilingPoint}) {
        const Recipe recipe = granita(170.0, instrument == Instrument::BoilingPoint ? 0.0 : 60.0);  // spirit would boil off
        std::vector<ReadingRecord> records(1);
        records.front().instrument = instrument;
        records.front().temperature_c = 27.0;
        if (instrument == Instrument::Egg) {
            records.front().eggMass = Grams{61.0};
            records.front().eggDensity = GramsPerMillilitre{1.05};
        }
        if (instrument == Instrument::Refractometer)
            records.front().compensates = true;
        const Measuring before = measuring(recipe, shippedCatalogue(), 0, records, false, {});
        ASSERT_TRUE(before.beside.front().computed && before.beside.front().computed->value) << int(instrument);
        records.front().value = 1.002 * *before.beside.front().computed->value;
        const Measuring found = measuring(recipe, shippedCatalogue(), 0, records, true, {});
        ASSERT_FALSE(found.mixes.empty()) << int(instrument);
        const Workings workings = workingsOfMeasuring(recipe, shippedCatalogue(), 0, {}, records, true, {}, 0);
        EXPECT_EQ(faultsOf(workings), "") << int(instrument);
        expectEndsWith(workings, "percent.sugars", percent(found.sugar));
        expectEndsWith(workings, "percent.alcohol", percent(found.alcohol));
        expectEndsWith(workings, figureComputedFor(instrument), *found.beside.front().computed->value);
        expectEndsWith(workings, figureApart(instrument), *found.beside.front().difference);
        expectEndsWith(workings, "measured.sugars_percent", percent(found.mixes.front().estimate.sugar));
        expectEndsWith(workings, "apart.sugars_percent", percent(found.mixes.front().sugarDifference));
        expectEndsWith(workings, "apart.alcohol_percent", percent(found.mixes.front().alcoholDifference));
    }
}

TEST(FiguresOfAMeasuring, KeptReadingsAreNotMistakenForThisOne)
{
    Recipe recipe = granita(170.0, 0.0);
    recipe.readings.emplace_back().value = 30.0;
    std::vector<ReadingRecord> records(1);
    const Workings unread = workingsOfMeasuring(recipe, shippedCatalogue(), 0, {}, records, false, {}, 0);
    EXPECT_FALSE(unread.find("measured.sugars_percent"));
    EXPECT_TRUE(unread.find("computed.refractometer_brix"));
    EXPECT_FALSE(unread.find("apart.refractometer_brix"));
    records.front().value = 20.0;
    const Measuring found = measuring(recipe, shippedCatalogue(), 0, records, true, {});
    expectEndsWith(workingsOfMeasuring(recipe, shippedCatalogue(), 0, {}, records, true, {}, 0), "measured.sugars_percent",
        percent(found.mixes.front().estimate.sugar));
}

TEST(FiguresOfAMeasuring, AnInstrumentOffItsScaleHasNothingToExplain)
{
    std::vector<ReadingRecord> records(1);
    records.front().from = 45.0;
    records.front().to = 82.0;
    const Workings workings = workingsOfMeasuring(granita(170.0, 0.0), shippedCatalogue(), 0, {}, records, false, {}, 0);
    EXPECT_FALSE(workings.find("computed.refractometer_brix"));
    EXPECT_FALSE(workings.find("apart.refractometer_brix"));
    records.front().instrument = Instrument::Egg;
    EXPECT_FALSE(
        workingsOfMeasuring(granita(0.0, 0.0), shippedCatalogue(), 0, {}, records, false, {}, 0).find("computed.egg_width_mm"));
}

TEST(FiguresOfATasting, TheTriangleTest)
{
    for (const auto& [tasters, right] :
        {std::pair<std::size_t, std::size_t>{12, 7}, {12, 12}, {12, 0}, {3, 3}, {60, 25}, {mostTasters, 370}, {mostTasters, 0}}) {
        Workings workings;
        const auto said = triangleTest(tasters, right, &workings);
        ASSERT_TRUE(said);
        EXPECT_EQ(english(*said), english(*triangleTest(tasters, right)));
        EXPECT_EQ(faultsOf(workings), "") << tasters;
        expectEndsWith(workings, figureOfChance, 100.0 * chanceByGuessing(tasters, right));
        expectEndsWith(workings, figureOfLeastRight, double(*leastRight(tasters)));
    }
}

TEST(FiguresOfATasting, TheTriangleTestIsWrittenWithWholeNumbersOfWays)
{
    Workings workings;
    ASSERT_TRUE(triangleTest(6, 5, &workings));
    const WorkingStep& step = workings.find(figureOfChance)->steps().back();
    EXPECT_EQ(
        textOf(withValues(step.formula, &step.result)), "P = 100 % · (6 · (1 / 3)^5 · (2 / 3)^1 + 1 · (1 / 3)^6 · (2 / 3)^0)");
    EXPECT_NEAR(step.result.value, 100.0 * 13.0 / 729.0, 1e-9);  // (6 * 2 + 1) / 3^6
}

TEST(FiguresOfATasting, WhatIsNoTestHasNothingToExplain)
{
    Workings workings;
    EXPECT_FALSE(triangleTest(5, 6, &workings));
    EXPECT_FALSE(triangleTest(2, 2, &workings));
    EXPECT_TRUE(workings.all().empty());
    for (const std::string_view key : figuresBesideReport())
        if (key.starts_with("tasting.")) {
            EXPECT_NE(english(explain(std::string(key), workings).error()).find("in Tasting."), std::string::npos);
        }
    EXPECT_NE(english(explain("tasting.mean_score[1]", workings).error()).find("give scores"), std::string::npos);
}

TEST(FiguresOfATasting, MeansOfScores)
{
    Recipe recipe;
    recipe.scales.push_back({"iciness", 0.0, 10.0, "", ""});
    for (const double score : {6.5, 7.0, 3.2}) {
        Tasting& tasting = recipe.tastings.emplace_back();
        tasting.scores.push_back({"iciness", score});
        tasting.tasters = "the kitchen";
    }
    recipe.tastings.back().date = "2026-04-03";
    Workings workings;
    const ScoresOnScale scores = scoresOn(recipe, "iciness", &workings);
    ASSERT_EQ(scores.versions.size(), 1u);
    EXPECT_EQ(scores.versions.front().mean, scoresOn(recipe, "iciness").versions.front().mean);
    EXPECT_EQ(faultsOf(workings), "");
    expectEndsWith(workings, figureOfMean(0), scores.versions.front().mean);
    const auto& terms = *termsOf(workings.find(figureOfMean(0))->steps().back().formula);
    ASSERT_EQ(terms.size(), 3u);
    EXPECT_EQ(terms.front().label, "the kitchen");
    EXPECT_EQ(terms.back().label, "2026-04-03, the kitchen");
}

}  // namespace
}  // namespace firn
