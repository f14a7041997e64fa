#include "correction/correction.h"

#include "analysis/analysis.h"
#include "correction/causes.h"
#include "correction/choices.h"
#include "correction/measured_mix.h"
#include "recipe/rounding.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace firn {

namespace {

Figure tenths(MassFraction share) { return {percent(share), 1}; }

TextureInput textureInput(const Recipe& recipe, std::size_t component)
{
    const Conditions conditions = conditionsOf(recipe, component);
    return {processOf(recipe, component).value_or(Process::Churned), overrunOf(recipe, component), conditions.serveAt,
        conditions.freezerAt};
}

Sentence diagnosisOf(const MeasuredState& measured, const MixFigures& recipe, const std::vector<Cause>& causes)
{
    if (!measured.sugars)
        return phrase("No reading: calculated from the recipe's {0} % sugar.", tenths(recipe.sugars));
    if (std::abs((*measured.sugars - recipe.sugars).value) <= readingTolerance(measured).value)
        return phrase("The reading agrees with the recipe: {0} % sugar against {1} %, as near as readings can be.",
            tenths(*measured.sugars), tenths(recipe.sugars));
    if (causes.empty())
        return phrase("{0} % sugar measured, {1} % by the recipe. No single slip and no two ingredients explain the difference. "
                      "Stir, let the "
                      "sample come to 20 °C, read it again, and check the weights.",
            tenths(*measured.sugars), tenths(recipe.sugars));
    return phrase("{0} % sugar measured, {1} % by the recipe. Possible explanations, most likely first:", tenths(*measured.sugars),
        tenths(recipe.sugars));
}

bool losesSomething(const Component& component)
{
    return std::ranges::any_of(
        component.steps, [](const Step& step) { return !std::holds_alternative<std::monostate>(step.loss); });
}

std::vector<Sentence> cautionsOf(const PreparedComponent& prepared, const MeasuredState& measured, const StrengthTarget& target)
{
    std::vector<Sentence> cautions;
    for (const PreparedRow& row : prepared.rows) {
        if (row.analysis.problem)
            cautions.push_back(*row.analysis.problem);
    }
    const auto* wanted = std::get_if<SugarsTarget>(&target);
    if (wanted && measured.sugars && std::abs((*measured.sugars - wanted->sugars).value) <= 2.0 * measured.sugars_sd.value)
        cautions.push_back(phrase("The target is within the reading's uncertainty (± {0} %). Read again before you add anything.",
            tenths(measured.sugars_sd * 2.0)));
    return cautions;
}

/// Whether what is added is more of what stands in this row already, weighed in grams. `ofRow` is what the row was prepared as: none for another
/// component or a linked recipe, whatever its name.
bool isMoreOf(const Row& row, const Ingredient* ofRow, const Row& added, const Catalogue& catalogue)
{
    const Ingredient* ingredient = catalogue.find(added.ingredient);
    return row.amount.unit == Unit::Gram && added.amount.unit == Unit::Gram && row.measuredBrix == added.measuredBrix && ofRow
           && (row.ingredient == added.ingredient || ofRow == ingredient);
}

}  // namespace

Result<CorrectionPlan> corrections(const Recipe& recipe, const Catalogue& catalogue, std::size_t index,
    const MeasuredState& measured, const StrengthTarget& target, Corrected what)
{
    if (index >= recipe.components.size())
        return failure(phrase("This component is no longer in the recipe. Choose another."));
    const std::vector<PreparedComponent> all = prepared(recipe, catalogue).components;
    const Component& component = recipe.components[index];
    const Mix& written = all[index].mix();
    if (written.isEmpty())
        return failure(phrase("Nothing in this component has a weight yet. Give it rows with amounts first."));
    const bool isMeasured = measured.sugars || measured.alcohol;
    const Result<Mix> now =
        isMeasured ? measuredMix(written, measured.sugars.value_or(shareOf(sugars(written), written)), measured.alcohol) : written;
    if (!now)
        return failure(now.error());
    const auto intended = broughtTo(target, written);
    if (!intended)
        return failure(intended.error());

    CorrectionPlan plan;
    const TextureInput input = textureInput(recipe, index);
    plan.now = *now;
    plan.recipe = figuresOf(written, input);
    plan.nowFigures = figuresOf(*now, input);
    plan.intended = figuresOf(*intended, input);
    plan.causes = causesOf(component, all[index], measured);
    plan.diagnosis = diagnosisOf(measured, plan.recipe, plan.causes);
    Wanted wanted{target, plan.intended, input, measured.sugars_sd, {}};
    if (what == Corrected::Recipe && losesSomething(component))
        wanted.mixWith = [&](const std::vector<Row>& added) {
            Recipe changed = recipe;
            changed.components[index] = corrected(recipe, catalogue, index, added);
            return prepared(changed, catalogue).components[index].mix();
        };
    Choices choices = choicesFor(component, all[index], catalogue, *now, wanted);
    plan.choices = std::move(choices.ranked);
    plan.leftOut = std::move(choices.leftOut);
    plan.cautions = cautionsOf(all[index], measured, target);
    return plan;
}

std::vector<Row> weighable(const std::vector<Row>& rows, Grams scaleStep)
{
    std::vector<Row> result = rows;
    for (Row& row : result)
        row.amount = rounded(row.amount, {scaleStep}).amount;
    return result;
}

Component corrected(const Recipe& recipe, const Catalogue& catalogue, std::size_t index, const std::vector<Row>& added,
    const std::optional<Cause>& cause)
{
    Component component = recipe.components[index];
    const std::vector<PreparedComponent> all = prepared(recipe, catalogue).components;
    for (std::size_t i = 0; i < component.rows.size(); ++i) {
        const RowAnalysis& row = all[index].rows[i].analysis;
        if (component.rows[i].amount.unit == Unit::PercentOfMix && !row.problem)
            component.rows[i].amount = {row.mass.value, Unit::Gram};
    }
    std::vector<std::size_t> neverIn;
    for (const RowAsItWas& asItWas : cause ? cause->rows : std::vector<RowAsItWas>{}) {
        if (!asItWas.row) {
            neverIn.push_back(asItWas.index);
            continue;
        }
        Row& row = component.rows[asItWas.index];
        const Amount inGrams = row.amount;
        row = *asItWas.row;
        if (row.amount.unit == Unit::PercentOfMix)
            row.amount = inGrams;
    }
    for (const Row& more : added) {
        const auto same = std::ranges::find_if(component.rows, [&](const Row& row) {
            const auto place = static_cast<std::size_t>(&row - component.rows.data());
            const Ingredient* ofRow =
                place < all[index].rows.size() ? all[index].rows[place].ingredient : catalogue.find(row.ingredient);
            return std::ranges::find(neverIn, place) == neverIn.end() && isMoreOf(row, ofRow, more, catalogue);
        });
        if (same == component.rows.end())
            component.rows.push_back(more);
        else
            same->amount.value += more.amount.value;
    }
    std::ranges::sort(neverIn, std::greater{});
    for (const std::size_t place : neverIn)
        component.rows.erase(component.rows.begin() + static_cast<std::ptrdiff_t>(place));
    return component;
}

}  // namespace firn
