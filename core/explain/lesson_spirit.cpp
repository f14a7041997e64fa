#include "derivation/formula_text.h"
#include "explain/lesson_pages.h"
#include "explain/lesson_steps.h"
#include "freezing/curve_working.h"
#include "mix/symbols.h"

#include <algorithm>

namespace firn {

namespace {

const char* const iceAtServing = "texture.ice_percent_at_serving";

/// The same mix without its ethanol: the water of the spirit stays.
struct WithoutAlcohol {
    Workings workings;
    FreezingCurve curve;
    Texture texture;
};

WithoutAlcohol withoutAlcohol(const Analysis& analysis)
{
    WithoutAlcohol other;
    Mix mix = analysis.texture.mix;
    mix.amounts[Constituent::Ethanol] = {};
    other.curve = freezingCurve(mix, &other.workings);
    other.texture = texture(mix, other.curve,
        {analysis.texture.process, analysis.overrun_percent, analysis.conditions.serveAt, analysis.conditions.freezerAt},
        &other.workings);
    return other;
}

/// The steps of the other mix, with what differs under names of its own.
std::vector<WorkingStep> stepsWithout(const Workings& workings)
{
    std::vector<WorkingStep> steps = chosenSteps(workings, "freezing_point_c", {"A"});
    for (WorkingStep& step : steps) {
        step = retold(step, [](Symbol& symbol) {
            if (textOf(symbol) == "A") {
                symbol.subscript = "without";
                symbol.meaning = phrase("effect of the solutes on water activity without the alcohol (part of ln a_w)");
            } else if (textOf(symbol) == "T_f") {
                symbol.subscript = "without";
                symbol.meaning = phrase("freezing point without the alcohol");
                symbol.figure.clear();  // it is no figure of the recipe's
            }
        });
    }
    return steps;
}

/// How much sucrose has as many molecules as a gram of alcohol, where the textbook method has counted it.
std::optional<double> sucroseForAlcohol(const Workings& workings)
{
    const Working* working = workings.find("freezing_point_textbook_c");
    const auto* terms = working ? termsOf(working->steps().front().formula) : nullptr;
    if (!terms)
        return std::nullopt;
    for (const SeriesTerm& term : *terms) {
        for (const Symbol& symbol : symbolsOf(term.formula)) {
            if (textOf(symbol) == "f_ethanol")
                return symbol.value;
        }
    }
    return std::nullopt;
}

struct IceOfBoth {
    Symbol with, without;
};

/// From the curve's own steps where it has a point at that temperature.
bool addCurvesToIce(LessonPage& page, const Workings& workings, const Workings& other, const IceOfBoth& ice)
{
    std::vector<WorkingStep> steps = stepsToMassOfIce(workings), stepsOfOther = stepsToMassOfIce(other);
    if (steps.empty() || stepsOfOther.empty())
        return false;
    for (WorkingStep& step : steps)
        page.steps.push_back(retold(std::move(step), [&](Symbol& symbol) {
            if (textOf(symbol) == "m_ice")
                symbol.meaning = ice.with.meaning;
        }));
    for (WorkingStep& step : stepsOfOther)
        page.steps.push_back(retold(std::move(step), [&](Symbol& symbol) {
            if (textOf(symbol) == "m_ice") {
                symbol.subscript = ice.without.subscript;
                symbol.meaning = ice.without.meaning;
            } else if (textOf(symbol) == concentrationName) {
                symbol.subscript = "without";
                symbol.meaning = phrase("how many times stronger the liquid has become without the alcohol");
            }
        }));
    return true;
}

/// From the shares of ice, which were interpolated between points of the curves.
void addIceFromShares(LessonPage& page, const Analysis& analysis, const Texture& other, const IceOfBoth& ice)
{
    const Figure serving{analysis.conditions.serveAt.value, 1};
    const Symbol mass = massOfMix(analysis.texture.mix, Working()),
                 ethanol = massOf(Constituent::Ethanol, analysis.texture.mix, Working());
    const Symbol share{
        "x", "ice", percent(analysis.texture.iceAtServing), "%", phrase("ice in the mix at {0} °C", serving), iceAtServing};
    const Symbol shareWithout{
        "x", "without", percent(other.iceAtServing), "%", phrase("ice in the mix without the alcohol at {0} °C", serving)};
    Working working;
    working.found(ice.with, mass * (share / oneHundredPercent()), Source::FreezingCurve);
    working.found(ice.without, (mass - Formula(ethanol)) * (shareWithout / oneHundredPercent()), Source::FreezingCurve);
    append(page.steps, working.steps());
}

Conclusion effectOf(double liquid_g, const Texture& texture, Celsius serveAt)
{
    constexpr double tooLittleToMatter_g = 1.0;  // judgement: what a kitchen scale can show
    if (liquid_g < tooLittleToMatter_g)
        return verdict(phrase("Too little alcohol to matter."));
    const Figure liquid{liquid_g, 0}, serving{serveAt.value, 0};
    switch (texture.firmness) {
    case Firmness::Liquid:
        return phrase("Without the alcohol, {0} g more of the water would be ice at {1} °C. It stays liquid.", liquid, serving);
    case Firmness::Slush:
    case Firmness::Hard:
    case Firmness::Block:
        return phrase("Without the alcohol, {0} g more of the water would be ice at {1} °C. It stays liquid between the crystals.",
            liquid, serving);
    case Firmness::Wet:
    case Firmness::Loose:
    case Firmness::Dry:
        return phrase("Without the alcohol, {0} g more of the water would be ice at {1} °C. It stays liquid between the crystals, "
                      "and wets them.",
            liquid, serving);
    case Firmness::Soft:
    case Firmness::Scoopable:
    case Firmness::Firm:
        break;
    }
    return phrase("Without the alcohol, {0} g more of the water would be ice at {1} °C. It stays liquid between the crystals, "
                  "and the spoon goes in.",
        liquid, serving);
}

/// The ice of both in grams, since shares of two masses cannot be compared.
IceOfBoth iceOfBoth(const Analysis& analysis, const WithoutAlcohol& other)
{
    const double ice_g = analysis.texture.mix.mass().value * analysis.texture.iceAtServing.value;
    const double iceWithout_g =
        (analysis.texture.mix.mass() - analysis.texture.mix[Constituent::Ethanol]).value * other.texture.iceAtServing.value;
    return {{"m", "ice", ice_g, "g", phrase("ice when it is served")},
        {"m", "without", iceWithout_g, "g", phrase("ice when it is served without the alcohol")}};
}

// What the steps lead to.
constexpr const char* colder = "ΔT";
constexpr const char* keptLiquid = "Δm";

/// All the steps to both freezing points and to both masses of ice, and what the alcohol makes of them.
void addSteps(LessonPage& page, const ExplainedAnalysis& explained, const WithoutAlcohol& other)
{
    const Analysis& analysis = explained.analysis;
    append(page.steps,
        chosenSteps(explained.workings, "freezing_point_c", {"m_held", "m_free", "b_ethanol", "X_ethanol", "L_ethanol", "A"}));
    append(page.steps, stepsWithout(other.workings));
    const Celsius with_c = analysis.freezing.freezingPoint->temperature, without_c = other.curve.freezingPoint->temperature;
    const Symbol with{"T", "f", with_c.value, "°C", phrase("freezing point with the alcohol"), "freezing_point_c"};
    const Symbol without{"T", "without", without_c.value, "°C", phrase("freezing point without the alcohol")};
    Working ofPoints;
    ofPoints.found({colder, "", (without_c - with_c).value, "K", phrase("how much colder the alcohol makes it begin to freeze")},
        without - Formula(with), Source::Definition);
    append(page.steps, ofPoints.steps());

    const IceOfBoth ice = iceOfBoth(analysis, other);
    if (!addCurvesToIce(page, explained.workings, other.workings, ice))
        addIceFromShares(page, analysis, other.texture, ice);
    Working ofIce;
    ofIce.found({keptLiquid, "", ice.without.value - ice.with.value, "g", phrase("water that the alcohol keeps liquid")},
        ice.without - Formula(ice.with), Source::Definition);
    append(page.steps, ofIce.steps());
}

void addEffects(LessonPage& page, const Analysis& analysis, const WithoutAlcohol& other)
{
    const Celsius serveAt = analysis.conditions.serveAt;
    const IceOfBoth ice = iceOfBoth(analysis, other);
    page.conclusions.push_back(effectOf(ice.without.value - ice.with.value, analysis.texture, serveAt));
    const std::string with(afterIs(analysis.texture.firmness)), without(afterIs(other.texture.firmness));
    const Figure serving{serveAt.value, 0}, iceWith{percent(analysis.texture.iceAtServing), 0},
        iceWithout{percent(other.texture.iceAtServing), 0};
    page.conclusions.push_back(
        with == without ? phrase("It is {0} at {1} °C with its alcohol and without: this is too little spirit to keep it soft. "
                                 "{2} % of it is ice, without the alcohol {3} %; the water of the spirit stays.",
            with, serving, iceWith, iceWithout)
                        : phrase("With its alcohol it is {0} at {1} °C, with {2} % ice. The same without the alcohol is {3}, with "
                                 "{4} %; the water of the spirit stays.",
                            with, serving, iceWith, without, iceWithout));
}

}  // namespace

void fillSpirit(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const WithoutAlcohol other = withoutAlcohol(analysis);
    page.beside = other.curve;
    page.caption = phrase("The line: this mix. The dots: the same without the alcohol; the water of the spirit stays.");
    LessonPage inNumbers;
    addSteps(inNumbers, explained, other);
    for (WorkingStep& step : inNumbers.steps) {
        const std::string found = textOf(step.result);
        if (found == colder || found == keptLiquid)
            page.steps.push_back(std::move(step));
    }
    addEffects(page, analysis, other);
    if (const auto sucrose_g = sucroseForAlcohol(explained.workings))
        page.conclusions.push_back(
            phrase("A gram of alcohol has as many molecules as {0} g of sucrose, and it is their number that counts.",
                Figure{*sucrose_g, 1}));
    if (!analysis.texture.willFreeze)
        addVerdicts(page, analysis.texture.faults);
}

void fillSpiritInNumbers(LessonPage& page, const ExplainedAnalysis& explained)
{
    addSteps(page, explained, withoutAlcohol(explained.analysis));
}

}  // namespace firn
