#include "subjects.h"
#include "usual_catalogue.h"

#include "analysis/batch_size.h"
#include "analysis/recorded_reading.h"
#include "compare/comparison.h"
#include "correction/correction.h"
#include "exchange/comparison.h"
#include "exchange/linked_recipes.h"
#include "exchange/recipe_json.h"
#include "exchange/report.h"
#include "notebook/recipe_card.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/scores.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

namespace firn {

namespace {

bool isJson(const std::string& text) { return nlohmann::json::accept(text); }

bool areFinite(const Analysis& analysis)
{
    const std::array figures{analysis.mass.value, analysis.water.value, analysis.volume_20c.value, analysis.finishedVolume.value,
        analysis.shares.sugars.value, analysis.shares.alcohol.value, analysis.shares.totalSolids.value,
        analysis.sugarsUncertainty.value, analysis.sweetness_percentSucrose, analysis.lactose_gPer100gWater,
        analysis.alcohol_percentByVolume};
    return std::ranges::all_of(figures, [](double figure) { return std::isfinite(figure); });
}

/// Of the whole, and of the first components.
bool canBeAnalysed(const Recipe& recipe)
{
    constexpr std::size_t looked = 3;
    const Conditions conditions = conditionsOf(recipe);
    for (std::size_t i = 0; i <= std::min(looked, recipe.components.size()); ++i) {
        Workings workings;
        const auto component = i == 0 ? std::nullopt : std::optional(i - 1);
        const Analysis analysis = analyse(recipe, usualCatalogue(), conditions, component, {}, &workings);
        if (!areFinite(analysis) || !isJson(reportJson(recipe, analysis)) || reportText(recipe, analysis).empty())
            return false;
        if (component)
            continue;
        withFigures(cardOf(recipe, "a.firn", 0), analysis);
        for (const ReadingRecord& reading : recipe.readings) {
            computedFor(reading, analysis.mix);
            const auto mixes = mixesBy(reading, analysis.mix);
            if (!mixes && english(mixes.error()).empty())
                return false;
        }
    }
    return true;
}

bool versionsCanBeKept(const Recipe& recipe)
{
    if (history(recipe).size() != recipe.versions.size())
        return false;
    const VersionLabel label{"before", {}, "2026-04-03"};
    const Recipe kept = withVersionKept(recipe, label);
    if (!isAsKept(kept) || kept.versions.size() != recipe.versions.size() + 1)
        return false;
    if (recipe.versions.empty())
        return true;
    const Version& version = recipe.versions.front();
    const Recipe back = withVersionOnBench(recipe, version.id, label);
    if (!isAsKept(back) || withoutVersion(recipe, version.id).versions.size() != recipe.versions.size() - 1)
        return false;
    const auto candidate = versionCandidate(recipe, version.id);
    const auto comparison = compare({benchCandidate(recipe, "bench"), *candidate}, usualCatalogue());
    const auto readBack = recipeFromJson(recipeToJson(back));
    return readBack && *readBack == back && comparison && isJson(comparisonJson(*comparison))
           && !comparisonText(*comparison).empty();
}

/// In another size, with every row's deviation.
bool canBeScaled(const Recipe& recipe)
{
    const auto batch = batchOf(ByFactor{2.5}, Rounding{}, recipe, usualCatalogue());
    if (!batch)
        return !english(batch.error()).empty();
    const auto readBack = recipeFromJson(recipeToJson(batch->recipe));
    return readBack && *readBack == batch->recipe
           && std::ranges::all_of(batch->rows, [](const BatchRow& row) { return std::isfinite(row.after.deviation_percent); });
}

/// After a reading that found a quarter of the first component to be sugar: the batch, and the recipe.
bool canBeCorrected(const Recipe& recipe)
{
    constexpr MassFraction measured{0.25};
    constexpr SugarsTarget wanted{MassFraction{0.28}};
    return std::ranges::all_of(std::array{Corrected::Batch, Corrected::Recipe}, [&](Corrected what) {
        const auto plan = corrections(recipe, usualCatalogue(), 0, {measured, MassFraction{0.005}}, wanted, what);
        if (!plan)
            return !english(plan.error()).empty();
        return std::ranges::all_of(plan->choices,
            [](const CorrectionChoice& choice) { return std::isfinite(choice.added.value) && choice.added.value >= 0.0; });
    });
}

/// Files that are named from the recipe's folder stand for the same ones after it was saved there.
bool linksCanBeMoved(const Recipe& recipe)
{
    const Recipe absolute = withAbsoluteLinks("/notebook", recipe);
    return withAbsoluteLinks("/notebook", withLinksFrom("/notebook", absolute)) == absolute;
}

bool tastingsCanBeRead(const Recipe& recipe)
{
    for (const TastingScale& scale : recipe.scales)
        for (const VersionScores& scores : scoresOn(recipe, scale.name).versions)
            if (!std::isfinite(scores.mean) || scores.marks.empty())
                return false;
    for (const BlindSheet& sheet : recipe.blindSheets)
        if (servingOrder(sheet, 1).size() != sheet.samples.size())
            return false;
    return std::ranges::all_of(recipe.tastings,
        [&](const Tasting& tasting) { return isStillHidden(tasting, recipe) ? !versionOf(tasting, recipe) : true; });
}

}  // namespace

bool recipeCanBeUsed(std::string_view input)
{
    const auto recipe = recipeFromJson(input);
    return !recipe
           || (canBeAnalysed(*recipe) && canBeScaled(*recipe) && canBeCorrected(*recipe) && linksCanBeMoved(*recipe)
               && versionsCanBeKept(*recipe) && tastingsCanBeRead(*recipe));
}

}  // namespace firn
