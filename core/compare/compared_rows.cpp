#include "compare/compared_rows.h"

#include "analysis/weighing_working.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

constexpr double roundingOfDoubles = 1e-9;  // amounts that were scaled and scaled back

bool isClose(double a, double b) { return std::abs(a - b) <= roundingOfDoubles * std::max(std::abs(a), std::abs(b)); }

/// The cook's own ingredient or the linked recipe that a row stands for, in its recipe.
template <class Thing, class Name>
const Thing* ownOf(const std::vector<Thing>& things, const std::string& name, Name Thing::*called)
{
    const auto found = std::ranges::find_if(things, [&](const Thing& thing) { return folded(thing.*called) == folded(name); });
    return found == things.end() ? nullptr : &*found;
}

bool differs(const auto* a, const auto* b) { return a && b && !(*a == *b); }

bool isSameIngredient(const WeighedRecipe& first, const WeighedRecipe& other, const RowAnalysis& a, const Row& row)
{
    return !differs(ownOf(first.recipe->ingredients, a.ingredientId, &Ingredient::id),
               ownOf(other.recipe->ingredients, a.ingredientId, &Ingredient::id))
           && !differs(ownOf(first.recipe->linked, row.ingredient, &LinkedRecipe::name),
               ownOf(other.recipe->linked, row.ingredient, &LinkedRecipe::name));
}

struct PlacedRow {
    const WeighedRecipe& side;
    const Row& row;
    const RowAnalysis& analysis;
    std::string figure;
};

RowDifference differenceOf(const PlacedRow& first, const PlacedRow& other, double factor)
{
    if (!isSameIngredient(first.side, other.side, first.analysis, first.row))
        return RowDifference::Ingredient;
    if (first.row.measuredBrix != other.row.measuredBrix)
        return RowDifference::Reading;
    const bool isShare = first.row.amount.unit == Unit::PercentOfMix && other.row.amount.unit == Unit::PercentOfMix;
    const double a = isShare ? first.row.amount.value : first.analysis.mass.value * factor;
    const double b = isShare ? other.row.amount.value : other.analysis.mass.value;
    if (a > 0.0 && b > 0.0 ? !isClose(a, b) : !isSameAmount(first.row.amount, other.row.amount, factor))
        return b < a || (a == b && other.row.amount.value < first.row.amount.value * factor) ? RowDifference::Less
                                                                                             : RowDifference::More;
    const bool isWordForWord = first.row.ingredient == other.row.ingredient && first.row.note == other.row.note
                               && isSameAmount(first.row.amount, other.row.amount, factor);
    return isWordForWord ? RowDifference::Same : RowDifference::Wording;
}

std::optional<PlacedRow> rowOf(
    std::span<const WeighedRecipe> recipes, const MatchedComponent& component, const MatchedLine& line, std::size_t side)
{
    if (!line.rows[side])
        return std::nullopt;
    const std::size_t index = *component.components[side];
    return PlacedRow{recipes[side], recipes[side].recipe->components[index].rows[*line.rows[side]],
        recipes[side].analysis->components[index][*line.rows[side]], figureOfRow(*recipes[side].recipe, index, *line.rows[side])};
}

ComparedCell cellOf(const std::optional<PlacedRow>& first, const std::optional<PlacedRow>& row, double perBasis, double factor)
{
    ComparedCell cell;
    if (row) {
        cell.isThere = true;
        cell.written = amountText(row->row.amount);
        cell.mass = row->analysis.mass * perBasis;
        cell.problem = row->analysis.problem;
        cell.figure = row->figure;
        cell.difference = first ? differenceOf(*first, *row, factor) : RowDifference::Added;
    } else if (first) {
        cell.difference = RowDifference::LeftOut;
    }
    return cell;
}

std::string nameOfRow(const PlacedRow& row) { return row.row.ingredient; }

}  // namespace

std::string_view nameOf(RowDifference difference)
{
    constexpr std::array<std::string_view, 8> names = {
        "same", "written differently", "less", "more", "another reading", "another ingredient", "added", "left out"};
    return names.at(static_cast<std::size_t>(difference));
}

std::string_view markOf(RowDifference difference)
{
    constexpr std::array<std::string_view, 8> marks = {"", "~", "▼", "▲", "≠", "≠", "+", "−"};
    return marks.at(static_cast<std::size_t>(difference));
}

Figure figureOf(Grams mass) { return {mass.value, mass.value < 0.995 ? 2 : mass.value < 99.95 ? 1 : 0}; }

bool isSameMass(Grams first, Grams other, double factor) { return isClose(first.value * factor, other.value); }

bool isSameAmount(const Amount& first, const Amount& other, double factor)
{
    if (first.unit != other.unit)
        return false;
    return isClose(first.unit == Unit::PercentOfMix ? first.value : first.value * factor, other.value);
}

double batchFactor(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t side)
{
    std::vector<double> ratios;
    for (const MatchedComponent& component : matching) {
        for (const MatchedLine& line : component.lines) {
            const auto first = rowOf(recipes, component, line, 0), other = rowOf(recipes, component, line, side);
            if (first && other && first->row.amount.unit != Unit::PercentOfMix && first->analysis.mass.value > 0.0
                && other->analysis.mass.value > 0.0)
                ratios.push_back(other->analysis.mass / first->analysis.mass);
        }
    }
    const auto countOf = [&](double ratio) { return std::ranges::count_if(ratios, [&](double r) { return isClose(r, ratio); }); };
    double best = 1.0;
    std::ptrdiff_t most = std::max<std::ptrdiff_t>(1, countOf(1.0));
    for (const double ratio : ratios) {
        if (const auto count = countOf(ratio); count > most) {
            most = count;
            best = ratio;
        }
    }
    return best;
}

std::vector<ComparedComponent> comparedRows(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching,
    std::span<const double> perBasis, std::span<const double> batchFactors)
{
    std::vector<ComparedComponent> result;
    for (const MatchedComponent& component : matching) {
        ComparedComponent& compared = result.emplace_back();
        for (std::size_t side = 0; side < recipes.size() && compared.name.empty(); ++side)
            if (component.components[side])
                compared.name = recipes[side].recipe->components[*component.components[side]].name;
        for (const MatchedLine& line : component.lines) {
            ComparedRow& row = compared.rows.emplace_back();
            const auto first = rowOf(recipes, component, line, 0);
            for (std::size_t side = 0; side < recipes.size(); ++side) {
                const auto placed = rowOf(recipes, component, line, side);
                row.cells.push_back(cellOf(first, placed, perBasis[side], batchFactors[side]));
                if (side == 0)
                    row.cells.back().difference = RowDifference::Same;
                if (placed && row.name.empty())
                    row.name = nameOfRow(*placed);
            }
        }
    }
    return result;
}

}  // namespace firn
