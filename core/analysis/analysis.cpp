#include "analysis/analysis.h"

#include "analysis/cautions.h"
#include "analysis/composition_working.h"
#include "analysis/preparation.h"
#include "analysis/sweetness.h"
#include "analysis/weighing_working.h"
#include "solution/ethanol.h"
#include "solution/volume.h"
#include "texture/serving.h"

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
    Mix frozen;  // the part of the mix that is frozen
    Millilitres frozenVolume_20c;
    Millilitres airOfFrozen;
    std::vector<std::size_t> frozenComponents;

    bool hasUnfrozenParts() const { return !frozen.isEmpty() && frozenComponents.size() < components.size(); }
};

/// Of the frozen parts: their own where it is one, else the recipe's.
std::optional<Process> frozenBy(const Recipe& recipe, const Subject& subject)
{
    if (subject.components.empty())
        return recipe.process;
    if (subject.frozen.isEmpty() && (subject.frozenComponents.empty() || !subject.mix.isEmpty()))
        return Process::Unfrozen;
    const auto own = processOf(recipe, subject.frozenComponents.front());
    return subject.frozenComponents.size() > 1 && recipe.process && recipe.process != Process::Unfrozen ? recipe.process : own;
}

Subject subjectOf(const Recipe& recipe, const std::vector<PreparedComponent>& components, std::optional<std::size_t> chosen,
    std::optional<std::size_t> stepsDone, Workings* workings)
{
    Subject subject;
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
        const Millilitres air = volume * (overrunOf(recipe, i) / 100.0);
        subject.air += air;
        subject.sugarsVariance_g2 += component.sugarsVariance_g2;
        subject.components.push_back(i);
        if (processOf(recipe, i) == Process::Unfrozen)
            continue;
        subject.frozen.add(mix);
        subject.frozenVolume_20c += volume;
        subject.airOfFrozen += air;
        subject.frozenComponents.push_back(i);
    }
    subject.process = frozenBy(recipe, subject);
    return subject;
}

}  // namespace

Conditions conditionsOf(const Recipe& recipe, std::optional<std::size_t> component, std::optional<Process> process)
{
    Conditions conditions;
    conditions.process = process;
    const auto own = component ? processOf(recipe, *component) : processOfWhole(recipe);
    const Process frozenBy = process.value_or(own.value_or(Process::Churned));
    conditions.serveAt = usualServing(frozenBy);
    if (recipe.serveAt_c && (frozenBy != Process::Unfrozen || *recipe.serveAt_c >= 0.0))
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

    const Process process = conditions.process.value_or(subject.process.value_or(Process::Churned));
    // The steps of a part's freezing are about masses that no figure of the whole has.
    const bool isOfPart = subject.hasUnfrozenParts() && process != Process::Unfrozen;
    Workings ofPart = Workings::apart();
    // What is not frozen has no figures of freezing, and nothing to derive.
    Workings* const ofFreezing = process == Process::Unfrozen ? nullptr : workings && isOfPart ? &ofPart : workings;
    const Mix& frozen = isOfPart ? subject.frozen : mix;
    const double overrun_percent = isOfPart ? 100.0 * (subject.airOfFrozen / subject.frozenVolume_20c) : result.overrun_percent;
    result.freezing = freezingCurve(frozen, ofFreezing);
    Working* const ofTextbook = ofFreezing ? &ofFreezing->of("freezing_point_textbook_c") : nullptr;
    result.textbook = textbookFreezing(textbookMix(frozen, ofTextbook), 0.0, ofTextbook);
    result.texture =
        texture(frozen, result.freezing, {process, overrun_percent, conditions.serveAt, conditions.freezerAt}, ofFreezing);
    if (workings && isOfPart)
        workings->add(std::move(ofPart));
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
