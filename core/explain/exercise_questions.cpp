#include "explain/exercise_questions.h"

#include "explain/exercise_parts.h"
#include "mix/symbols.h"
#include "solution/ethanol.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// The mix and its sugars as an exercise gives them.
struct Given {
    Symbol mass, sugars;
};

Given givenOf(const Mix& mix)
{
    const Working nowhere = Working::apart();
    return {
        givenInGrams(massOfMix(mix, nowhere)), givenInGrams({"m", "sugars", sugars(mix).value, "g", phrase("sugars in the mix")})};
}

}  // namespace

AskedExercise sugarsByMass(const ExplainedAnalysis& explained)
{
    const Mix& mix = explained.analysis.mix;
    if (sugars(mix).value <= 0.0)
        return std::nullopt;
    const auto [mass, allSugars] = givenOf(mix);
    const double share_percent = percent(explained.analysis.shares.sugars);
    Working working;
    working.found({"w", "sugars", share_percent, "%", phrase("sugars, of the mass of the mix")},
        oneHundredPercent() * (allSugars / Formula(mass)), Source::Definition);
    Exercise made = exercise(ExerciseKind::SugarsByMass,
        phrase("The mix weighs {0} g and holds {1} g of sugars. How much is that in percent by mass?", gramsFigure(mass.value),
            gramsFigure(allSugars.value)),
        0.5, 1, working);
    made.hints = {phrase("By mass means: of the mass of the whole mix, not of its water."),
        phrase("Divide the sugars by the total mass and multiply by 100.")};
    const double water_g = mix[Constituent::Water].value;
    made.answer.slips = {
        {100.0 * allSugars.value / water_g, phrase("That is sugars per 100 g of water. Divide by the mass of the whole mix.")},
        {100.0 * allSugars.value / (allSugars.value + water_g),
            phrase("That is of sugars and water alone. Divide by the mass of the whole mix.")}};
    return made;
}

/// x grams of sucrose in m grams of a mix with s grams of sugars make w: (s + x) / (m + x) = w.
AskedExercise sucroseToReach(const ExplainedAnalysis& explained, int more)
{
    const Analysis& analysis = explained.analysis;
    const double now_percent = percent(analysis.shares.sugars);
    const double target_percent = std::floor(now_percent) + more;
    constexpr double mostOfAnyDessert_percent = 40.0;  // judgement: sorbets end at 36
    if (analysis.water.value <= 0.0 || target_percent > mostOfAnyDessert_percent)
        return std::nullopt;
    const auto [mass, allSugars] = givenOf(analysis.mix);
    const Symbol target{"w", "target", target_percent, "%", phrase("sugars to reach")};
    const double target_share = target_percent / 100.0;
    const double sucrose_g = (mass.value * target_share - allSugars.value) / (1.0 - target_share);
    const Symbol sucrose{"m", "added", sucrose_g, "g", phrase("sucrose to add")};
    const Formula share = target / oneHundredPercent();
    Working working;
    working.found(sucrose, (mass * share - allSugars) / (1.0 - share), Source::Definition).origin =
        phrase("the sucrose adds to the sugars and to the mix: (m_sugars + m_added) / (m_mix + m_added) is the share to reach");
    Exercise made = exercise(ExerciseKind::SucroseToReach,
        phrase("The mix weighs {0} g and holds {1} g of sugars. How much sucrose takes it to {2} % by mass?",
            gramsFigure(mass.value), gramsFigure(allSugars.value), Figure{target_percent, 0}),
        std::max(1.0, 0.03 * sucrose_g), 1, working);
    made.hints = {phrase("Sucrose that you add makes the mix heavier too."),
        phrase("Everything that is not sugar stays: it is {0} g, and has to become {1} % of the new mix.",
            gramsFigure(mass.value - allSugars.value), Figure{100.0 - target_percent, 0})};
    made.answer.slips = {
        {mass.value * target_share - allSugars.value, phrase("The mix grows by the sucrose, too: you divided by the old mass.")},
        {allSugars.value + sucrose_g, phrase("Those are all sugars together. Subtract what is there already.")}};
    return made;
}

namespace {

constexpr int densityDecimals = 3;

}  // namespace

AskedExercise alcoholByVolume(const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const double ethanol_g = analysis.mix[Constituent::Ethanol].value;
    auto derivation = explain("percent.alcohol_by_volume", explained.workings);
    if (ethanol_g <= 0.0 || !derivation)
        return std::nullopt;
    Working working;
    working.add({withSymbols(derivation->steps.back(), [](Symbol& symbol) {
        if (symbol.name == "ρ")
            symbol = given(std::move(symbol), densityDecimals);
        else if (symbol.name != "φ")
            symbol = givenInGrams(std::move(symbol));
    })});
    const double volume_mL = analysis.volume_20c.value;
    Exercise made = exercise(ExerciseKind::AlcoholByVolume,
        phrase("The mix takes {0} mL and holds {1} g of alcohol. How strong is it by volume?", gramsFigure(volume_mL),
            gramsFigure(ethanol_g)),
        0.3, 1, working);
    made.given = {phrase("Pure alcohol: {0} g/mL at 20 °C (OIML R 22).", Figure{ethanolDensity_20c.value, densityDecimals})};
    made.hints = {phrase("By volume: millilitres of pure alcohol in 100 mL of the mix."),
        phrase("Divide the mass of the alcohol by what a millilitre of it weighs.")};
    made.answer.slips = {
        {100.0 * ethanol_g / volume_mL, phrase("Those are grams of alcohol in 100 mL. A gram of it takes more than a millilitre.")},
        {100.0 * ethanol_g / analysis.mass.value, phrase("That is by mass. Turn the grams of alcohol into millilitres first.")},
        {100.0 * ethanol_g * ethanolDensity_20c.value / volume_mL, phrase("Divide by the density of alcohol, do not multiply.")}};
    return made;
}

}  // namespace firn
