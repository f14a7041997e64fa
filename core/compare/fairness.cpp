#include "compare/fairness.h"

#include "units/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

using Sentences = std::vector<Sentence>;

/// The largest error of the freezing point against the tables of pure solutions, docs/models.md.
constexpr double freezingPointError_k = 0.05;
/// The edges between firmnesses, docs/models.md (judgement).
constexpr double firmnessEdge_points = 3.0;
/// Two samples count as of one age within an hour, or a tenth of it (judgement).
constexpr double sameAge_h = 1.0;
constexpr double sameAgeShare = 0.1;
/// The play of a good thermometer (common practice).
constexpr double sameTemperature_k = 0.5;

std::string names(const std::vector<std::string>& all)
{
    constexpr std::size_t mostNamed = 6;
    std::string text;
    for (std::size_t i = 0; i < all.size() && i < mostNamed; ++i)
        text += (i == 0 ? "" : ", ") + shortened(all[i]);
    return all.size() > mostNamed ? text + " …" : text;
}

std::string wordOf(Process process)
{
    switch (process) {
    case Process::Still:
        return "frozen without stirring";
    case Process::Unfrozen:
        return "not frozen";
    default:
        return std::string(keyOf(process));
    }
}

void addConditions(Sentences& sentences, const Comparison& comparison)
{
    const ComparedSide& first = comparison.sides.front();
    for (std::size_t i = 1; i < comparison.sides.size(); ++i) {
        const ComparedSide& side = comparison.sides[i];
        const Conditions &a = first.analysis.conditions, &b = side.analysis.conditions;
        if (a.serveAt != b.serveAt)
            sentences.push_back(phrase("“{0}” is served at {1} and “{2}” at {3}: ice and firmness differ for that reason too. "
                                       "Choose one serving temperature to compare the mixes.",
                first.name, temperatureFigure(a.serveAt, 1), side.name, temperatureFigure(b.serveAt, 1)));
        if (a.freezerAt != b.freezerAt)
            sentences.push_back(phrase("“{0}” is kept at {1} and “{2}” at {3}: the ice in the freezer differs for that reason too.",
                first.name, temperatureFigure(a.freezerAt, 1), side.name, temperatureFigure(b.freezerAt, 1)));
        if (first.analysis.texture.process != side.analysis.texture.process)
            sentences.push_back(phrase("“{0}” is {1} and “{2}” is {3}: the texture differs whatever is in the mix.", first.name,
                wordOf(first.analysis.texture.process), side.name, wordOf(side.analysis.texture.process)));
        constexpr double roundingOfDoubles = 1e-9;
        if (std::abs(side.batchFactor - 1.0) > roundingOfDoubles)
            sentences.push_back(phrase("“{0}” is made in {1} times the amounts of “{2}”: rows are compared in proportion.",
                side.name, Figure{side.batchFactor, 2}, first.name));
    }
}

void addWhatIsNotCounted(Sentences& sentences, const Comparison& comparison)
{
    for (const ComparedSide& side : comparison.sides) {
        if (side.analysis.mix.isEmpty()) {
            sentences.push_back(phrase("Nothing in “{0}” has a weight: there is nothing to compare with.", side.name));
            continue;
        }
        for (const auto& rows : side.analysis.components) {
            for (const RowAnalysis& row : rows)
                if (row.problem)
                    sentences.push_back(phrase("In “{0}”, “{1}” is not counted, or not all of it: what it does is left out.",
                        side.name, shortened(row.text)));
        }
    }
    for (std::size_t i = 1; i < comparison.sides.size(); ++i) {
        const auto& whyNone = comparison.attributions[i - 1].freezingPoint_c.whyNone;
        const bool isSaid = comparison.sides.front().analysis.mix.isEmpty() || comparison.sides[i].analysis.mix.isEmpty();
        if (whyNone && !isSaid)
            sentences.push_back(*whyNone);
    }
}

/// What was changed, whether or not it matters to the mix.
std::vector<std::string> changedThings(const Comparison& comparison, std::size_t side)
{
    std::vector<std::string> changed;
    for (const Change& change : comparison.attributions[side - 1].changes) {
        if (change.kind == Change::Row || change.kind == Change::LinkedRecipe || change.kind == Change::OwnIngredient)
            changed.push_back(change.name);
        else if (change.kind == Change::Steps)
            changed.emplace_back("steps");
        else if (change.kind == Change::ServingTemperature)
            changed.emplace_back("serving temperature");
    }
    const ComparedSide &first = comparison.sides.front(), &other = comparison.sides[side];
    if (first.analysis.texture.process != other.analysis.texture.process)
        changed.emplace_back("the way of freezing");
    constexpr double sameOverrun_percent = 0.5;
    if (std::abs(first.analysis.overrun_percent - other.analysis.overrun_percent) > sameOverrun_percent)
        changed.emplace_back("overrun");
    return changed;
}

void addManyChanges(Sentences& sentences, const Comparison& comparison)
{
    for (std::size_t i = 1; i < comparison.sides.size(); ++i) {
        const auto changed = changedThings(comparison, i);
        const std::string& name = comparison.sides[i].name;
        if (changed.empty())
            sentences.push_back(phrase("“{0}” and “{1}” are the same mix.", comparison.sides.front().name, name));
        else if (changed.size() == 2)
            sentences.push_back(
                phrase("Two things changed at once in “{0}”: {1}. The sums can tell them apart; your tongue cannot.", name,
                    names(changed)));
        else if (changed.size() > 2)
            sentences.push_back(
                phrase("{0} things changed at once in “{1}”: {2}. The sums can tell them apart; your tongue cannot.",
                    Figure{double(changed.size()), 0}, name, names(changed)));
    }
}

void addSmallDifferences(Sentences& sentences, const Comparison& comparison)
{
    const ComparedFigure* sugars = figureIn(comparison.figures, "percent.sugars");
    const ComparedFigure* point = figureIn(comparison.figures, "freezing_point_c");
    const ComparedFigure* ice = figureIn(comparison.figures, "texture.ice_percent_at_serving");
    const ComparedSide& first = comparison.sides.front();
    for (std::size_t i = 1; i < comparison.sides.size(); ++i) {
        const std::string& name = comparison.sides[i].name;
        const auto shown = [i](const ComparedFigure* figure) { return std::abs(shownChange(*figure, i).value_or(0.0)); };
        const auto isSmall = [shown](const ComparedFigure* figure, double limit) {
            const double change = shown(figure);
            return change > 0.0 && change < limit;
        };
        const double spread = std::hypot(sugars->uncertainties[0], sugars->uncertainties[i]);
        if (isSmall(sugars, spread))
            sentences.push_back(
                phrase("Sugars of “{0}” differ from those of “{1}” by {2} points, which is less than the spread of the "
                       "ingredients, ± {3}: another delivery of fruit can do as much.",
                    name, first.name, Figure{shown(sugars), 1}, Figure{spread, 1}));
        if (isSmall(point, freezingPointError_k))
            sentences.push_back(
                phrase("The freezing point of “{0}” differs from that of “{1}” by {2}, less than the model is good for "
                       "(± {3}).",
                    name, first.name, temperatureDifferenceFigure({shown(point)}, 2),
                    temperatureDifferenceFigure({freezingPointError_k}, 2)));
        if (first.analysis.texture.firmness != comparison.sides[i].analysis.texture.firmness && isSmall(ice, firmnessEdge_points))
            sentences.push_back(
                phrase("“{0}” is called {1} and “{2}” {3}, yet their ice differs by {4} points only, and the edge between is "
                       "known to ± {5}: do not count on feeling it.",
                    first.name, std::string(nameOf(first.analysis.texture.firmness)), name,
                    std::string(nameOf(comparison.sides[i].analysis.texture.firmness)), Figure{shown(ice), 1},
                    Figure{firmnessEdge_points, 0}));
    }
}

bool isSameAge(double a, double b) { return std::abs(a - b) <= std::max(sameAge_h, sameAgeShare * std::max(a, b)); }
bool isSameTemperature(double a, double b) { return std::abs(a - b) <= sameTemperature_k; }

/// The latest that says anything of it.
template <class Record, class Of>
std::optional<double> latest(const std::vector<Record>& records, Of of)
{
    for (auto record = records.rbegin(); record != records.rend(); ++record)
        if (const std::optional<double> value = of(*record))
            return value;
    return std::nullopt;
}

void addRecords(Sentences& sentences, const Comparison& comparison)
{
    const ComparedSide& first = comparison.sides.front();
    const auto served = [](const Tasting& tasting) { return tasting.servedAt_c; };
    const auto age = [](const Tasting& tasting) { return tasting.frozen_h; };
    const auto warmth = [](const BesideReading& reading) {
        return reading.record.instrument == Instrument::BoilingPoint ? std::nullopt : reading.record.temperature_c;
    };
    for (std::size_t i = 1; i < comparison.sides.size(); ++i) {
        const ComparedSide& side = comparison.sides[i];
        const auto hours = [](double value) { return Figure{value, 1}; };
        const auto temperature = [](double value) { return temperatureFigure({value}, 1); };
        const auto compared = [&](auto records, auto of, auto isSame, auto figure, std::string_view words) {
            const auto a = latest(first.*records, of), b = latest(side.*records, of);
            if (a && b && !isSame(*a, *b))
                sentences.push_back(phrase(words, first.name, figure(*a), side.name, figure(*b)));
        };
        compared(&ComparedSide::tastings, served, isSameTemperature, temperature,
            "“{0}” was tasted at {1} and “{2}” at {3}: the colder one seems less sweet and harder. Taste them at one "
            "temperature.");
        compared(&ComparedSide::tastings, age, isSameAge, hours,
            "“{0}” was tasted after {1} h in the freezer and “{2}” after {3} h: ice grows coarse with time. Taste them at one "
            "age.");
        compared(&ComparedSide::readings, warmth, isSameTemperature, temperature,
            "“{0}” was measured at {1} and “{2}” at {3}: compare each with its own computed reading, not the readings as "
            "they are.");
    }
}

}  // namespace

std::vector<Sentence> fairnessOf(const Comparison& comparison)
{
    Sentences sentences;
    addWhatIsNotCounted(sentences, comparison);
    addConditions(sentences, comparison);
    addManyChanges(sentences, comparison);
    addSmallDifferences(sentences, comparison);
    addRecords(sentences, comparison);
    return sentences;
}

}  // namespace firn
