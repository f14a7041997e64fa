#include "analysis/analysis.h"

#include "analysis/cautions.h"
#include "analysis/preparation.h"
#include "analysis/sweetness.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

Shares sharesOf(const Mix& mix)
{
    const auto share = [&mix](Grams part) { return shareOf(part, mix); };
    return {share(mix[Constituent::Water]), share(sugars(mix)), share(mix[Constituent::Fat]), share(mix.milkFat),
        share(mix[Constituent::Protein]), share(mix[Constituent::Ethanol]), share(totalSolids(mix)), share(mix.milkSolidsNotFat)};
}

/// What the figures are about, and how far its sugars may stray.
struct Subject {
    Mix mix;
    double sugarsVariance_g2 = 0.0;
};

Subject subjectOf(const std::vector<PreparedComponent>& components, std::optional<std::size_t> chosen)
{
    Subject subject;
    for (std::size_t i = 0; i < components.size(); ++i) {
        const PreparedComponent& component = components[i];
        if (chosen ? *chosen != i : component.isPartOfAnother)
            continue;
        subject.mix.add(component.mix());
        subject.sugarsVariance_g2 += component.sugarsVariance_g2;
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

Analysis analyse(
    const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions, std::optional<std::size_t> component)
{
    Analysis result;
    result.conditions = conditions;
    std::vector<PreparedComponent> components = prepared(recipe, catalogue);
    const Subject subject = subjectOf(components, component);

    const Mix& mix = result.mix = subject.mix;
    result.ribbon = ribbonOf(mix.amounts);
    result.mass = mix.mass();
    result.water = mix[Constituent::Water];
    result.volume_20c = volumeOf(mix, {20.0});
    result.shares = sharesOf(mix);
    if (!mix.isEmpty()) {
        result.alcohol_percentByVolume =
            100.0 * (mix[Constituent::Ethanol].value / ethanolDensity_20c.value) / result.volume_20c.value;
        result.sugarsUncertainty = {std::sqrt(subject.sugarsVariance_g2) / result.mass.value};
    }
    result.sweetness_percentSucrose = sweetnessAsSucrose_percent(mix);
    if (result.water.value > 0.0)
        result.lactose_gPer100gWater = 100.0 * (mix[Constituent::Lactose] / result.water);

    result.freezing = freezingCurve(mix);
    result.textbook = textbookFreezing(textbookMix(mix));
    const Process process = conditions.process.value_or(recipe.process.value_or(Process::Churned));
    result.texture = texture(mix, result.freezing, {process, recipe.overrun_percent, conditions.serveAt, conditions.freezerAt});
    result.readings = readings(mix, conditions.readAt);

    std::vector<const Ingredient*> ingredients;
    for (PreparedComponent& each : components) {
        auto& rows = result.components.emplace_back();
        rows.reserve(each.rows.size());
        for (PreparedRow& row : each.rows) {
            if (row.ingredient && row.analysis.mass.value > 0.0)
                ingredients.push_back(row.ingredient);
            rows.push_back(std::move(row.analysis));
        }
        result.steps.push_back(std::move(each.steps));
    }
    std::sort(ingredients.begin(), ingredients.end());
    ingredients.erase(std::unique(ingredients.begin(), ingredients.end()), ingredients.end());
    result.cautions = cautionsFor(recipe, result, ingredients);
    return result;
}

}  // namespace firn
