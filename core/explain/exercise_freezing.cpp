// Where a mix begins to freeze, and how much of it is ice.
#include "derivation/formula_text.h"
#include "explain/exercise_parts.h"
#include "explain/lesson_steps.h"
#include "freezing/curve_working.h"
#include "freezing/salts_term.h"
#include "freezing/textbook.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// Without what is too little to weigh, which would only fill the sheet.
Mix withoutTraces(Mix mix)
{
    constexpr double least_g = 0.05;
    for (const ConstituentFacts& facts : allConstituents()) {
        if (mix[facts.constituent].value < least_g)
            mix.amounts[facts.constituent] = {};
    }
    return mix;
}

int factorDecimals(double factor) { return factor < 1.0 ? 3 : 2; }

/// The steps of the textbook's method from the masses and factors that the exercise gives.
Working fromGiven(const Working& steps)
{
    Working working = Working::apart();
    for (const WorkingStep& step : steps.steps())
        working.add({withSymbols(step, [](Symbol& symbol) {
            if (symbol.name == "m") {
                symbol = givenInGrams(std::move(symbol));
            } else if (symbol.name == "f") {
                const int decimals = factorDecimals(symbol.value);
                symbol = given(std::move(symbol), decimals);
            }
        })});
    return working;
}

GivenTable soluteTable(const WorkingStep& equivalents)
{
    GivenTable table{{phrase("Dissolved"), phrase("g in the mix"), phrase("g of sucrose that 1 g counts as")}, {}};
    for (const SeriesTerm& term : *termsOf(equivalents.formula)) {
        const std::vector<Symbol> massAndFactor = symbolsOf(term.formula);
        const double factor = massAndFactor.back().value;
        table.rows.push_back(
            {phrase("{0}", term.label), cell(gramsFigure(massAndFactor.front().value)), cell(factor, factorDecimals(factor))});
    }
    return table;
}

GivenTable depressionTable(double strength_per100gWater)
{
    GivenTable table{{phrase("g of sucrose in 100 g water"), phrase("K below 0 °C")}, {}};
    for (const DepressionRow& row : depressionRowsAround(strength_per100gWater))
        table.rows.push_back({cell(row.sucrose_per100gWater, 0), cell(row.depression.value, 2)});
    return table;
}

/// The freezing point that a slip in the equivalents per 100 g leads to.
double wrongPoint_c(double strength_per100g, double salts_k)
{
    const auto found = textbookFreezing({{strength_per100g}, {}, {100.0}});
    return found ? found->freezingPoint.value - salts_k : std::nan("");
}

std::vector<Slip> slipsOfFreezing(const TextbookMix& mix, const TextbookFreezing& found, Grams mass, double counted_g)
{
    const double salts_k = found.depressionOfSalts.value;
    std::vector<Slip> slips{{wrongPoint_c(100.0 * (mix.sucroseEquivalents / mass), salts_k),
                                phrase("You took the equivalents in 100 g of the mix. Take them in 100 g of its water.")},
        {wrongPoint_c(100.0 * counted_g / mix.water.value, salts_k),
            phrase("You counted each gram as one gram of sucrose. Smaller molecules count more: see the table.")}};
    if (salts_k > 0.0)
        slips.push_back({-found.depressionOfSugars.value, phrase("The salts of milk lower it further: add their term.")});
    return slips;
}

}  // namespace

AskedExercise freezingPoint(const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    if (analysis.texture.process == Process::Unfrozen)
        return std::nullopt;
    const Mix mix = withoutTraces(analysis.texture.mix);
    Working working = Working::apart();
    const TextbookMix inTerms = textbookMix(mix, &working);
    if (inTerms.water.value <= 0.0 || inTerms.sucroseEquivalents.value <= 0.0)
        return std::nullopt;
    const WorkingStep equivalents = working.steps().front();
    const auto found = textbookFreezing(inTerms, 0.0, &working);
    if (!found)
        return std::nullopt;
    Exercise made = exercise(ExerciseKind::FreezingPoint,
        phrase("By sucrose equivalents: where will the mix begin to freeze? It holds {0} g of water.",
            gramsFigure(inTerms.water.value)),
        0.2, 1, fromGiven(working));
    made.hints = {phrase("Only what is dissolved in the water counts, and how much water there is."),
        phrase("Look up the sucrose equivalents per 100 g water in the table and interpolate between rows.")};
    const double msnf_g = inTerms.milkAndWheySolidsNotFat.value;
    made.given = {phrase("Tables: H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6.")};
    if (msnf_g > 0.0) {
        made.hints.push_back(phrase("Then add the term for milk."));
        made.given.push_back(phrase("Milk solids-not-fat: {0} g. They lower it by {1} times their mass over that of the water.",
            gramsFigure(msnf_g), temperatureDifferenceFigure({saltsTerm_k}, 2)));
    }
    if (found->isBeyondTable)
        made.hints.push_back(phrase("Beyond the last row, extrapolate with the last interval."));
    made.tables = {soluteTable(equivalents), depressionTable(found->sucroseEquivalents_per100gWater)};
    double counted_g = 0.0;
    for (const SeriesTerm& term : *termsOf(equivalents.formula))
        counted_g += symbolsOf(term.formula).front().value;
    made.answer.slips = slipsOfFreezing(inTerms, *found, mix.mass(), counted_g);
    if (const auto& point = analysis.freezing.freezingPoint)
        made.answer.byOtherMethod = point->temperature.value;
    return made;
}

namespace {

double valueIn(const WorkingStep& step, std::string_view name)
{
    const std::vector<Symbol> symbols = symbolsOf(step.formula);
    const auto found = std::ranges::find(symbols, name, [](const Symbol& each) { return textOf(each); });
    return found == symbols.end() ? 0.0 : found->value;
}

/// Whether a step searches for how many times stronger the liquid has become, which the exercise gives.
bool isGiven(const WorkingStep& step) { return step.result.name == concentrationName; }

constexpr int strengthDecimals = 3, temperatureDecimals = 1;

/// The step from what the exercise gives.
WorkingStep fromGiven(const WorkingStep& step)
{
    return withSymbols(step, [](Symbol& symbol) {
        const std::string name = textOf(symbol);
        if (name == "m_mix" || name == "m_free")
            symbol = givenInGrams(std::move(symbol));
        else if (symbol.name == concentrationName)
            symbol = given(std::move(symbol), strengthDecimals);
        else if (symbol.name == "t")
            symbol = given(std::move(symbol), temperatureDecimals);
    });
}

/// How strong the liquid is at the points of the curve between which the ice at serving lies.
std::vector<Sentence> givenForIce(const ExplainedAnalysis& explained)
{
    std::vector<Sentence> given{phrase("The mix weighs {0} g.", gramsFigure(explained.analysis.texture.mix.mass().value))};
    for (const std::string& point : pointsOfIce(explained.workings)) {
        for (const WorkingStep& step : allSteps(explained.workings, point)) {
            if (!isGiven(step))
                continue;
            if (!std::isfinite(step.result.value))
                return {};  // pure water: there is no liquid left
            if (given.size() == 1)
                given.push_back(phrase("Of its water {0} g can freeze.", gramsFigure(valueIn(step, "m_free"))));
            given.push_back(phrase("At {0} °C the liquid that is left is {1} times as strong as that of the mix.",
                Figure{valueIn(step, "t"), temperatureDecimals}, Figure{step.result.value, strengthDecimals}));
        }
    }
    return given;
}

}  // namespace

AskedExercise iceWhenServed(const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const double ice_percent = percent(analysis.texture.iceAtServing);
    if (ice_percent <= 0.0)
        return std::nullopt;
    Working working;
    for (const WorkingStep& step : stepsToIce(explained.workings)) {
        if (!isGiven(step))
            working.add({fromGiven(step)});
    }
    if (working.steps().empty())
        return std::nullopt;
    Exercise made = exercise(ExerciseKind::IceWhenServed,
        phrase("How much of the mix, in percent of its mass, is ice at {0} °C?",
            Figure{analysis.conditions.serveAt.value, temperatureDecimals}),
        2.0, 1, working);
    made.given = givenForIce(explained);
    if (made.given.size() < 2)
        return std::nullopt;
    made.hints = {phrase("Ice takes water away, and the liquid that is left becomes stronger."),
        phrase("A liquid that has become twice as strong has half of its water left: the other half is ice."),
        phrase("Divide the ice by the mass of the whole mix, not by its water.")};
    if (pointsOfIce(explained.workings).size() > 1)
        made.hints.push_back(
            phrase("Between two temperatures go along a straight line in one over the temperature, in degrees below zero."));
    const double water_g = analysis.texture.mix[Constituent::Water].value,
                 ice_g = ice_percent / 100.0 * analysis.texture.mix.mass().value;
    made.answer.slips = {{100.0 * ice_g / water_g, phrase("That is ice of the water. Divide by the mass of the whole mix.")},
        {100.0 * (1.0 - ice_g / water_g), phrase("That is the water that stays liquid.")},
        {100.0 - ice_percent, phrase("That is what stays liquid. The rest is ice.")}};
    return made;
}

}  // namespace firn
