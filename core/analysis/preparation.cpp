#include "analysis/preparation.h"

#include "analysis/measured_brix.h"
#include "analysis/mix_as_ingredient.h"
#include "analysis/row_weight.h"
#include "analysis/weighing_working.h"
#include "ingredients/matching.h"
#include "recipe/text_line.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace firn {

namespace {

/// "1 1/2 cups strawberries", "2 eggs" for pieces, and "salt" without an amount.
std::string textOf(const Row& row)
{
    if (row.amount == Amount{} && !row.ingredient.empty())
        return row.ingredient;
    if (row.ingredient.empty())
        return amountText(row.amount);
    const std::string amount = row.amount.unit == Unit::Piece ? amountNumber(row.amount) : amountText(row.amount);
    return amount + " " + row.ingredient;
}

Sentence unknownNameSentence(const std::string& name, const std::vector<std::string>& suggestions)
{
    switch (suggestions.size()) {
    case 0:
        return phrase(
            "“{0}” is not in the catalogue and is ignored. Choose an ingredient from the list or correct the spelling.", name);
    case 1:
        return phrase("“{0}” is not in the catalogue and is ignored. Did you mean {1}?", name, suggestions[0]);
    case 2:
        return phrase(
            "“{0}” is not in the catalogue and is ignored. Did you mean {1} or {2}?", name, suggestions[0], suggestions[1]);
    default:
        return phrase("“{0}” is not in the catalogue and is ignored. Did you mean {1}, {2} or {3}?", name, suggestions[0],
            suggestions[1], suggestions[2]);
    }
}

class Work {
public:
    Work(const Recipe& recipe, const Catalogue& catalogue, Workings* workings)
        : m_recipe(recipe)
        , m_catalogue(catalogue)
        , m_workings(workings)
        , m_own(recipe.ingredients)
        , m_linked(recipe.linked.size())
        , m_components(recipe.components.size())
        , m_isDone(recipe.components.size(), false)
        , m_asIngredient(recipe.components.size())
    {
        for (std::size_t i = 0; i < m_components.size(); ++i)
            prepare(i);
    }

    Preparation done() &&
    {
        for (const PreparedComponent& component : m_components) {
            for (const PreparedRow& row : component.rows)
                if (row.ingredient)
                    m_ingredients.push_back(row.ingredient);
        }
        std::ranges::sort(m_ingredients);
        const auto repeated = std::ranges::unique(m_ingredients);
        m_ingredients.erase(repeated.begin(), repeated.end());
        return {std::move(m_components), std::move(m_ingredients)};
    }

private:
    struct LinkedMix {
        Ingredient asIngredient;
        bool isCountedWhole;  // all rows of the linked recipe
    };

    /// What a row's name stands for.
    struct Meaning {
        const Ingredient* ingredient = nullptr;
        bool isMix = false;  // of another component or a linked recipe
        std::optional<Sentence> problem = {};
        std::string unknownName = {};
        std::vector<std::string> suggestions = {};
        std::optional<Sentence> takenAs = {};
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
            compositions.push_back(addRow(result, row, workingOfRow(index, result.rows.size())));
        giveShares(result, index);
        sayWhatLinkedRecipesLack(result, compositions);
        for (std::size_t i = 0; i < result.rows.size(); ++i) {
            PreparedRow& row = result.rows[i];
            if (!compositions[i] || row.analysis.mass.value <= 0.0)
                continue;
            result.weighedOut.add(*compositions[i], row.analysis.mass);
            if (row.ingredient && row.ingredient->spread.sugars_sd && !component.rows[i].measuredBrix)
                result.sugarsVariance_g2 += std::pow(row.analysis.mass.value / 100.0 * *row.ingredient->spread.sugars_sd, 2);
        }
        if (m_workings)
            recordWeighedOut(*m_workings, m_recipe, index, result, compositions);
        for (std::size_t i = 0; i < result.rows.size(); ++i)
            result.rows[i].analysis.share =
                compositions[i] ? shareOf(result.rows[i].analysis.mass, result.weighedOut) : MassFraction{};
        if (m_workings)
            recordShares(*m_workings, m_recipe, index, result);
        result.steps = outcomesOf(component.steps, result.weighedOut, rowsForSteps(component, result, compositions));
        result.isPartOfAnother = m_components[index].isPartOfAnother;
        m_components[index] = std::move(result);
        m_asIngredient[index] = asIngredient(component.name, m_components[index].mix(), "the mix of this component");
        m_isDone[index] = true;
        m_chain.pop_back();
    }

    /// Weighs a row in; the composition lives as long as this object. Shares of the mix have no mass yet.
    const Composition* addRow(PreparedComponent& component, const Row& row, Working* working)
    {
        PreparedRow prepared;
        RowAnalysis& result = prepared.analysis;
        result.text = textOf(row);
        Meaning meaning = meaningOf(row);
        const Composition* composition = meaning.ingredient ? &meaning.ingredient->composition : nullptr;
        if (!meaning.ingredient) {
            if (const auto mass = weighWithoutIngredient(row.amount, working)) {
                result.mass = mass->mass;
                result.how = mass->how;
            }
            result.problem = std::move(meaning.problem);
            result.unknownName = std::move(meaning.unknownName);
            result.suggestions = std::move(meaning.suggestions);
        } else {
            prepared.ingredient = meaning.isMix ? nullptr : meaning.ingredient;
            result.ingredientId = meaning.ingredient->id;
            result.ingredientName = meaning.ingredient->name;
            result.takenAs = std::move(meaning.takenAs);
            if (row.measuredBrix)
                composition = measured(row, *meaning.ingredient, result);
            result.ribbon = ribbonOf(composition->per100g);
            weighIn(row, *meaning.ingredient, result, working);
        }
        component.rows.push_back(std::move(prepared));
        return composition;
    }

    const Composition* measured(const Row& row, const Ingredient& ingredient, RowAnalysis& result)
    {
        auto found = measuredComposition(ingredient.composition, *row.measuredBrix);
        if (!found) {
            result.problem = found.error();
            result.isProblemOfReading = true;
            return &ingredient.composition;
        }
        return m_measured.emplace_back(std::make_unique<Composition>(*found)).get();
    }

    static void weighIn(const Row& row, const Ingredient& ingredient, RowAnalysis& result, Working* working)
    {
        if (row.amount.value <= 0.0) {
            result.isProblemOfReading = false;
            result.problem = row.note.empty() ? phrase("“{0}” has no amount and is ignored. Type one, or leave it.", row.ingredient)
                                              : phrase("“{0}” ({1}) has no weight and is ignored. Type an amount, or leave it.",
                                                  row.ingredient, row.note);
            return;
        }
        if (row.amount.unit == Unit::PercentOfMix)
            return;
        if (const auto mass = weightOf(row.amount, row, ingredient, working)) {
            result.mass = mass->mass;
            result.how = mass->how;
        } else {
            result.isProblemOfReading = false;
            result.problem = mass.error();
        }
    }

    Meaning meaningOf(const Row& row)
    {
        if (row.ingredient.empty())
            return {nullptr, false, phrase("A row has no ingredient and is ignored. Name it or delete it.")};
        if (auto fault = faultOfLine(row)) {
            if (const Ingredient* named = namedIn(row.ingredient))
                m_ingredients.push_back(named);
            return {nullptr, false, std::move(fault)};
        }
        if (const Ingredient* mix = linked(row.ingredient))
            return {mix, true, {}};
        const Recognised recognised = find(row.ingredient);
        if (recognised.how == Recognition::AsWritten)
            return {recognised.ingredient, false, {}};
        const auto named = std::find_if(m_recipe.components.begin(), m_recipe.components.end(),
            [name = folded(row.ingredient)](const Component& c) { return !c.name.empty() && folded(c.name) == name; });
        if (named == m_recipe.components.end())
            return recognised.ingredient ? Meaning{.ingredient = recognised.ingredient, .takenAs = sentenceFor(recognised)}
                                         : unknown(row.ingredient);
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

    /// What a line names whose amount cannot be read: the longest end of it that is a name as written or a general word. It has no weight, but
    /// its allergens are in the kitchen all the same.
    const Ingredient* namedIn(std::string_view line) const
    {
        while (!line.empty()) {
            const Recognised recognised = find(std::string(line));
            if (recognised.how == Recognition::AsWritten || recognised.how == Recognition::ByDefault)
                return recognised.ingredient;
            const std::size_t blank = line.find(' ');
            line = blank == std::string_view::npos ? std::string_view() : line.substr(blank + 1);
        }
        return nullptr;
    }

    /// The recipe's own ingredient, or the catalogue's.
    Recognised find(const std::string& name) const
    {
        Recognised found = Catalogue::recogniseIn({&m_own, &m_catalogue}, name);
        const auto own = std::ranges::find(m_own.all(), found.ingredient, [](const Ingredient& each) { return &each; });
        if (own != m_own.all().end())
            found.ingredient = &m_recipe.ingredients[std::size_t(own - m_own.all().begin())];
        return found;
    }

    static Sentence sentenceFor(const Recognised& recognised)
    {
        return recognised.how == Recognition::ByDefault ? phrase("taken as {0}; choose another", recognised.ingredient->name)
                                                        : phrase("read as {0}", recognised.ingredient->name);
    }

    Meaning unknown(const std::string& name) const
    {
        Meaning meaning{.unknownName = name};
        for (const Ingredient* near : matchName({&m_own, &m_catalogue}, name).others)
            meaning.suggestions.push_back(near->name);
        meaning.problem = unknownNameSentence(name, meaning.suggestions);
        return meaning;
    }

    /// The mix of a linked recipe of this name, made when it is first asked for.
    const Ingredient* linked(const std::string& name)
    {
        if (m_recipe.linked.empty())
            return nullptr;
        const auto link =
            std::ranges::find(m_recipe.linked, folded(name), [](const LinkedRecipe& each) { return folded(each.name); });
        if (link == m_recipe.linked.end())
            return nullptr;
        auto& mix = m_linked[std::size_t(link - m_recipe.linked.begin())];
        if (mix)
            return &mix->asIngredient;
        const Preparation preparation = prepared(link->recipe, m_catalogue);
        m_ingredients.insert(m_ingredients.end(), preparation.ingredients.begin(), preparation.ingredients.end());
        Mix whole;
        bool isCountedWhole = true;
        for (const PreparedComponent& component : preparation.components) {
            if (!component.isPartOfAnother)
                whole.add(component.mix());
            isCountedWhole &=
                std::ranges::none_of(component.rows, [](const auto& row) { return row.analysis.problem.has_value(); });
        }
        mix = {asIngredient(link->name, whole, "the mix of the linked recipe"), isCountedWhole};
        return &mix->asIngredient;
    }

    void sayWhatLinkedRecipesLack(PreparedComponent& result, const std::vector<const Composition*>& compositions) const
    {
        for (std::size_t i = 0; i < result.rows.size(); ++i) {
            std::optional<Sentence>& problem = result.rows[i].analysis.problem;
            for (const auto& linked : m_linked)
                if (linked && !linked->isCountedWhole && compositions[i] == &linked->asIngredient.composition && !problem)
                    problem = phrase(
                        "Not all rows of the linked recipe “{0}” are counted. Open it and mend them.", linked->asIngredient.name);
        }
    }

    /// Rows in % of the mix: the weighed rows of the component are what is left of 100 %.
    void giveShares(PreparedComponent& result, std::size_t index)
    {
        const Component& component = m_recipe.components[index];
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
            if (Working* working = fits ? workingOfRow(index, i) : nullptr)
                recordShare(*working, weighed, asked_percent, total, amount, row.mass);
            if (!fits)
                row.problem = asked_percent >= 100.0
                                  ? phrase("The rows in % of the mix add up to {0} %. Leave room for the weighed rows.",
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

    Working* workingOfRow(std::size_t component, std::size_t row) const
    {
        return m_workings ? &m_workings->of(figureOfRow(m_recipe, component, row)) : nullptr;
    }

    const Recipe& m_recipe;
    const Catalogue& m_catalogue;
    Workings* m_workings;
    Catalogue m_own;                                 // copies of the recipe's ingredients
    std::vector<std::optional<LinkedMix>> m_linked;  // mixes of the linked recipes that rows name
    std::vector<const Ingredient*> m_ingredients;
    std::vector<PreparedComponent> m_components;
    std::vector<bool> m_isDone;
    std::vector<Ingredient> m_asIngredient;
    std::vector<std::size_t> m_chain;  // of components being prepared, each for the one before it
    std::vector<std::unique_ptr<Composition>> m_measured;
};

}  // namespace

Preparation prepared(const Recipe& recipe, const Catalogue& catalogue, Workings* workings)
{
    return Work(recipe, catalogue, workings).done();
}

}  // namespace firn
