#include "explain/explain.h"

#include "derivation/formula_text.h"
#include "exchange/files.h"
#include "exchange/report.h"
#include "explain/figures.h"
#include "freezing/textbook.h"

#include "../shipped_catalogue.h"
#include "any_kitchen_recipe.h"

#include <bit>
#include <cmath>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

using Json = nlohmann::json;

/// Every number of a report by its key: "percent.sugars", "rows[2].grams". The version of the format is no figure.
void collectFigures(const Json& json, const std::string& key, std::map<std::string, double>& figures)
{
    if (json.is_number() && key != "version")
        figures[key] = json.get<double>();
    for (std::size_t i = 0; json.is_array() && i < json.size(); ++i)
        collectFigures(json[i], key + "[" + std::to_string(i) + "]", figures);
    if (json.is_object()) {
        for (const auto& [name, value] : json.items())
            collectFigures(value, key.empty() ? name : key + "." + name, figures);
    }
}

/// The figures that the window shows beside those of the report.
void collectBesideReport(const Analysis& analysis, std::map<std::string, double>& figures)
{
    std::size_t i = 0;
    for (const auto& component : analysis.components) {
        for (const RowAnalysis& row : component)
            figures["rows[" + std::to_string(i++) + "].share_percent"] = percent(row.share);
    }
    figures["finished_volume_ml_20c"] = analysis.finishedVolume.value;
    const auto add = [&](const char* key, const std::optional<double>& value) {
        if (value)
            figures[key] = *value;
    };
    if (analysis.instruments) {
        add("instruments.refractometer_brix", analysis.instruments->brix.value);
        add("instruments.hydrometer_brix", analysis.instruments->hydrometerBrix.value);
        add("instruments.hydrometer_gravity", analysis.instruments->hydrometerGravity.value);
        add("instruments.hydrometer_baume", analysis.instruments->hydrometerBaume.value);
    }
    if (analysis.measured.mix) {
        figures["measured.sugars_percent"] = percent(analysis.measured.mix->sugar);
        figures["measured.alcohol_percent"] = percent(analysis.measured.mix->alcohol);
    }
}

std::map<std::string, double> figuresOf(const Recipe& recipe, const Analysis& analysis)
{
    std::map<std::string, double> figures;
    collectFigures(Json::parse(reportJson(recipe, analysis)), "", figures);
    collectBesideReport(analysis, figures);
    return figures;
}

/// Whether a step's formula, with the values that it shows, gives the result that it shows.
std::string faultOf(const WorkingStep& step)
{
    const std::string text = textOf(withValues(step.formula, &step.result));
    if (!std::isfinite(step.result.value) && step.result.name != "y")
        return "not finite: " + text;
    const auto& sides = std::get<Operation>(step.formula.node).parts;
    const auto left = valueOf(sides[0]);
    const auto right = valueOf(sides[1]);
    if (!left || !right)
        return {};
    const double slack = 1e-9 + 1e-7 * std::abs(*left);
    return std::abs(*left - *right) <= slack ? std::string()
                                             : text + " = " + std::to_string(*right) + ", not " + std::to_string(*left);
}

/// What is wrong with the derivations of a recipe: nothing, unless a figure lacks one, or one does not end with the figure.
std::string faultsOf(const Recipe& recipe, const Conditions& conditions, std::optional<std::size_t> component = {})
{
    const auto [analysis, workings] = analyseWithWorkings(recipe, shippedCatalogue(), conditions, component);
    const std::string plain = reportJson(recipe, analyse(recipe, shippedCatalogue(), conditions, component));
    std::string faults = plain == reportJson(recipe, analysis) ? "" : "recording changes the report\n";
    const auto figures = figuresOf(recipe, analysis);
    for (const auto& [key, value] : figures) {
        const auto derivation = explain(key, workings);
        if (!derivation)
            faults += key + ": " + english(derivation.error()) + "\n";
        else if (std::bit_cast<std::uint64_t>(derivation->result().value) != std::bit_cast<std::uint64_t>(value))
            faults += key + ": ends with " + std::to_string(derivation->result().value) + ", not " + std::to_string(value) + "\n";
    }
    for (const std::string_view key : missableFigures()) {
        if (figures.contains(std::string(key)) != explain(std::string(key), workings).has_value())
            faults += std::string(key) + ": in one of report and derivations only\n";
    }
    for (const auto& [key, working] : workings.all()) {
        for (const WorkingStep& step : working.steps()) {
            if (const std::string fault = faultOf(step); !fault.empty())
                faults += key + ": " + fault + "\n";
            for (const Symbol& symbol : symbolsOf(step.formula)) {
                if (!symbol.figure.empty() && !workings.find(symbol.figure))
                    faults += key + ": " + textOf(symbol) + " leads to " + symbol.figure + ", which has no derivation\n";
                else if (const Working* other = symbol.figure.empty() ? nullptr : workings.find(symbol.figure);
                         other && other->steps().back().result.value != symbol.value && symbol.value != -1e-6)
                    faults += key + ": " + textOf(symbol) + " is not what " + symbol.figure + " says\n";
            }
        }
    }
    return faults.substr(0, 4000);
}

std::vector<std::filesystem::path> samples()
{
    std::vector<std::filesystem::path> files;
    for (const auto& file : std::filesystem::directory_iterator(FIRN_SOURCE_DIR "/resources/samples"))
        files.push_back(file.path());
    return files;
}

class ExplainSamples : public testing::TestWithParam<std::filesystem::path> {};

TEST_P(ExplainSamples, EveryFigureOfTheReportEndsItsDerivation)
{
    const auto recipe = recipeFromContents(*contentsOf(GetParam()), GetParam());
    ASSERT_TRUE(recipe);
    EXPECT_EQ(faultsOf(*recipe, conditionsOf(*recipe)), "");
    EXPECT_EQ(faultsOf(*recipe, conditionsOf(*recipe), 0), "");
}

INSTANTIATE_TEST_SUITE_P(Menu, ExplainSamples, testing::ValuesIn(samples()));

RC_GTEST_PROP(Explain, EveryFigureOfAnyRecipeEndsItsDerivation, ())
{
    const Recipe recipe = anyRecipe();
    Conditions conditions;
    conditions.serveAt = {-*rc::gen::inRange(0, 350) / 10.0};
    conditions.freezerAt = {-*rc::gen::inRange(50, 400) / 10.0};
    conditions.readAt = {*rc::gen::inRange(0, 400) / 10.0};
    const auto component = *rc::gen::inRange<std::size_t>(0, recipe.components.size() + 1);
    const std::string faults = faultsOf(recipe, conditions, component > 0 ? std::optional(component - 1) : std::nullopt);
    RC_ASSERT(faults == "");
}

Recipe recipeOf(const std::vector<std::pair<std::string, double>>& rows)
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : rows)
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return recipe;
}

TEST(Explain, WhatWasMeasuredHasADerivation)
{
    Recipe recipe = recipeOf({{"water", 60}, {"sucrose", 22}, {"gin", 20}, {"whole milk", 10}});
    const auto record = [](Instrument instrument, double value, double temperature_c) {
        ReadingRecord reading;
        reading.instrument = instrument;
        reading.value = value;
        reading.temperature_c = temperature_c;
        reading.date = "2026-05-01T10:00";
        return reading;
    };
    const auto faultsWith = [&](std::vector<ReadingRecord> readings) {
        recipe.readings = std::move(readings);
        EXPECT_TRUE(explain("measured.sugars_percent", recipe, shippedCatalogue(), {}, 0));
        EXPECT_TRUE(explain("measured.alcohol_percent", recipe, shippedCatalogue(), {}, 0));
        return faultsOf(recipe, {}, 0);
    };
    EXPECT_EQ(faultsWith({record(Instrument::Refractometer, 24.0, 25.0)}), "");
    ReadingRecord compensated = record(Instrument::Refractometer, 24.0, 25.0);
    compensated.compensates = true;
    EXPECT_EQ(faultsWith({compensated}), "");
    EXPECT_EQ(faultsWith({record(Instrument::HydrometerBrix, 15.0, 25.0)}), "");
    EXPECT_EQ(faultsWith({record(Instrument::HydrometerGravity, 1.060, 18.0)}), "");
    EXPECT_EQ(faultsWith({record(Instrument::HydrometerBaume, 8.0, 20.0)}), "");
    EXPECT_EQ(faultsWith({record(Instrument::Refractometer, 26.0, 20.0), record(Instrument::HydrometerBrix, 15.5, 20.0)}), "");
}

TEST(Explain, InstrumentsOfTheCooksOwnHaveDerivations)
{
    const Recipe recipe = recipeOf({{"water", 60}, {"sucrose", 22}, {"gin", 10}});
    Conditions conditions{{-12.0}, {-18.0}, {26.0}, {}};
    conditions.instruments.refractometer = {0.0, 40.0, true, 0.2};
    conditions.instruments.hydrometer = Calibration::At60F;
    EXPECT_EQ(faultsOf(recipe, conditions), "");
    conditions.instruments.refractometer = {58.0, 90.0, false, 0.5};  // on which this mix is under the scale
    EXPECT_EQ(faultsOf(recipe, conditions), "");
    EXPECT_FALSE(explain("instruments.refractometer_brix", recipe, shippedCatalogue(), conditions));
    EXPECT_TRUE(explain("instruments.hydrometer_gravity", recipe, shippedCatalogue(), conditions));
}

TEST(Explain, StepsSayHowTheyTakeAway)
{
    Recipe recipe = recipeOf({{"water", 500}, {"raspberry", 300}, {"gin", 50}});
    for (const Loss& loss : {Loss(HeldBack{{100.0}}), Loss(Steeped{"raspberry", 0.5, 60.0}), Loss(BoiledToMass{{600.0}})}) {
        recipe.components.front().steps = {Step{StepKind::Strain, {}, {}, loss, {}, {}}};
        EXPECT_EQ(faultsOf(recipe, {}, 0), "");
        const auto water = explain("water_g", recipe, shippedCatalogue(), {}, 0);
        ASSERT_TRUE(water);
        ASSERT_EQ(water->steps.size(), 3u) << "weighed out, taken away, left";
        EXPECT_TRUE(std::holds_alternative<Operation>(water->steps[1].formula.node));
        EXPECT_TRUE(valueOf(water->steps[1].formula));
    }
}

TEST(Explain, ARowInGramsIsAsWritten)
{
    const auto row = explain("rows[0].grams", recipeOf({{"water", 35}}), shippedCatalogue(), {});
    ASSERT_TRUE(row);
    ASSERT_EQ(row->steps.size(), 1u);
    EXPECT_EQ(textOf(row->steps.front().formula), "m_row = 35 g");
    EXPECT_EQ(english(*row->steps.front().origin), "weighed, as written");
}

TEST(Explain, OddMixesHaveDerivationsToo)
{
    for (const Recipe& recipe : {recipeOf({}), recipeOf({{"water", 500}}), recipeOf({{"ethanol", 100}}),
             recipeOf({{"sucrose", 100}}), recipeOf({{"sucrose", 95}, {"water", 5}}), recipeOf({{"salt", 40}, {"water", 60}}),
             recipeOf({{"vodka", 100}}), recipeOf({{"ethanol", 80}, {"water", 20}}), recipeOf({{"gelatin", 90}, {"water", 10}}),
             recipeOf({{"nobody knows it", 10}})})
        EXPECT_EQ(faultsOf(recipe, {}), "");
    // Pure water at the very temperature at which it freezes.
    EXPECT_EQ(faultsOf(recipeOf({{"water", 500}}), {{0.0}, {-18.0}, {20.0}, {}}), "");
    EXPECT_EQ(
        analyse(recipeOf({{"water", 500}}), shippedCatalogue(), {{0.0}, {-18.0}, {20.0}, {}}).texture.iceAtServing.value, 0.0);
}

TEST(Explain, LinkedRecipesAndNotesHaveDerivationsToo)
{
    Recipe recipe = recipeOf({{"Syrup", 120}, {"water", 200}});
    recipe.components.front().rows.push_back({"strawberry", {1, Unit::Cup}, "sliced", {}});
    recipe.components.front().rows.push_back({"Syrup", {10, Unit::PercentOfMix}, {}, {}});
    recipe.linked.push_back({"Syrup", "syrup.firn", recipeOf({{"sucrose", 60}, {"water", 40}, {"nobody knows it", 10}})});
    const Conditions warm{{-12.0}, {-18.0}, {31.0}, {}};
    EXPECT_EQ(faultsOf(recipe, warm), "");
    EXPECT_EQ(faultsOf(recipe, warm, 0), "");
    EXPECT_GT(percent(analyse(recipe, shippedCatalogue(), warm).shares.sugars), 15.0);
}

std::vector<std::string> linesOf(const std::vector<WorkingStep>& steps)
{
    std::vector<std::string> lines;
    for (const WorkingStep& step : steps)
        lines.push_back(textOf(withValues(step.formula, &step.result)) + " = "
                        + valueText({step.result.value, step.result.unit, true, step.result.decimals}));
    return lines;
}

// The printed steps of the worked example in H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6: lactose of milk and whey
// solids 6.98 g, sucrose 12 g, and 3.2 g for the corn syrup solids of 42 DE, which the book counts as 0.8 of their weight (here as maltose).
TEST(Explain, TheTextbooksWorkedExampleLineByLine)
{
    Mix mix;
    mix.amounts[Constituent::Lactose] = {10 * 0.545 + 2 * 0.765};
    mix.amounts[Constituent::Sucrose] = {12.0};
    mix.amounts[Constituent::Maltose] = {4 * 0.8};
    mix.amounts[Constituent::Water] = {60.0};
    mix.milkSolidsNotFat = {12.0};
    Working working;
    textbookFreezing(textbookMix(mix, &working), 0.0, &working);
    const std::vector<std::string> lines = linesOf(working.steps());
    EXPECT_EQ(lines, (std::vector<std::string>{
                         "SE = 12 g · 1 + 6.98 g · 1 + 3.2 g · 1 = 22.18 g",
                         "s = 100 g · 22.18 g / 60 g = 36.97 g",
                         "ΔT_sugars = 2.21 K + (2.40 K − 2.21 K) · (36.97 g − 36 g) / (39 g − 36 g) = 2.271 K",
                         "ΔT_salts = 2.37 K · 12 g / 60 g = 0.474 K",
                         "T_textbook = 0 °C − 2.271 K − 0.474 K = −2.745 °C",
                     }));
}

TEST(Explain, AnUnknownFigureNamesTheNearOnes)
{
    const Recipe recipe = recipeOf({{"water", 75}, {"sucrose", 25}});
    const auto sentence = [&](const char* figure) { return english(explain(figure, recipe, shippedCatalogue(), {}).error()); };
    EXPECT_NE(sentence("baume").find("Did you mean readings.baume"), std::string::npos) << sentence("baume");
    EXPECT_NE(sentence("freezing_point").find("freezing_point_c"), std::string::npos);
    EXPECT_EQ(sentence("rows[7].grams"), "This recipe has no rows[7].grams: rows are counted from 0, through all components.");
    EXPECT_NE(english(explain("freezing_point_c", recipeOf({{"sucrose", 5}}), shippedCatalogue(), {}).error()).find("no water"),
        std::string::npos);
}

TEST(Explain, HostileNamesAreText)
{
    Recipe recipe = recipeOf({{"<b>sucrose</b> {0} \x1b[31m", 10}, {"sucrose", 10}});
    recipe.ingredients.push_back(*shippedCatalogue().find("sucrose"));
    recipe.ingredients.back().id = "own";
    recipe.ingredients.back().name = "<i>{0}</i>";
    recipe.components.front().rows.push_back({"<i>{0}</i>", {10, Unit::Gram}, {}, {}});
    const auto derivation = explain("sugars_g.sucrose", recipe, shippedCatalogue(), {});
    ASSERT_TRUE(derivation);
    const auto* terms = termsOf(derivation->steps.front().formula);
    ASSERT_TRUE(terms);
    ASSERT_EQ(terms->size(), 2u);
    EXPECT_EQ(terms->back().label, "10 g <i>{0}</i>");
}

}  // namespace
}  // namespace firn
