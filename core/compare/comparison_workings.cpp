#include "compare/comparison_workings.h"

#include <fmt/format.h>

namespace firn {

namespace {

bool isInBasis(const ComparedSide& side) { return side.perBasis != 1.0; }

/// The comparison calls a volume as its report does, which has no temperature in it.
std::string keyOf(const ComparedFigure& figure)
{
    return figure.key == "finished_volume_ml" ? "finished_volume_ml_20c" : std::string(figure.key);
}

std::string inBasis(const std::string& key) { return "compared." + key; }

void recordInBasis(Workings& workings, const std::string& key, double value, const ComparedSide& side, const Basis& basis)
{
    const Working* ofWhole = workings.find(key);
    if (!ofWhole)
        return;
    Symbol whole = ofWhole->steps().back().result;
    whole.figure = key;
    const Symbol mass{"m", "mix", side.analysis.mass.value, "g", phrase("mass of the mix"), "mass_g"};
    const Symbol factor{"f", "", side.perBasis, "", phrase("what is compared, as a part of the whole mix")};
    const Symbol result{whole.name, whole.subscript + ",compared", value, whole.unit,
        phrase("{0}, in the mass that is compared", english(whole.meaning)), {}, whole.decimals};
    const double compared_g = basis.per == Basis::Portion ? basis.portion.value : 100.0;
    Working& working = workings.of(inBasis(key));
    working.found(factor, Number{compared_g, "g"} / Formula(mass), Source::Definition);
    working.found(result, factor * Formula(whole), Source::Definition);
}

/// The figure of one side in a difference; none where it has none.
std::optional<Symbol> symbolOf(const Workings& workings, const std::string& key, std::size_t number, const std::string& name)
{
    const Working* working = workings.find(key);
    if (!working)
        return std::nullopt;
    Symbol symbol = working->steps().back().result;
    symbol.subscript += fmt::format("{}{}", symbol.subscript.empty() ? "" : ",", number + 1);
    symbol.meaning = phrase("{0}: “{1}”", english(symbol.meaning), name);
    symbol.figure = fmt::format("sides[{}].{}", number, key);
    return symbol;
}

/// Both sides of a difference, as they are called in it.
struct Pair {
    const Workings& first;
    const Workings& other;
    const std::string& nameOfFirst;
    const std::string& nameOfOther;
};

/// Writes down the difference; nothing, and null, where one of both has no such figure.
WorkingStep* recordDifference(
    Working& working, const Pair& pair, const std::pair<std::string, std::string>& keys, Sentence meaning, double difference)
{
    const auto from = symbolOf(pair.first, keys.first, 0, pair.nameOfFirst),
               to = symbolOf(pair.other, keys.second, 1, pair.nameOfOther);
    if (!from || !to)
        return nullptr;
    const Symbol whole = pair.first.find(keys.first)->steps().back().result;
    return &working.found({"Δ" + whole.name, whole.subscript, difference, whole.unit, std::move(meaning)},
        Formula(*to) - Formula(*from), Source::Definition);
}

void recordChange(
    Workings& workings, const Comparison& comparison, std::size_t side, const ComparedFigure& figure, const Pair& pair)
{
    if (!figure.changes[side])
        return;
    Working& working = workings.of(figureOfChange(figure));
    const auto keys = std::pair(figureOfSide(figure, comparison.sides.front()), figureOfSide(figure, comparison.sides[side]));
    if (WorkingStep* step =
            recordDifference(working, pair, keys, phrase("{0}: change", std::string(figure.label)), *figure.changes[side]))
        step->range = phrase("Where the figures are shown rounded, their difference is that of the rounded ones.");
}

void recordAttribution(Workings& workings, const Attribution& attribution, const AttributedKind& kind, const Pair& pair)
{
    const AttributedFigure& figure = attribution.*kind.figure;
    if (figure.whyNone || figure.parts.empty())
        return;
    Working& working = workings.of(figureOfAttribution(kind));
    const std::string key(kind.figureKey);
    const WorkingStep* difference =
        recordDifference(working, pair, {key, key}, phrase("{0}: what did it", std::string(kind.label)), *figure.to - *figure.from);
    if (!difference)
        return;
    const Symbol whole = difference->result;
    std::vector<SeriesTerm> terms;
    for (std::size_t i = 0; i < figure.parts.size(); ++i)
        terms.push_back({english(attribution.changes[i].what),
            Symbol{"p", fmt::format("{}", i + 1), figure.parts[i], whole.unit, attribution.changes[i].what}});
    WorkingStep& step =
        working.found(whole, series("i", Symbol{"p", "i", 0.0, whole.unit, phrase("what a change accounts for")}, std::move(terms)),
            Source::Attribution);
    const Figure orders{double(attribution.orders), 0};
    step.method =
        attribution.isSample
            ? phrase("What each change accounts for is the mean of what it does in its turn, over {0} orders in which all changes "
                     "can be made one at a time: a sample that is the same each time, each order with its reverse.",
                orders)
            : phrase(
                "What each change accounts for is the mean of what it does in its turn, over {0} orders in which the changes can "
                "be made one at a time.",
                orders);
    step.uncertainty = phrase("Orders that pass through a mix that cannot be trusted are left out as long as others are left.");
}

}  // namespace

std::string figureOfSide(const ComparedFigure& figure, const ComparedSide& side)
{
    return figure.isOfBatch && isInBasis(side) ? inBasis(keyOf(figure)) : keyOf(figure);
}

std::string figureOfSide(const ComparedCell& cell, const ComparedSide& side)
{
    return isInBasis(side) ? inBasis(cell.figure) : cell.figure;
}

std::string figureOfChange(const ComparedFigure& figure) { return "change." + keyOf(figure); }

std::string figureOfAttribution(const AttributedKind& kind) { return fmt::format("attribution.{}", kind.key); }

Workings workingsOfSide(const Comparison& comparison, std::size_t side, const Catalogue& catalogue)
{
    const ComparedSide& compared = comparison.sides[side];
    Workings workings;
    analyse(compared.recipe, catalogue, compared.analysis.conditions, {}, {}, &workings);
    if (!isInBasis(compared))
        return workings;
    for (const ComparedFigure& figure : comparison.figures)
        if (figure.isOfBatch && figure.values[side])
            recordInBasis(workings, keyOf(figure), *figure.values[side], compared, comparison.basis);
    for (const ComparedComponent& component : comparison.components)
        for (const ComparedRow& row : component.rows)
            if (const ComparedCell& cell = row.cells[side]; cell.isThere)
                recordInBasis(workings, cell.figure, cell.mass.value, compared, comparison.basis);
    return workings;
}

Workings workingsOfDifferences(const Comparison& comparison, std::size_t side, const Workings& first, const Workings& other)
{
    const Pair pair{first, other, comparison.sides.front().name, comparison.sides[side].name};
    Workings workings;
    for (const ComparedFigure& figure : comparison.figures)
        recordChange(workings, comparison, side, figure, pair);
    for (const AttributedKind& kind : attributedKinds())
        recordAttribution(workings, comparison.attributions[side - 1], kind, pair);
    return workings;
}

}  // namespace firn
