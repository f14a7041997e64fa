#include "analysis/preparation.h"

#include "analysis/measured_brix.h"
#include "ingredients/weighing.h"
#include "solution/volume.h"

#include <algorithm>
#include <cmath>
#include <memory>

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

/// A component's mix as something that can be weighed into another component.
Ingredient asIngredient(const Component& component, const Mix& mix)
{
    Ingredient result;
    result.name = component.name;
    if (mix.isEmpty())
        return result;
    const double perHundredGrams = 100.0 / mix.mass().value;
    result.composition.per100g.add(mix.amounts, perHundredGrams);
    result.composition.milkFat = mix.milkFat * perHundredGrams;
    result.composition.milkSolidsNotFat = mix.milkSolidsNotFat * perHundredGrams;
    result.composition.yolkSolids = mix.yolkSolids * perHundredGrams;
    result.density = densityOf(mix, {20.0});
    result.densitySource = "the mix of this component";
    return result;
}

class Preparation {
public:
    Preparation(const Recipe& recipe, const Catalogue& catalogue)
        : m_recipe(recipe)
        , m_catalogue(catalogue)
        , m_components(recipe.components.size())
        , m_isDone(recipe.components.size(), false)
        , m_asIngredient(recipe.components.size())
    {
        for (std::size_t i = 0; i < m_components.size(); ++i)
            prepare(i);
    }

    std::vector<PreparedComponent> components() && { return std::move(m_components); }

private:
    /// What a row's name stands for.
    struct Meaning {
        const Ingredient* ingredient = nullptr;
        bool isComponent = false;
        std::optional<Sentence> problem;
    };

    void prepare(std::size_t index)
    {
        if (m_isDone[index])
            return;
        m_chain.push_back(index);
        const Component& component = m_recipe.components[index];
        PreparedComponent result;
        result.rows.reserve(component.rows.size());
        std::vector<const Composition*> compositions;
        for (const Row& row : component.rows)
            compositions.push_back(addRow(result, row));
        giveShares(result, component);
        for (std::size_t i = 0; i < result.rows.size(); ++i) {
            PreparedRow& row = result.rows[i];
            if (!compositions[i] || row.analysis.mass.value <= 0.0)
                continue;
            result.weighedOut.add(*compositions[i], row.analysis.mass);
            if (row.ingredient && row.ingredient->spread.sugars_sd && !component.rows[i].measuredBrix)
                result.sugarsVariance_g2 += std::pow(row.analysis.mass.value / 100.0 * *row.ingredient->spread.sugars_sd, 2);
        }
        for (std::size_t i = 0; i < result.rows.size(); ++i)
            result.rows[i].analysis.share =
                compositions[i] ? shareOf(result.rows[i].analysis.mass, result.weighedOut) : MassFraction{};
        result.steps = outcomesOf(component.steps, result.weighedOut, rowsForSteps(component, result, compositions));
        result.isPartOfAnother = m_components[index].isPartOfAnother;
        m_components[index] = std::move(result);
        m_asIngredient[index] = asIngredient(component, m_components[index].mix());
        m_isDone[index] = true;
        m_chain.pop_back();
    }

    /// Weighs a row in; the composition lives as long as this object. Shares of the mix have no mass yet.
    const Composition* addRow(PreparedComponent& component, const Row& row)
    {
        PreparedRow prepared;
        RowAnalysis& result = prepared.analysis;
        result.text = textOf(row);
        Meaning meaning = meaningOf(row);
        const Composition* composition = meaning.ingredient ? &meaning.ingredient->composition : nullptr;
        if (!meaning.ingredient) {
            if (const auto mass = weighWithoutIngredient(row.amount)) {
                result.mass = mass->mass;
                result.how = mass->how;
            }
            result.problem = std::move(meaning.problem);
        } else {
            prepared.ingredient = meaning.isComponent ? nullptr : meaning.ingredient;
            result.ingredientId = meaning.ingredient->id;
            result.ingredientName = meaning.ingredient->name;
            if (row.measuredBrix)
                composition = measured(row, *meaning.ingredient, result);
            result.ribbon = ribbonOf(composition->per100g);
            weighIn(row, *meaning.ingredient, result);
        }
        component.rows.push_back(std::move(prepared));
        return composition;
    }

    const Composition* measured(const Row& row, const Ingredient& ingredient, RowAnalysis& result)
    {
        auto found = measuredComposition(ingredient.composition, *row.measuredBrix);
        if (!found) {
            result.problem = found.error();
            return &ingredient.composition;
        }
        return m_measured.emplace_back(std::make_unique<Composition>(*found)).get();
    }

    static void weighIn(const Row& row, const Ingredient& ingredient, RowAnalysis& result)
    {
        if (row.amount.value <= 0.0) {
            result.problem = phrase("No amount of “{0}” is given: it counts for nothing.", row.ingredient);
            return;
        }
        if (row.amount.unit == Unit::PercentOfMix)
            return;
        if (const auto mass = weigh(row.amount, ingredient)) {
            result.mass = mass->mass;
            result.how = mass->how;
        } else {
            result.problem = mass.error();
        }
    }

    Meaning meaningOf(const Row& row)
    {
        if (row.ingredient.empty())
            return {nullptr, false, phrase("A row has no ingredient and counts for nothing: name it or delete it.")};
        if (const Ingredient* ingredient = m_catalogue.find(row.ingredient))
            return {ingredient, false, {}};
        const auto named = std::find_if(m_recipe.components.begin(), m_recipe.components.end(),
            [name = folded(row.ingredient)](const Component& c) { return !c.name.empty() && folded(c.name) == name; });
        if (named == m_recipe.components.end())
            return {nullptr, false,
                phrase("Unknown ingredient “{0}”: it counts for nothing. Choose one from the list, or correct the name.",
                    row.ingredient)};
        const auto index = static_cast<std::size_t>(named - m_recipe.components.begin());
        if (const auto begins = std::find(m_chain.begin(), m_chain.end(), index); begins != m_chain.end()) {
            std::string chain;
            for (auto link = begins; link != m_chain.end(); ++link)
                chain += m_recipe.components[*link].name + " → ";
            return {nullptr, false,
                phrase("A component cannot be part of itself: {0}. Take it out of one of them.", chain + named->name)};
        }
        prepare(index);
        m_components[index].isPartOfAnother = true;
        return {&m_asIngredient[index], true, {}};
    }

    /// Rows in % of the mix: the weighed rows of the component are what is left of 100 %.
    static void giveShares(PreparedComponent& result, const Component& component)
    {
        double asked_percent = 0.0;
        Grams weighed;
        for (std::size_t i = 0; i < result.rows.size(); ++i) {
            const bool counts = !result.rows[i].analysis.ingredientName.empty();
            if (component.rows[i].amount.unit == Unit::PercentOfMix)
                asked_percent += component.rows[i].amount.value;
            else if (counts)
                weighed += result.rows[i].analysis.mass;
        }
        const bool fits = asked_percent < 100.0 && weighed.value > 0.0;
        const Grams total = fits ? weighed / (1.0 - asked_percent / 100.0) : Grams{};
        for (std::size_t i = 0; i < result.rows.size(); ++i) {
            RowAnalysis& row = result.rows[i].analysis;
            const Amount& amount = component.rows[i].amount;
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

    static std::vector<WeighedRow> rowsForSteps(
        const Component& component, const PreparedComponent& result, const std::vector<const Composition*>& compositions)
    {
        std::vector<WeighedRow> rows;
        if (component.steps.empty())
            return rows;
        for (std::size_t i = 0; i < result.rows.size(); ++i)
            rows.push_back({component.rows[i].ingredient, compositions[i], result.rows[i].analysis.mass});
        return rows;
    }

    const Recipe& m_recipe;
    const Catalogue& m_catalogue;
    std::vector<PreparedComponent> m_components;
    std::vector<bool> m_isDone;
    std::vector<Ingredient> m_asIngredient;
    std::vector<std::size_t> m_chain;  // of components being prepared, each for the one before it
    std::vector<std::unique_ptr<Composition>> m_measured;
};

}  // namespace

std::vector<PreparedComponent> prepared(const Recipe& recipe, const Catalogue& catalogue)
{
    return Preparation(recipe, catalogue).components();
}

}  // namespace firn
