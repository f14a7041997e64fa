#include "analysis/analysis.h"

#include "analysis/cautions.h"
#include "analysis/sweetness.h"
#include "ingredients/weighing.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// "1 1/2 cups strawberries", and "2 eggs" for pieces.
std::string textOf(const Row& row)
{
    if (row.ingredient.empty())
        return amountText(row.amount);
    const std::string amount = row.amount.unit == Unit::Piece ? amountNumber(row.amount) : amountText(row.amount);
    return amount + " " + row.ingredient;
}

/// Rows in the making: what each row weighs, and what is in it.
class Weighed {
public:
    Weighed(const Recipe& recipe, const Catalogue& catalogue)
    {
        double askedShare_percent = 0.0;
        for (const Component& component : recipe.components) {
            auto& rows = m_components.emplace_back();
            rows.reserve(component.rows.size());
            for (const Row& row : component.rows) {
                const Ingredient* ingredient = catalogue.find(row.ingredient);
                rows.push_back({weighed(row, ingredient), ingredient});
                if (row.amount.unit == Unit::PercentOfMix)
                    askedShare_percent += row.amount.value;
                else if (ingredient)
                    m_weighedMass += rows.back().analysis.mass;
            }
        }
        giveShares(recipe, askedShare_percent);
    }

    struct Entry {
        RowAnalysis analysis;
        const Ingredient* ingredient;
    };
    std::vector<std::vector<Entry>>& components() { return m_components; }

private:
    static RowAnalysis weighed(const Row& row, const Ingredient* ingredient)
    {
        RowAnalysis result;
        result.text = textOf(row);
        if (!ingredient) {
            if (const auto mass = weighWithoutIngredient(row.amount)) {
                result.mass = mass->mass;
                result.how = mass->how;
            }
            result.problem =
                row.ingredient.empty()
                    ? phrase("A row has no ingredient and counts for nothing: name it or delete it.")
                    : phrase("Unknown ingredient “{0}”: it counts for nothing. Choose one from the list, or correct the name.",
                        row.ingredient);
            return result;
        }
        result.ingredientId = ingredient->id;
        result.ingredientName = ingredient->name;
        result.ribbon = ribbonOf(ingredient->composition.per100g);
        if (row.amount.value <= 0.0) {
            result.problem = phrase("No amount of “{0}” is given: it counts for nothing.", row.ingredient);
            return result;
        }
        if (row.amount.unit == Unit::PercentOfMix)
            return result;
        if (const auto mass = weigh(row.amount, *ingredient)) {
            result.mass = mass->mass;
            result.how = mass->how;
        } else {
            result.problem = mass.error();
        }
        return result;
    }

    /// Rows in % of the mix: the weighed rows are what is left of 100 %.
    void giveShares(const Recipe& recipe, double asked_percent)
    {
        const bool fits = asked_percent < 100.0 && m_weighedMass.value > 0.0;
        const Grams total = fits ? m_weighedMass / (1.0 - asked_percent / 100.0) : Grams{};
        for (std::size_t c = 0; c < m_components.size(); ++c) {
            for (std::size_t r = 0; r < m_components[c].size(); ++r) {
                const Amount& amount = recipe.components[c].rows[r].amount;
                RowAnalysis& row = m_components[c][r].analysis;
                if (amount.unit != Unit::PercentOfMix || row.problem)
                    continue;
                row.mass = total * (amount.value / 100.0);
                row.how = phrase("share of the mix");
                if (!fits)
                    row.problem = asked_percent >= 100.0
                                      ? phrase("The rows in % of the mix add up to {0} %: leave room for the weighed rows.",
                                          Figure{asked_percent, 1})
                                      : phrase("A share of the mix needs at least one row with a weight.");
            }
        }
    }

    std::vector<std::vector<Entry>> m_components;
    Grams m_weighedMass;
};

Shares sharesOf(const Mix& mix)
{
    const auto share = [&mix](Grams part) { return shareOf(part, mix); };
    return {share(mix[Constituent::Water]), share(sugars(mix)), share(mix[Constituent::Fat]), share(mix.milkFat),
        share(mix[Constituent::Protein]), share(mix[Constituent::Ethanol]), share(totalSolids(mix)), share(mix.milkSolidsNotFat)};
}

/// One standard deviation of the sugars' share, taking the ingredients to stray independently.
MassFraction sugarsUncertainty(const std::vector<std::vector<Weighed::Entry>>& components, Grams mass)
{
    double variance_g2 = 0.0;
    for (const auto& rows : components) {
        for (const auto& [row, ingredient] : rows) {
            if (ingredient && ingredient->spread.sugars_sd)
                variance_g2 += std::pow(row.mass.value / 100.0 * *ingredient->spread.sugars_sd, 2);
        }
    }
    return {mass.value > 0.0 ? std::sqrt(variance_g2) / mass.value : 0.0};
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

Analysis analyse(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions)
{
    Analysis result;
    result.conditions = conditions;

    Weighed weighed(recipe, catalogue);
    std::vector<const Ingredient*> ingredients;
    for (const auto& rows : weighed.components()) {
        for (const auto& [row, ingredient] : rows) {
            if (!ingredient || row.mass.value <= 0.0)
                continue;
            result.mix.add(ingredient->composition, row.mass);
            ingredients.push_back(ingredient);
        }
    }
    std::sort(ingredients.begin(), ingredients.end());
    ingredients.erase(std::unique(ingredients.begin(), ingredients.end()), ingredients.end());

    const Mix& mix = result.mix;
    result.ribbon = ribbonOf(mix.amounts);
    result.mass = mix.mass();
    result.water = mix[Constituent::Water];
    result.volume_20c = volumeOf(mix, {20.0});
    result.shares = sharesOf(mix);
    if (!mix.isEmpty())
        result.alcohol_percentByVolume =
            100.0 * (mix[Constituent::Ethanol].value / ethanolDensity_20c.value) / result.volume_20c.value;
    result.sugarsUncertainty = sugarsUncertainty(weighed.components(), result.mass);
    result.sweetness_percentSucrose = sweetnessAsSucrose_percent(mix);
    if (result.water.value > 0.0)
        result.lactose_gPer100gWater = 100.0 * (mix[Constituent::Lactose] / result.water);

    for (auto& rows : weighed.components()) {
        auto& analysed = result.components.emplace_back();
        analysed.reserve(rows.size());
        for (auto& [row, ingredient] : rows) {
            row.share = ingredient ? shareOf(row.mass, mix) : MassFraction{};
            analysed.push_back(std::move(row));
        }
    }

    result.freezing = freezingCurve(mix);
    result.textbook = textbookFreezing(textbookMix(mix));
    const Process process = conditions.process.value_or(recipe.process.value_or(Process::Churned));
    result.texture = texture(mix, result.freezing, {process, recipe.overrun_percent, conditions.serveAt, conditions.freezerAt});
    result.readings = readings(mix, conditions.readAt);
    result.cautions = cautionsFor(recipe, result, ingredients);
    return result;
}

}  // namespace firn
