#include "explain/exercises.h"

#include "explain/dice.h"
#include "explain/reading_exercise.h"
#include "mix/symbols.h"
#include "solution/sucrose.h"

#include <cmath>

namespace firn {

namespace {

using Exercises = std::vector<Exercise>;

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
};

void ask(Exercises& exercises, const FigureQuestion& asked, const ExplainedAnalysis& explained, Sentence question,
    std::vector<Sentence> hints)
{
    auto derivation = explain(asked.figure, explained.workings);
    if (!derivation || !std::isfinite(derivation->result().value))
        return;
    const Symbol result = derivation->result();
    add(exercises, asked.kind, std::move(question), {result.value, asked.tolerance, result.unit, asked.decimals}, std::move(hints),
        std::move(derivation->steps));
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
        phrase("The sugar adds to the sugars and to the mix: (m w + 100 x) / (m + x) = the share that is wanted.");
    add(exercises, ExerciseKind::SucroseToReach,
        phrase("{0} g of the mix hold {1} % sugars by mass. How much sucrose takes it to {2} %?", grams(mass.value),
            Figure{now_percent, 1}, Figure{wanted_percent, 0}),
        {sucrose_g, std::max(1.0, 0.03 * sucrose_g), sucrose.unit, 0},
        {phrase("Sucrose that you add makes the mix heavier too."),
            phrase("Everything that is no sugar stays: it is {0} g, and has to become {1} % of the new mix.",
                grams(mass.value * (1.0 - now_percent / 100.0)), Figure{100.0 - wanted_percent, 0})},
        working.steps());
}

void askFreezingPoint(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const bool isForClass =
        analysis.textbook && !analysis.textbook->isBeyondTable && analysis.mix[Constituent::Ethanol].value <= 0.0;
    ask(exercises, {ExerciseKind::FreezingPoint, isForClass ? "freezing_point_textbook_c" : "freezing_point_c", 0.2, 1}, explained,
        isForClass ? phrase(
            "By sucrose equivalents: where will the mix begin to freeze? It holds {0} g of water.", grams(analysis.water.value))
                   : phrase("By water activity: where will the mix begin to freeze? It holds {0} g of water.",
                       grams(analysis.water.value)),
        {phrase("Only what is dissolved in the water counts, and how much water there is."),
            isForClass ? phrase("A gram of a single sugar counts as 1.9 g of sucrose. Take the sum per 100 g water into the table, "
                                "and add the term "
                                "for milk.")
                       : phrase("Find the activity of the water, and the temperature at which ice has the same.")});
}

void askRefractometer(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    ask(exercises, {ExerciseKind::Refractometer, "readings.refractometer_brix", 1.0, 1}, explained,
        phrase("What does a refractometer show in the mix at {0} °C?", Figure{analysis.conditions.readAt.value, 0}),
        {phrase("It sees what is dissolved in the water, fat is not in the light's way."),
            phrase("In sugar and water alone it shows 100 times sugars over sugars and water; acid, minerals, protein and alcohol "
                   "add to that.")});
}

void askBaume(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const auto& readings = explained.analysis.readings;
    if (!readings)
        return;
    ask(exercises, {ExerciseKind::Baume, "readings.baume", 0.2, 1}, explained,
        phrase("A millilitre of the mix weighs {0} g, one of water at 20 °C {1} g. How many degrees Baumé is that?",
            Figure{readings->density.value, 4}, Figure{waterDensity({20.0}).value, 4}),
        {phrase("The scale for liquids heavier than water begins at 0 in water."),
            phrase("It is 145 times one less the density of water over that of the mix.")});
}

void askIceWhenServed(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Texture& texture = explained.analysis.texture;
    if (texture.iceAtServing.value <= 0.0)
        return;
    ask(exercises, {ExerciseKind::IceWhenServed, "texture.ice_percent_at_serving", 2.0, 0}, explained,
        phrase("The mix begins to freeze at {0} °C. How much of it, in percent of its mass, is ice at {1} °C?",
            Figure{explained.analysis.freezing.freezingPoint->temperature.value, 1},
            Figure{explained.analysis.conditions.serveAt.value, 1}),
        {phrase("Ice takes water away, and the liquid that is left freezes lower and lower."),
            phrase("A first guess: the share of the water that is ice is one less the freezing point over the temperature.")});
}

void askAlcoholByVolume(Exercises& exercises, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const double ethanol_g = analysis.mix[Constituent::Ethanol].value;
    if (ethanol_g <= 0.0)
        return;
    ask(exercises, {ExerciseKind::AlcoholByVolume, "percent.alcohol_by_volume", 0.3, 1}, explained,
        phrase("The mix takes {0} mL and holds {1} g of alcohol. How strong is it by volume?", grams(analysis.volume_20c.value),
            grams(ethanol_g)),
        {phrase("By volume: millilitres of pure alcohol in 100 mL of the mix."),
            phrase("A millilitre of alcohol weighs 0.789 g.")});
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
