#include "compare/comparison.h"

#include "compare/fairness.h"
#include "texture/serving.h"

#include <algorithm>

namespace firn {

namespace {

/// How the whole of it is frozen, where the recipe says so.
std::optional<Process> saidProcess(const Recipe& recipe) { return processOfWhole(recipe); }

/// What the first candidate that says something says.
template <class Of>
auto firstSaid(const std::vector<Candidate>& candidates, Of of) -> decltype(of(candidates.front().recipe))
{
    for (const Candidate& candidate : candidates)
        if (const auto said = of(candidate.recipe))
            return said;
    return std::nullopt;
}

std::optional<Celsius> celsius(std::optional<double> temperature_c)
{
    return temperature_c ? std::optional(Celsius{*temperature_c}) : std::nullopt;
}

Conditions conditionsFor(const Recipe& recipe, const std::vector<Candidate>& candidates, const ComparingWishes& wishes)
{
    const auto serving = [](const Recipe& one) { return celsius(one.serveAt_c); };
    const auto freezer = [](const Recipe& one) { return celsius(one.freezerAt_c); };
    Conditions conditions;
    conditions.serveAt = usualServing(firstSaid(candidates, saidProcess).value_or(Process::Churned));
    const auto choose = [&](Celsius& temperature, const std::optional<Celsius>& wish, auto of) {
        const auto own = of(recipe), common = firstSaid(candidates, of);
        temperature = wish ? *wish : own ? *own : common.value_or(temperature);
    };
    choose(conditions.serveAt, wishes.serveAt, serving);
    choose(conditions.freezerAt, wishes.freezerAt, freezer);
    conditions.readAt = wishes.readAt;
    conditions.instruments = wishes.instruments;
    if (!saidProcess(recipe))
        conditions.process = firstSaid(candidates, saidProcess);
    return conditions;
}

Result<void> checked(const std::vector<Candidate>& candidates, const Basis& basis)
{
    if (candidates.size() < fewestCompared || candidates.size() > mostCompared)
        return failure(phrase("Choose {0} to {1} recipes or versions to compare.", Figure{double(fewestCompared), 0},
            Figure{double(mostCompared), 0}));
    if (basis.per == Basis::Portion && !(basis.portion.value > 0.0 && basis.portion.value <= largestAmount))
        return failure(phrase("A portion must weigh more than 0 g. Correct its mass."));
    return {};
}

}  // namespace

Result<Comparison> compare(const std::vector<Candidate>& candidates, const Catalogue& catalogue, const ComparingWishes& wishes)
{
    if (const auto isFine = checked(candidates, wishes.basis); !isFine)
        return failure(isFine.error());
    Comparison result;
    result.basis = wishes.basis;
    for (const Candidate& candidate : candidates) {
        ComparedSide& side = result.sides.emplace_back();
        side.name = candidate.name;
        side.recipe = candidate.recipe;
        side.analysis = analyse(candidate.recipe, catalogue, conditionsFor(candidate.recipe, candidates, wishes));
        side.perBasis = factorOf(wishes.basis, side.analysis.mass);
        for (const ReadingRecord& reading : candidate.readings)
            if (isAbout(reading.component, candidate.recipe, {}))
                side.readings.push_back(besideComputed(reading, side.analysis.mix));
        side.tastings = candidate.tastings;
    }

    std::vector<WeighedRecipe> recipes;
    std::vector<const Recipe*> written;
    std::vector<const Analysis*> analyses;
    std::vector<Conditions> conditions;
    std::vector<double> perBasis, batchFactors;
    for (const ComparedSide& side : result.sides) {
        recipes.push_back({&side.recipe, &side.analysis});
        written.push_back(&side.recipe);
        analyses.push_back(&side.analysis);
        conditions.push_back(side.analysis.conditions);
        perBasis.push_back(side.perBasis);
    }
    const std::vector<MatchedComponent> matching = matched(recipes);
    for (std::size_t i = 0; i < result.sides.size(); ++i)
        batchFactors.push_back(result.sides[i].batchFactor = i == 0 ? 1.0 : batchFactor(recipes, matching, i));
    result.components = comparedRows(recipes, matching, perBasis, batchFactors);
    result.differences = headerDifferences(written, conditions, batchFactors);
    result.figures = comparedFigures(analyses, perBasis);
    for (std::size_t i = 1; i < result.sides.size(); ++i)
        result.attributions.push_back(
            attributed(recipes, matching, i, batchFactors[i], catalogue, result.sides.front().name, result.sides[i].name));
    result.fairness = fairnessOf(result);
    return result;
}

}  // namespace firn
