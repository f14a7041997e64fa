#include "explain/lesson.h"

#include "derivation/formula_text.h"
#include "derivation/one_form.h"
#include "explain/lesson_pages.h"
#include "explain/lesson_steps.h"
#include "mix/symbols.h"
#include "texture/trade_bands.h"

#include <algorithm>

namespace firn {

namespace {

void fillNothing(LessonPage&, const ExplainedAnalysis&) {}

/// Every sugar from the rows, the largest first; then all of them.
void fillSugars(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const auto massOfSugar = [&](Constituent c) { return analysis.mix[c].value; };
    std::vector<Constituent> kinds(sugarKinds.begin(), sugarKinds.end());
    std::ranges::stable_sort(kinds, std::ranges::greater{}, massOfSugar);
    for (const Constituent c : kinds) {
        if (massOfSugar(c) > 0.0)
            append(page.steps, chosenSteps(explained.workings, partOf(c).figure));
    }
    append(page.steps, allSteps(explained.workings, "percent.sugars"));
    for (Sentence& each : standingInBand(analysis.texture.mix, analysis.texture.textureClass))
        page.conclusions.push_back(std::move(each));
}

void fillTotalSolids(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    page.steps = allSteps(explained.workings, "percent.total_solids");
    const double solids_g = totalSolids(analysis.mix).value;
    if (solids_g > 0.0)
        page.conclusions.push_back(
            phrase("{0} % of the solids are sugars.", Figure{100.0 * sugars(analysis.mix).value / solids_g, 0}));
}

void fillMilk(LessonPage& page, const ExplainedAnalysis& explained)
{
    for (const char* figure : {"percent.milk_fat", "percent.milk_solids_not_fat", "lactose_g_per_100_g_water"})
        append(page.steps, allSteps(explained.workings, figure));
    // Hyde and Rothwell 1973; see texture.cpp.
    page.conclusions.push_back(phrase("From about 9 g lactose in 100 g water it may turn sandy in store; here it is {0} g.",
        Figure{explained.analysis.lactose_gPer100gWater, 1}));
}

void fillAlcohol(LessonPage& page, const ExplainedAnalysis& explained)
{
    for (const char* figure : {"constituents_g.ethanol", "percent.alcohol"})
        append(page.steps, chosenSteps(explained.workings, figure));
    append(page.steps, chosenSteps(explained.workings, "volume_ml_20c", {"V_liquid"}));
    append(page.steps, chosenSteps(explained.workings, "percent.alcohol_by_volume"));
    page.conclusions.push_back(phrase("Freezing does not remove it: say so on the menu, and keep to the age and licence rules."));
}

void fillDensity(LessonPage& page, const ExplainedAnalysis& explained)
{
    constexpr Celsius ofScales{20.0};
    for (WorkingStep& step : chosenSteps(explained.workings, "readings.density_g_ml", {"V_liquid", "V_mix"})) {
        // What the mix is read at is another temperature than that which the scales below are made for: so is their water.
        page.steps.push_back(retold(std::move(step), [&](Symbol& symbol) {
            if (textOf(symbol) == "ρ_w" && explained.analysis.conditions.readAt != ofScales) {
                symbol.subscript = "w,t";
                symbol.meaning = phrase("density of water at the temperature of the mix");
            }
        }));
    }
    for (const char* figure : {"readings.specific_gravity_20_20", "readings.baume"})
        append(page.steps, chosenSteps(explained.workings, figure));
    append(page.steps, chosenSteps(explained.workings, "readings.refractometer_brix", {"N", "nD", "nD_seen"}));
    for (const Sentence& each : explained.analysis.readings->disturbances)
        page.conclusions.emplace_back(each);
}

void fillEgg(LessonPage& page, const ExplainedAnalysis& explained)
{
    page.steps = chosenSteps(explained.workings, "readings.egg.exposed_width_mm", {"e", "V_egg", "h", "z"});
    const EggFloat& egg = explained.analysis.readings->egg;
    page.conclusions.push_back(
        verdict(egg.floats ? phrase("It floats, and shows {0} mm of its shell.", Figure{egg.exposedWidth.value, 0})
                           : phrase("It sinks: the mix is lighter than the egg.")));
    if (!page.steps.empty() && page.steps.back().uncertainty)
        page.conclusions.push_back(*page.steps.back().uncertainty);
}

void fillFreezingPoint(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    page.steps = allSteps(explained.workings, "freezing_point_c");
    append(page.steps, chosenSteps(explained.workings, "water_activity"));
    if (analysis.textbook)
        page.conclusions.push_back(phrase("It begins to freeze at {0} °C. Sucrose equivalents, the textbook's method, say {1} °C.",
            Figure{analysis.freezing.freezingPoint->temperature.value, 1}, Figure{analysis.textbook->freezingPoint.value, 1}));
}

void fillFreezingCurve(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    page.steps = chosenSteps(explained.workings, "freezing_point_c", {"m_held", "m_free"});
    if (!page.steps.empty())
        page.steps.pop_back();  // the freezing point has a page of its own
    append(page.steps, stepsToIce(explained.workings));
    const auto addPlace = [&](Celsius temperature, MassFraction ice) {
        const double frozen_percent =
            100.0 * ice.value / shareOf(analysis.texture.mix[Constituent::Water], analysis.texture.mix).value;
        page.conclusions.push_back(phrase("At {0} °C {1} % of the water is ice, and {2} % of it stays liquid.",
            Figure{temperature.value, 0}, Figure{frozen_percent, 0}, Figure{100.0 - frozen_percent, 0}));
    };
    addPlace(analysis.conditions.serveAt, analysis.texture.iceAtServing);
    addPlace(analysis.conditions.freezerAt, analysis.texture.iceInFreezer);
}

void fillSweetness(LessonPage& page, const ExplainedAnalysis& explained)
{
    page.steps = allSteps(explained.workings, "sweetness_percent_sucrose");
    page.conclusions.push_back(phrase("It tastes as sweet as a solution of {0} % sucrose; it holds {1} % sugars.",
        Figure{explained.analysis.sweetness_percentSucrose, 0}, Figure{percent(explained.analysis.shares.sugars), 0}));
    if (!page.steps.empty() && page.steps.back().uncertainty)
        page.conclusions.push_back(*page.steps.back().uncertainty);
}

/// An edge of the serving window, and what its ice and its temperature are called on the page.
struct Edge {
    const char* ice;
    const char* temperature;
    std::optional<Firmness> begins;
    int firstPoint = 1;  // number of the warmer of the two points of the curve that it lies between
};

/// Both edges are reckoned alike: on one page their symbols need names of their own.
void addEdge(LessonPage& page, const Workings& workings, const char* figure, const Edge& edge)
{
    for (WorkingStep& step : allSteps(workings, figure)) {
        page.steps.push_back(retold(std::move(step), [&](Symbol& symbol) {
            const std::string name = textOf(symbol);
            if (name == "x_wanted") {
                symbol.subscript = edge.ice;
            } else if (name == "x_begins") {
                symbol.subscript += std::string(",") + edge.ice;
            } else if (name == "x_1" || name == "t_1" || name == "x_2" || name == "t_2") {
                symbol.subscript = std::to_string(edge.firstPoint + (symbol.subscript == "2" ? 1 : 0));
            } else if (name == "t") {
                symbol.subscript = edge.temperature;
                if (edge.begins && !symbol.meaning.values.empty())
                    symbol.meaning = phrase("temperature at which {0} % of the mix is ice ({1} begins)",
                        symbol.meaning.values.front(), std::string(nameOf(*edge.begins)));
            }
        }));
    }
}

/// docs/models.md: the source gives the water that is frozen, the program goes by the ice in the mix.
void addScoopable(LessonPage& page, const Analysis& analysis)
{
    constexpr double leastSolids_percent = 35.0, mostSolids_percent = 40.0;
    page.conclusions.push_back(phrase("Scoopable: 38 to 46 % of the mix is ice. From 65 to 70 % of the water (M. Mullan, teaching "
                                      "article on freezing curves), for mixes of 35 to 40 % solids."));
    const double solids_percent = percent(analysis.shares.totalSolids);
    if (solids_percent < leastSolids_percent || solids_percent > mostSolids_percent)
        page.conclusions.push_back(
            phrase("This mix has {0} % solids: outside that range the 38 to 46 % are a guess.", Figure{solids_percent, 1}));
}

void fillTexture(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Texture& texture = explained.analysis.texture;
    const auto softest = softestToServe(texture.textureClass);
    addEdge(page, explained.workings, "texture.serving_window_c.warmest", {"least", "warmest", softest});
    addEdge(
        page, explained.workings, "texture.serving_window_c.coldest", {"most", "most", hardestToServe(texture.textureClass), 3});
    for (const Sentence& each : texture.reasons)
        page.conclusions.emplace_back(each);
    if (texture.servingWindow && softest == Firmness::Scoopable)
        addScoopable(page, explained.analysis);
    addVerdicts(page, texture.faults);
}

void fillBands(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Texture& texture = explained.analysis.texture;
    page.sugarIce = sugarIceCurve(texture.mix, texture.textureClass, explained.analysis.conditions.serveAt);
    page.caption = phrase("The line: this mix with other amounts of sugar.");
    for (Sentence& each : saidBy(*page.sugarIce))
        page.conclusions.push_back(std::move(each));
    for (Sentence& each : standingInBand(texture.mix, texture.textureClass))
        page.conclusions.push_back(std::move(each));
}

struct Topic {
    LessonTopic topic;
    Sentence title;
    Sentence idea;
    bool (*isIn)(const Analysis& analysis);
    void (*fill)(LessonPage& page, const ExplainedAnalysis& explained);
    LessonPicture picture = LessonPicture::None;
};

bool freezes(const Analysis& analysis)
{
    return analysis.freezing.freezingPoint.has_value() && analysis.texture.process != Process::Unfrozen;
}
bool hasBand(const Analysis& analysis)
{
    return freezes(analysis) && analysis.texture.willFreeze && sugars(analysis.mix).value > 0.0;
}
bool canBeRead(const Analysis& analysis) { return analysis.readings.has_value(); }
bool hasAlcohol(const Analysis& analysis) { return analysis.mix[Constituent::Ethanol].value > 0.0; }
bool hasAlcoholAndFreezes(const Analysis& analysis)
{
    return analysis.texture.mix[Constituent::Ethanol].value > 0.0 && freezes(analysis);
}

const std::vector<Topic>& allTopics()
{
    using T = LessonTopic;
    static const std::vector<Topic> topics{
        {T::Nothing, phrase("Nothing to show yet"), phrase("The recipe is empty: type an ingredient, and the pages fill."),
            [](const Analysis& analysis) { return analysis.mix.isEmpty(); }, fillNothing},
        {T::Sugars, phrase("Sugar by mass"),
            phrase("Sweetness, softness and the kind of ice follow from the share of sugars in the mix."),
            [](const Analysis& analysis) { return sugars(analysis.mix).value > 0.0; }, fillSugars, LessonPicture::SugarScale},
        {T::TotalSolids, phrase("Total solids"),
            phrase("All that is neither water nor alcohol is solids: the more of them, the less ice and the more body."),
            [](const Analysis& analysis) { return totalSolids(analysis.mix).value > 0.0; }, fillTotalSolids,
            LessonPicture::RibbonBar},
        {T::Milk, phrase("Milk in the mix"),
            phrase("Milk fat rounds, milk solids-not-fat give body, and their lactose sets a limit: too much of it turns sandy."),
            [](const Analysis& analysis) { return analysis.mix.milkFat.value > 0.0 || analysis.mix.milkSolidsNotFat.value > 0.0; },
            fillMilk},
        {T::Alcohol, phrase("Alcohol"),
            phrase("A spirit brings water and alcohol: what counts is the pure alcohol in the whole mix."), hasAlcohol,
            fillAlcohol},
        {T::Density, phrase("Density, °Bx and the hydrometer"),
            phrase("What is dissolved makes the mix heavier and bends light more: a hydrometer sees the one, a refractometer the "
                   "other."),
            canBeRead, fillDensity, LessonPicture::Hydrometer},
        {T::Egg, phrase("The floating egg"),
            phrase("An egg floats in a mix that is denser than the egg, and the denser the mix, the more of its shell shows."),
            canBeRead, fillEgg, LessonPicture::Egg},
        {T::FreezingPoint, phrase("Water activity and the freezing point"),
            phrase("Whatever is dissolved keeps water from turning to ice: the more particles, the colder it must get before ice "
                   "forms."),
            freezes, fillFreezingPoint},
        {T::FreezingCurve, phrase("The freezing curve and what stays liquid"),
            phrase(
                "Ice is pure water: as it forms, the liquid that is left grows stronger and needs more and more cold to freeze."),
            freezes, fillFreezingCurve, LessonPicture::FreezingCurve},
        {T::Spirit, phrase("Why does spirit keep it soft?"),
            phrase("Alcohol does not freeze in a freezer, and its many small molecules keep more water liquid."),
            hasAlcoholAndFreezes, fillSpirit, LessonPicture::FreezingCurves},
        {T::SpiritInNumbers, phrase("Spirit, step by step"),
            phrase("The freezing points and the ice with the alcohol and without it. What the other solutes do is taken from the "
                   "page on "
                   "the freezing point."),
            hasAlcoholAndFreezes, fillSpiritInNumbers},
        {T::Sweetness, phrase("Sweetness"),
            phrase("Each sugar is sweet in its own measure: together they are as sweet as so much sucrose."),
            [](const Analysis& analysis) { return analysis.sweetness_percentSucrose > 0.0; }, fillSweetness},
        {T::Texture, phrase("Texture and process"),
            phrase("How hard it is follows from how much of it is ice; how coarse it is, from the way it is frozen."), freezes,
            fillTexture},
        {T::Bands, phrase("Why these bands of sugar?"),
            phrase("Each kind is served with its own share of ice, and sugar decides how much of the water is ice at that "
                   "temperature."),
            hasBand, fillBands, LessonPicture::SugarIce},
        {T::Correction, phrase("Correcting the mix"),
            phrase("Pearson square: subtract diagonally; each difference is the number of parts of the opposite ingredient."),
            canBeCorrected, fillCorrection, LessonPicture::SugarScale},
    };
    return topics;
}

const Topic& entryOf(LessonTopic topic) { return *std::ranges::find(allTopics(), topic, &Topic::topic); }

}  // namespace

std::vector<LessonTopic> lessonTopics(const Analysis& analysis)
{
    std::vector<LessonTopic> topics;
    for (const Topic& each : allTopics()) {
        if (each.isIn(analysis))
            topics.push_back(each.topic);
    }
    return topics;
}

Sentence titleOf(LessonTopic topic) { return entryOf(topic).title; }

LessonPage lessonPage(LessonTopic topic, const ExplainedAnalysis& explained)
{
    const Topic& entry = entryOf(topic);
    LessonPage page;
    page.topic = topic;
    page.title = entry.title;
    page.idea = entry.idea;
    page.picture = entry.picture;
    entry.fill(page, explained);
    page.steps = inDigitsThatCompute(std::move(page.steps));
    if (auto reason = reasonNotToTeach(explained.analysis))
        page.conclusions.push_back(std::move(*reason));
    return page;
}

}  // namespace firn
