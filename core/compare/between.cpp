#include "compare/between.h"

#include "compare/compared_rows.h"
#include "compare/header_differences.h"
#include "recipe/scaling.h"

#include <algorithm>

namespace firn {

namespace {

const std::vector<Step>& stepsOf(const Recipe& recipe, std::optional<std::size_t> component)
{
    static const std::vector<Step> none;
    return component ? recipe.components[*component].steps : none;
}

/// What steps do to a mix, whatever is noted beside them.
std::vector<Loss> lossesOf(const std::vector<Step>& steps)
{
    std::vector<Loss> losses;
    for (const Step& step : steps)
        if (!std::holds_alternative<std::monostate>(step.loss))
            losses.push_back(step.loss);
    return losses;
}

/// Calls `found` with each thing that both lists have under one name as something else.
template <class Thing, class Name, class Found>
void forEachOther(const std::vector<Thing>& from, const std::vector<Thing>& to, Name Thing::*name, Found found)
{
    for (const Thing& thing : from) {
        const auto other = std::ranges::find(to, thing.*name, name);
        if (other != to.end() && !(*other == thing))
            found(thing);
    }
}

/// The first list with what only the second one has, and with the second one's where `isOther` says so.
template <class Thing, class Name, class IsOther>
std::vector<Thing> united(const std::vector<Thing>& from, const std::vector<Thing>& to, Name Thing::*name, IsOther isOther)
{
    std::vector<Thing> result = from;
    for (const Thing& thing : to) {
        const auto same = std::ranges::find(result, thing.*name, name);
        if (same == result.end())
            result.push_back(thing);
        else if (isOther(thing.*name))
            *same = thing;
    }
    return result;
}

}  // namespace

Between::Between(
    std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t other, double batchFactor)
    : m_from(recipes.front())
    , m_to(recipes[other])
    , m_matching(matching)
    , m_other(other)
    , m_factor(batchFactor)
    , m_start(batchFactor == 1.0 ? *recipes.front().recipe : scaled(*recipes.front().recipe, batchFactor))
{
    for (std::size_t i = 0; i < matching.size(); ++i)
        findRows(i);
    for (std::size_t i = 0; i < matching.size(); ++i)
        findSteps(i);
    findMakes();
    if (const Celsius from = m_from.analysis->conditions.serveAt, to = m_to.analysis->conditions.serveAt; from != to)
        m_changes.push_back({Change::ServingTemperature, Change::Other, 0, 0, {},
            phrase("served at {0} → {1}", temperatureFigure(from, 1), temperatureFigure(to, 1))});
}

const Row* Between::rowOf(const Recipe& recipe, std::size_t side, const MatchedComponent& component, const MatchedLine& line) const
{
    return line.rows[side] ? &recipe.components[*component.components[side]].rows[*line.rows[side]] : nullptr;
}

bool Between::matters(const MatchedComponent& component, const MatchedLine& line) const
{
    const Row& from = *rowOf(m_start, 0, component, line);
    const Row& to = *rowOf(*m_to.recipe, m_other, component, line);
    if (isSameAmount(from.amount, to.amount, 1.0) && from.ingredient == to.ingredient && from.note == to.note
        && from.measuredBrix == to.measuredBrix)
        return false;
    const RowAnalysis& weighedFrom = m_from.analysis->components[*component.components[0]][*line.rows[0]];
    const RowAnalysis& weighedTo = m_to.analysis->components[*component.components[m_other]][*line.rows[m_other]];
    const bool isWeighed = from.amount.unit != Unit::PercentOfMix && to.amount.unit != Unit::PercentOfMix
                           && !weighedFrom.ingredientId.empty() && weighedFrom.mass.value > 0.0;
    const bool hasSteps = !stepsOf(m_start, component.components[0]).empty()
                          || !stepsOf(*m_to.recipe, component.components[m_other]).empty();  // which may name the row
    return !isWeighed || hasSteps || from.measuredBrix != to.measuredBrix
           || !isSameMass(weighedFrom.mass, weighedTo.mass, m_factor);
}

void Between::findRows(std::size_t index)
{
    const MatchedComponent& component = m_matching[index];
    for (std::size_t i = 0; i < component.lines.size(); ++i) {
        const MatchedLine& line = component.lines[i];
        const Row* from = rowOf(m_start, 0, component, line);
        const Row* to = rowOf(*m_to.recipe, m_other, component, line);
        if (from && to && matters(component, line)) {
            const bool isReading = from->measuredBrix != to->measuredBrix && isSameAmount(from->amount, to->amount, 1.0);
            m_changes.push_back({Change::Row, Change::Other, index, i, from->ingredient,
                isReading ? phrase("{0}: another °Bx measured", from->ingredient)
                          : phrase("{0}: {1} → {2}", from->ingredient, amountText(from->amount), amountText(to->amount))});
        } else if (from && !to) {
            m_changes.push_back({Change::Row, Change::LeftOut, index, i, from->ingredient,
                phrase("{0} left out: {1}", from->ingredient, amountText(from->amount))});
        } else if (to && !from) {
            m_changes.push_back({Change::Row, Change::Added, index, i, to->ingredient,
                phrase("{0} added: {1}", to->ingredient, amountText(to->amount))});
        }
    }
}

void Between::findSteps(std::size_t index)
{
    const MatchedComponent& component = m_matching[index];
    const auto from = component.components[0], to = component.components[m_other];
    if (!from || !to || lossesOf(stepsOf(m_start, from)) == lossesOf(stepsOf(*m_to.recipe, to)))
        return;
    const std::string& name = m_start.components[*from].name;
    m_changes.push_back(
        {Change::Steps, Change::Other, index, 0, name, name.empty() ? phrase("steps") : phrase("steps of {0}", name)});
}

void Between::findMakes()
{
    forEachOther(m_start.ingredients, m_to.recipe->ingredients, &Ingredient::id, [this](const Ingredient& ingredient) {
        m_changes.push_back({Change::OwnIngredient, Change::Other, 0, 0, ingredient.id,
            phrase("own ingredient {0}: another composition", ingredient.name)});
    });
    forEachOther(m_start.linked, m_to.recipe->linked, &LinkedRecipe::name, [this](const LinkedRecipe& linked) {
        m_changes.push_back(
            {Change::LinkedRecipe, Change::Other, 0, 0, linked.name, phrase("linked recipe {0} changed", linked.name)});
    });
}

Component Between::componentWith(std::size_t index, const std::vector<bool>& isMade) const
{
    const MatchedComponent& matched = m_matching[index];
    const auto from = matched.components[0], to = matched.components[m_other];
    Component component;
    if (!from && !to)
        return component;
    component.name = from ? m_start.components[*from].name : m_to.recipe->components[*to].name;
    component.steps = from ? m_start.components[*from].steps : m_to.recipe->components[*to].steps;
    std::vector<const Row*> rows;
    for (const MatchedLine& line : matched.lines) {
        const Row* before = rowOf(m_start, 0, matched, line);
        rows.push_back(before);
    }
    for (std::size_t i = 0; i < m_changes.size(); ++i) {
        const Change& change = m_changes[i];
        if (!isMade[i] || change.component != index)
            continue;
        if (change.kind == Change::Row)
            rows[change.line] = rowOf(*m_to.recipe, m_other, matched, matched.lines[change.line]);
        else if (change.kind == Change::Steps)
            component.steps = m_to.recipe->components[*to].steps;
    }
    for (const Row* row : rows)
        if (row)
            component.rows.push_back(*row);
    return component;
}

Recipe Between::with(const std::vector<bool>& isMade) const
{
    const auto isChanged = [&](Change::Kind kind) {
        return [this, &isMade, kind](const std::string& name) {
            for (std::size_t i = 0; i < m_changes.size(); ++i)
                if (isMade[i] && m_changes[i].kind == kind && m_changes[i].name == name)
                    return true;
            return false;
        };
    };
    Recipe recipe;
    recipe.components.clear();
    for (std::size_t i = 0; i < m_matching.size(); ++i)
        recipe.components.push_back(componentWith(i, isMade));
    recipe.ingredients = united(m_start.ingredients, m_to.recipe->ingredients, &Ingredient::id, isChanged(Change::OwnIngredient));
    recipe.linked = united(m_start.linked, m_to.recipe->linked, &LinkedRecipe::name, isChanged(Change::LinkedRecipe));
    return recipe;
}

Celsius Between::servedAt(const std::vector<bool>& isMade) const
{
    const bool isOther = !m_changes.empty() && m_changes.back().kind == Change::ServingTemperature && isMade.back();
    return (isOther ? m_to : m_from).analysis->conditions.serveAt;
}

}  // namespace firn
