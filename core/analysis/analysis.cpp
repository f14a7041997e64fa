#include "analysis/analysis.h"

#include "analysis/cautions.h"
#include "analysis/composition_working.h"
#include "analysis/preparation.h"
#include "analysis/sweetness.h"
#include "analysis/weighing_working.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <cmath>

namespace firn {

namespace {

Shares sharesOf(const Mix& mix)
{
    const auto share = [&mix](Grams part) { return shareOf(part, mix); };
    return {share(mix[Constituent::Water]), share(sugars(mix)), share(mix[Constituent::Fat]), share(mix.milkFat),
        share(mix[Constituent::Protein]), share(mix[Constituent::Ethanol]), share(totalSolids(mix)), share(mix.milkSolidsNotFat)};
}

/// What the figures are about, how far its sugars may stray, and how it is frozen.
struct Subject {
    Mix mix;
    Millilitres volume_20c;
    Millilitres air;
    double sugarsVariance_g2 = 0.0;
    std::optional<Process> process;
    std::vector<std::size_t> components;
};

Subject subjectOf(const Recipe& recipe, const std::vector<PreparedComponent>& components, std::optional<std::size_t> chosen,
    std::optional<std::size_t> stepsDone, Workings* workings)
{
    Subject subject;
    subject.process = recipe.process;
    for (std::size_t i = 0; i < components.size(); ++i) {
        const PreparedComponent& component = components[i];
        const std::size_t done = chosen == i ? stepsDone.value_or(component.steps.size()) : component.steps.size();
        if (workings)
            recordSteps(*workings, recipe, i, component, done);
        if (chosen ? *chosen != i : component.isPartOfAnother)
            continue;
        const Mix& mix = component.mixAfter(done);
        subject.mix.add(mix);
        const Millilitres volume = volumeOf(mix, {20.0}, workings ? &workings->of("volume_ml_20c", homeOfComponent(i)) : nullptr);
        subject.volume_20c += volume;
        subject.air += volume * (overrunOf(recipe, i) / 100.0);
        subject.sugarsVariance_g2 += component.sugarsVariance_g2;
        subject.process = subject.components.empty() ? processOf(recipe, i) : recipe.process;
        subject.components.push_back(i);
    }
    return subject;
}

}  // namespace

Conditions conditionsOf(const Recipe& recipe)
{
    Conditions conditions;
    if (recipe.serveAt_c)
        conditions.serveAt = {*recipe.serveAt_c};
    if (recipe.freezerAt_c)
        conditions.freezerAt = {*recipe.freezerAt_c};
    return conditions;
}

Analysis analyse(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions,
    std::optional<std::size_t> component, std::optional<std::size_t> stepsDone, Workings* workings)
{
    const auto workingOf = [workings](const char* figure) { return workings ? &workings->of(figure) : nullptr; };
    Analysis result;
    result.conditions = conditions;
    Preparation preparation = prepared(recipe, catalogue, workings);
    const Subject subject = subjectOf(recipe, preparation.components, component, stepsDone, workings);

    const Mix& mix = result.mix = subject.mix;
    result.ribbon = ribbonOf(mix.amounts);
    result.mass = mix.mass();
    result.water = mix[Constituent::Water];
    result.volume_20c = subject.volume_20c;
    result.finishedVolume = subject.volume_20c + subject.air;
    if (subject.volume_20c.value > 0.0)
        result.overrun_percent = 100.0 * (subject.air / subject.volume_20c);
    result.shares = sharesOf(mix);
    if (!mix.isEmpty()) {
        result.alcohol_percentByVolume =
            100.0 * (mix[Constituent::Ethanol].value / ethanolDensity_20c.value) / result.volume_20c.value;
        result.sugarsUncertainty = {std::sqrt(subject.sugarsVariance_g2) / result.mass.value};
    }
    result.sweetness_percentSucrose = sweetnessAsSucrose_percent(mix, workingOf("sweetness_percent_sucrose"));
    if (result.water.value > 0.0)
        result.lactose_gPer100gWater = 100.0 * (mix[Constituent::Lactose] / result.water);
    if (workings)
        recordComposition(*workings, recipe, subject.components, result, subject.sugarsVariance_g2);

    result.freezing = freezingCurve(mix, workings);
    Working* const ofTextbook = workingOf("freezing_point_textbook_c");
    result.textbook = textbookFreezing(textbookMix(mix, ofTextbook), 0.0, ofTextbook);
    const Process process = conditions.process.value_or(subject.process.value_or(Process::Churned));
    result.texture =
        texture(mix, result.freezing, {process, result.overrun_percent, conditions.serveAt, conditions.freezerAt}, workings);
    result.readings = readings(mix, conditions.readAt, conditions.instruments.egg, workings);
    if (result.readings)
        result.instruments = instrumentReadings(conditions.instruments, mix, conditions.readAt, workings);
    result.measured = measuredBeside(recipe, component, mix, workings);

    for (PreparedComponent& each : preparation.components) {
        auto& rows = result.components.emplace_back();
        rows.reserve(each.rows.size());
        for (PreparedRow& row : each.rows)
            rows.push_back(std::move(row.analysis));
        result.steps.push_back(std::move(each.steps));
    }
    result.cautions = cautionsFor(recipe, result, preparation.ingredients);
    return result;
}

}  // namespace firn
