#include "tasting/scores.h"

#include "recipe/blind_sheet.h"
#include "tasting/scales.h"
#include "units/temperature.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>
#include <optional>

namespace firn {

namespace {

// Ices harden and numb the tongue as they get colder, and coarsen as they stand; less than this a taster hardly notices (common practice, no
// source).
constexpr double sameTemperature_k = 1.0;
constexpr double sameAge_h = 6.0;

struct Spread {
    double least = 0.0;
    double most = 0.0;
    bool isNotedForAll = true;
    bool isNoted = false;
};

Spread spreadOf(const Recipe& recipe, const std::vector<VersionScores>& versions, std::optional<double> Tasting::*noted)
{
    Spread spread;
    for (const VersionScores& version : versions)
        for (const ScoreMark& mark : version.marks) {
            const std::optional<double>& value = recipe.tastings[mark.tasting].*noted;
            if (!value) {
                spread.isNotedForAll = false;
                continue;
            }
            spread.least = spread.isNoted ? std::min(spread.least, *value) : *value;
            spread.most = spread.isNoted ? std::max(spread.most, *value) : *value;
            spread.isNoted = true;
        }
    return spread;
}

std::vector<Sentence> whyUnfair(const Recipe& recipe, const std::vector<VersionScores>& versions)
{
    std::vector<Sentence> reasons;
    if (versions.size() < 2)
        return reasons;
    const Spread served = spreadOf(recipe, versions, &Tasting::servedAt_c);
    if (served.most - served.least > sameTemperature_k)
        reasons.push_back(phrase("Not a fair comparison: they were served between {0} and {1}. Taste them equally cold.",
            chosenTemperatureFigure({served.least}), chosenTemperatureFigure({served.most})));
    if (!served.isNotedForAll)
        reasons.push_back(phrase("Perhaps not a fair comparison: it is not noted for each tasting how cold it was served."));
    const Spread age = spreadOf(recipe, versions, &Tasting::frozen_h);
    if (age.most - age.least > sameAge_h)
        reasons.push_back(phrase("Not a fair comparison: they had been frozen for {0} to {1} hours. Taste them equally old.",
            Figure{age.least, 0}, Figure{age.most, 0}));
    return reasons;
}

/// What tells it from other tastings, as far as it was noted.
std::string labelOf(const Tasting& tasting, std::size_t place)
{
    std::string label = tasting.date;
    for (const std::string& noted : {tasting.tasters, tasting.code})
        if (!noted.empty())
            label += (label.empty() ? "" : ", ") + noted;
    return label.empty() ? fmt::format("{}", place + 1) : label;
}

void recordMean(Working& working, const Recipe& recipe, std::string_view scale, const VersionScores& version)
{
    std::vector<SeriesTerm> terms;
    for (const ScoreMark& mark : version.marks)
        terms.push_back({labelOf(recipe.tastings[mark.tasting], mark.tasting),
            Symbol{"x", fmt::format("{}", terms.size() + 1), mark.value, "", phrase("score of this tasting")}});
    const Symbol count{"n", "", double(version.marks.size()), "", phrase("tastings with a score"), {}, 0};
    working
        .found({"x̄", "", version.mean, "", phrase("mean score on the scale “{0}”", std::string(scale))},
            series("i", Symbol{"x", "i", 0.0, "", phrase("score of each tasting")}, std::move(terms)) / count, Source::Definition)
        .range = phrase("Each tasting counts once, open or blind; those that a sheet still hides are left out.");
}

}  // namespace

std::string figureOfMean(std::size_t version) { return fmt::format("tasting.mean_score[{}]", version); }

ScoresOnScale scoresOn(const Recipe& recipe, std::string_view scale, Workings* workings)
{
    ScoresOnScale scores;
    for (const Version& version : recipe.versions)
        scores.versions.push_back({version.id, {}});
    scores.versions.push_back({});
    for (std::size_t i = 0; i < recipe.tastings.size(); ++i) {
        const Tasting& tasting = recipe.tastings[i];
        const std::optional<double> value = scoreOn(tasting, scale);
        if (!value)
            continue;
        if (isStillHidden(tasting, recipe))
            ++scores.hiddenTastings;
        const auto id = versionOf(tasting, recipe);
        if (!id)
            continue;
        const auto of = std::ranges::find(scores.versions, *id, &VersionScores::version);
        if (of != scores.versions.end())
            of->marks.push_back({i, *value, !tasting.code.empty()});
    }
    std::erase_if(scores.versions, [](const VersionScores& version) { return version.marks.empty(); });
    for (std::size_t i = 0; i < scores.versions.size(); ++i) {
        VersionScores& version = scores.versions[i];
        const double sum = std::accumulate(version.marks.begin(), version.marks.end(), 0.0,
            [](double before, const ScoreMark& mark) { return before + mark.value; });
        version.mean = sum / double(version.marks.size());
        if (workings)
            recordMean(workings->of(figureOfMean(i)), recipe, scale, version);
    }
    scores.unfair = whyUnfair(recipe, scores.versions);
    return scores;
}

}  // namespace firn
