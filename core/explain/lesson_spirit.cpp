#include "derivation/formula_text.h"
#include "explain/lesson_pages.h"
#include "explain/lesson_steps.h"
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
    Mix mix = analysis.mix;
    mix.amounts[Constituent::Ethanol] = {};
    other.curve = freezingCurve(mix, &other.workings);
    other.texture = texture(mix, other.curve,
        {analysis.texture.process, analysis.overrun_percent, analysis.conditions.serveAt, analysis.conditions.freezerAt});
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
                symbol.meaning = phrase("the same part without the alcohol");
            } else if (textOf(symbol) == "T_f") {
                symbol.subscript = "without";
                symbol.meaning = phrase("freezing point without the alcohol");
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

/// The ice of both in grams, since shares of two masses cannot be compared.
void addIce(LessonPage& page, const ExplainedAnalysis& explained, const WithoutAlcohol& other)
{
    const Analysis& analysis = explained.analysis;
    const Figure serving{analysis.conditions.serveAt.value, 0};
    const Symbol mass = massOfMix(analysis.mix, Working()), ethanol = massOf(Constituent::Ethanol, analysis.mix, Working());
    const Symbol share{
        "x", "ice", percent(analysis.texture.iceAtServing), "%", phrase("ice in the mix at {0} °C", serving), iceAtServing};
    const Symbol shareWithout{
        "x", "without", percent(other.texture.iceAtServing), "%", phrase("ice in the mix without the alcohol at {0} °C", serving)};
    const double ice_g = mass.value * analysis.texture.iceAtServing.value;
    const double iceWithout_g = (mass.value - ethanol.value) * other.texture.iceAtServing.value;
    const Symbol ice{"m", "ice", ice_g, "g", phrase("ice when it is served")};
    const Symbol iceWithout{"m", "without", iceWithout_g, "g", phrase("ice when it is served without the alcohol")};
    const Symbol liquid{"Δm", "", iceWithout_g - ice_g, "g", phrase("water that the alcohol keeps liquid")};
    Working working;
    working.found(ice, mass * (share / 100.0), Source::FreezingCurve);
    working.found(iceWithout, (mass - Formula(ethanol)) * (shareWithout / 100.0), Source::FreezingCurve);
    working.found(liquid, iceWithout - Formula(ice), Source::Definition);
    append(page.steps, working.steps());

    page.conclusions.push_back(
        phrase("At {0} °C {1} g of water stay liquid between the crystals that would be ice without the alcohol: "
               "that is what lets the spoon in.",
            serving, Figure{liquid.value, 0}));
    page.conclusions.push_back(phrase("With its alcohol it is {0} at {1} °C, with {2} % ice; without it {3}, with {4} %.",
        std::string(nameOf(analysis.texture.firmness)), serving, Figure{share.value, 0},
        std::string(nameOf(other.texture.firmness)), Figure{shareWithout.value, 0}));
}

}  // namespace

void fillSpirit(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const WithoutAlcohol other = withoutAlcohol(analysis);
    page.beside = other.curve;
    page.caption = phrase("The line: this mix. The dots: the same without its alcohol.");
    page.steps = chosenSteps(explained.workings, "freezing_point_c", {"L_ethanol", "A"});
    append(page.steps, stepsWithout(other.workings));

    const Celsius with_c = analysis.freezing.freezingPoint->temperature, without_c = other.curve.freezingPoint->temperature;
    const Symbol with{"T", "f", with_c.value, "°C", phrase("freezing point with the alcohol"), "freezing_point_c"};
    const Symbol without{"T", "without", without_c.value, "°C", phrase("freezing point without the alcohol")};
    Working working;
    working.found({"ΔT", "", (without_c - with_c).value, "K", phrase("how much lower the alcohol makes it begin to freeze")},
        without - Formula(with), Source::Definition);
    append(page.steps, working.steps());
    addIce(page, explained, other);

    if (const auto sucrose_g = sucroseForAlcohol(explained.workings))
        page.conclusions.push_back(
            phrase("A gram of alcohol has as many molecules as {0} g of sucrose, and it is their number that counts.",
                Figure{*sucrose_g, 1}));
    if (!analysis.texture.willFreeze)
        page.conclusions.insert(page.conclusions.end(), analysis.texture.faults.begin(), analysis.texture.faults.end());
}

}  // namespace firn
