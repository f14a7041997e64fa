#include "explain/exercises.h"

#include "derivation/formula_text.h"
#include "explain/dice.h"
#include "explain/lesson_steps.h"
#include "explain/reading_exercise.h"
#include "mix/symbols.h"
#include "solution/refraction.h"
#include "solution/sucrose.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

using Exercises = std::vector<Exercise>;

const char* const textbookPoint = "freezing_point_textbook_c";

/// In whole grams where they are in grams, else to three digits: nobody weighs "1.0735 cups".
double rounded(const Amount& amount)
{
    if (amount.value <= 0.0)
        return amount.value;
    constexpr int digits = 3;
    const bool isWhole = amount.unit == Unit::Gram && amount.value >= 10.0;
    const double step = isWhole ? 1.0 : std::pow(10.0, std::floor(std::log10(amount.value)) + 1 - digits);
    return std::round(amount.value / step) * step;
}

Recipe varied(Recipe recipe, std::uint64_t seed, Dice& dice)
{
    if (seed == 0)
        return recipe;
    constexpr int most_percent = 15;
    for (Component& component : recipe.components) {
        for (Row& row : component.rows) {
            row.amount.value *= 1.0 + dice.between(-most_percent, most_percent) / 100.0;
            row.amount.value = rounded(row.amount);
        }
    }
    return recipe;
}

Figure grams(double value) { return {value, 1}; }

void add(Exercises& exercises, ExerciseKind kind, Sentence question, ExpectedAnswer answer, std::vector<Sentence> hints,
    std::vector<WorkingStep> solution)
{
    Exercise& exercise = exercises.emplace_back();
    exercise.kind = kind;
    exercise.question = std::move(question);
    exercise.answer = std::move(answer);
    exercise.hints = std::move(hints);
    exercise.solution = std::move(solution);
}

/// A question whose solution is the derivation of a figure.
struct FigureQuestion {
    ExerciseKind kind;
    const char* figure;
    double tolerance;  // judgement: how well it can be reckoned by hand
    int decimals;
    std::size_t lastSteps = 0;  // how many of the derivation lead there from what is given; 0 for all
};

/// The exercise, to add to; none where the recipe has no such figure.
Exercise* ask(Exercises& exercises, const FigureQuestion& asked, const ExplainedAnalysis& explained, Sentence question,
    std::vector<Sentence> hints)
{
    auto derivation = explain(asked.figure, explained.workings);
    if (!derivation || !std::isfinite(derivation->result().value))
        return nullptr;
    const Symbol result = derivation->result();
    auto& steps = derivation->steps;
    if (asked.lastSteps > 0)
        steps.erase(steps.begin(), steps.end() - std::ptrdiff_t(std::min(asked.lastSteps, steps.size())));
    add(exercises, asked.kind, std::move(question), {result.value, asked.tolerance, result.unit, asked.decimals}, std::move(hints),
        std::move(steps));
    return &exercises.back();
}

void askSugarsByMass(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    if (sugars(analysis.mix).value <= 0.0)
        return;
    ask(exercises, {ExerciseKind::SugarsByMass, "percent.sugars", 0.5, 1}, explained,
        phrase("The mix weighs {0} g and holds {1} g of sugars. How much is that in percent by mass?", grams(analysis.mass.value),
            grams(sugars(analysis.mix).value)),
        {phrase("By mass means: of the mass of the whole mix, not of its water."),
            phrase("Divide the sugars by the mix, and take it times 100.")});
}

/// x grams of sucrose in m grams of a mix with w % make t %: (m w + 100 x) / (m + x) = t.
void askSucroseToReach(Exercises& exercises, const ExplainedAnalysis& explained, Dice& dice)
{
    const Analysis& analysis = explained.analysis;
    const double now_percent = percent(analysis.shares.sugars);
    const double wanted_percent = std::floor(now_percent) + dice.between(2, 6);
    constexpr double mostOfAnyDessert_percent = 40.0;  // judgement: sorbets end at 36
    if (analysis.water.value <= 0.0 || wanted_percent > mostOfAnyDessert_percent)
        return;
    const Working home;
    const Symbol mass = massOfMix(analysis.mix, home);
    const Symbol now{"w", "sugars", now_percent, "%", phrase("sugars in the mix"), "percent.sugars"};
    const Symbol wanted{"w", "wanted", wanted_percent, "%", phrase("sugars that are wanted")};
    const double sucrose_g = mass.value * (wanted_percent - now_percent) / (100.0 - wanted_percent);
    const Symbol sucrose{"m", "added", sucrose_g, "g", phrase("sucrose to add")};
    Working working;
    working.found(sucrose, mass * (wanted - Formula(now)) / (100.0 - Formula(wanted)), Source::Definition).origin =
        phrase("the sugar adds to the sugars and to the mix: (m w + 100 x) / (m + x) = the share that is wanted");
    add(exercises, ExerciseKind::SucroseToReach,
        phrase("{0} g of the mix hold {1} % sugars by mass. How much sucrose takes it to {2} %?", grams(mass.value),
            Figure{now_percent, 1}, Figure{wanted_percent, 0}),
        {sucrose_g, std::max(1.0, 0.03 * sucrose_g), sucrose.unit, 0},
        {phrase("Sucrose that you add makes the mix heavier too."),
            phrase("Everything that is no sugar stays: it is {0} g, and has to become {1} % of the new mix.",
                grams(mass.value * (1.0 - now_percent / 100.0)), Figure{100.0 - wanted_percent, 0})},
        working.steps());
}

/// What every solute weighs and counts as, and the rows of the table that are needed.
std::vector<Sentence> givenForTextbook(const ExplainedAnalysis& explained)
{
    std::vector<Sentence> given{phrase("Tables: H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6.")};
    const WorkingStep& equivalents = explained.workings.find(textbookPoint)->steps().front();
    for (const SeriesTerm& term : *termsOf(equivalents.formula)) {
        const std::vector<Symbol> massAndFactor = symbolsOf(term.formula);
        given.push_back(phrase("{0}: {1} g; a gram counts as {2} g of sucrose.", term.label, grams(massAndFactor.front().value),
            Figure{massAndFactor.back().value, 2}));
    }
    if (const double msnf_g = explained.analysis.mix.milkSolidsNotFat.value; msnf_g > 0.0)
        given.push_back(
            phrase("Milk solids-not-fat: {0} g; they take off 2.37 K times their mass over that of the water.", grams(msnf_g)));
    for (const DepressionRow& row : depressionRowsAround(explained.analysis.textbook->sucroseEquivalents_per100gWater))
        given.push_back(phrase("{0} g of sucrose in 100 g water: {1} K below 0 °C.", Figure{row.sucrose_per100gWater, 0},
            Figure{row.depression.value, 2}));
    return given;
}

void askFreezingPoint(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    if (!analysis.textbook)
        return;
    std::vector<Sentence> hints{phrase("Only what is dissolved in the water counts, and how much water there is."),
        phrase(
            "Take the sum of sucrose equivalents per 100 g water into the table, and go along a straight line between two rows.")};
    if (analysis.mix.milkSolidsNotFat.value > 0.0)
        hints.push_back(phrase("Then add the term for milk."));
    if (analysis.textbook->isBeyondTable)
        hints.push_back(phrase("Beyond the last row the last step of the table goes on."));
    Exercise* asked = ask(exercises, {ExerciseKind::FreezingPoint, textbookPoint, 0.2, 1}, explained,
        phrase("By sucrose equivalents: where will the mix begin to freeze? It holds {0} g of water.", grams(analysis.water.value)),
        std::move(hints));
    if (!asked)
        return;
    asked->given = givenForTextbook(explained);
    if (const auto& point = analysis.freezing.freezingPoint)
        asked->answer.byOtherMethod = point->temperature.value;
}

/// Rows of the scale's table between which the index of the mix lies.
std::vector<Sentence> givenForScale(const Readings& readings)
{
    std::vector<Sentence> given{phrase("The refractive index of the mix at {0} °C is {1}.", Figure{readings.temperature.value, 0},
        Figure{readings.refractiveIndex, 4})};
    const double below_brix = std::floor(readings.refractometer_brix.value_or(0.0));
    for (const double brix : {below_brix, below_brix + 1.0})
        given.push_back(phrase("On the scale {0} °Bx stand for an index of {1}, the same at any temperature.", Figure{brix, 0},
            Figure{refractiveIndexOfBrix(brix), 4}));
    return given;
}

void askRefractometer(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    Exercise* asked = ask(exercises, {ExerciseKind::Refractometer, "readings.refractometer_brix", 1.0, 1, 2}, explained,
        phrase("What does a refractometer show in the mix at {0} °C?", Figure{analysis.conditions.readAt.value, 0}),
        {phrase("It sees what is dissolved in the water, fat is not in the light's way."),
            phrase("In sugar and water alone it shows 100 times sugars over sugars and water; acid, minerals, protein and alcohol "
                   "add to that."),
            phrase("Where the mix holds more than that, take its refractive index into the table of the scale (OIV-MA-AS2-02, "
                   "Table II).")});
    if (asked)
        asked->given = givenForScale(*analysis.readings);
}

void askBaume(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const auto& readings = explained.analysis.readings;
    if (!readings)
        return;
    ask(exercises, {ExerciseKind::Baume, "readings.baume", 0.2, 1, 1}, explained,
        phrase("A millilitre of the mix weighs {0} g, one of water at 20 °C {1} g. How many degrees Baumé is that?",
            Figure{readings->density.value, 4}, Figure{waterDensity({20.0}).value, 4}),
        {phrase("The scale for liquids heavier than water begins at 0 in water."),
            phrase("It is 145 times one less the density of water over that of the mix (NBS Circular 440).")});
}

/// How strong the liquid is at the points of the curve between which the ice at serving lies.
std::vector<Sentence> givenForIce(const ExplainedAnalysis& explained, const std::vector<std::string>& points)
{
    std::vector<Sentence> given{phrase("The mix weighs {0} g.", grams(explained.analysis.mass.value))};
    for (const std::string& point : points) {
        for (const WorkingStep& step : allSteps(explained.workings, point)) {
            const std::vector<Symbol> symbols = symbolsOf(step.formula);
            const auto valueFor = [&](std::string_view name) {
                const auto found = std::ranges::find(symbols, name, [](const Symbol& each) { return textOf(each); });
                return found == symbols.end() ? 0.0 : found->value;
            };
            if (textOf(step.result) != "c")
                continue;
            if (given.size() == 1)
                given.push_back(phrase("{0} g of its water are free to freeze.", grams(valueFor("m_free"))));
            given.push_back(phrase("At {0} °C the liquid that is left is {1} times as strong as that of the mix.",
                Figure{valueFor("t"), 1}, Figure{step.result.value, 3}));
        }
    }
    return given;
}

void askIceWhenServed(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Texture& texture = explained.analysis.texture;
    if (texture.iceAtServing.value <= 0.0)
        return;
    Exercise* asked = ask(exercises, {ExerciseKind::IceWhenServed, "texture.ice_percent_at_serving", 2.0, 0}, explained,
        phrase("The mix begins to freeze at {0} °C. How much of it, in percent of its mass, is ice at {1} °C?",
            Figure{explained.analysis.freezing.freezingPoint->temperature.value, 1},
            Figure{explained.analysis.conditions.serveAt.value, 1}),
        {phrase("Ice takes water away, and the liquid that is left needs more and more cold to freeze."),
            phrase("A first guess: the share of the water that is ice is one less the freezing point over the temperature."),
            phrase("A liquid that has become c times as strong has one c-th of its water left: the rest is ice.")});
    if (!asked)
        return;
    asked->given = givenForIce(explained, pointsOfIce(explained.workings));
    asked->solution = stepsToIce(explained.workings);
}

void askAlcoholByVolume(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const double ethanol_g = analysis.mix[Constituent::Ethanol].value;
    if (ethanol_g <= 0.0)
        return;
    Exercise* asked = ask(exercises, {ExerciseKind::AlcoholByVolume, "percent.alcohol_by_volume", 0.3, 1}, explained,
        phrase("The mix takes {0} mL and holds {1} g of alcohol. How strong is it by volume?", grams(analysis.volume_20c.value),
            grams(ethanol_g)),
        {phrase("By volume: millilitres of pure alcohol in 100 mL of the mix."),
            phrase("Divide the mass of the alcohol by what a millilitre of it weighs.")});
    if (asked)
        asked->given = {phrase("Pure alcohol: 0.789 g/mL at 20 °C (OIML R 22).")};
}

}  // namespace

std::string_view nameOf(ExerciseKind kind)
{
    switch (kind) {
    case ExerciseKind::SugarsByMass:
        return "Sugars by mass";
    case ExerciseKind::SucroseToReach:
        return "Sucrose to add";
    case ExerciseKind::FreezingPoint:
        return "Freezing point";
    case ExerciseKind::Refractometer:
        return "What a refractometer shows";
    case ExerciseKind::Baume:
        return "Degrees Baumé";
    case ExerciseKind::IceWhenServed:
        return "Ice when served";
    case ExerciseKind::AlcoholByVolume:
        return "Alcohol by volume";
    case ExerciseKind::SugarsByRefractometer:
        return "From a reading to sugars";
    }
    return {};
}

ExerciseSheet exercisesFor(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions, std::uint64_t seed)
{
    Dice dice(seed);
    ExerciseSheet sheet{seed, varied(recipe, seed, dice), {}};
    const ExplainedAnalysis explained = analyseWithWorkings(sheet.recipe, catalogue, conditions);
    sheet.mix = explained.analysis.mix;
    sheet.reason = reasonNotToTeach(explained.analysis);
    if (sheet.reason)
        return sheet;
    askSugarsByMass(sheet.exercises, explained);
    askSucroseToReach(sheet.exercises, explained, dice);
    askFreezingPoint(sheet.exercises, explained);
    askRefractometer(sheet.exercises, explained);
    askBaume(sheet.exercises, explained);
    askIceWhenServed(sheet.exercises, explained);
    askAlcoholByVolume(sheet.exercises, explained);
    if (auto reading = sugarsByRefractometer(sheet.mix, seed, dice))
        sheet.exercises.push_back(std::move(*reading));
    return sheet;
}

}  // namespace firn
