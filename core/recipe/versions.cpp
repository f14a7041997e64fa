#include "recipe/versions.h"

#include "recipe/blind_sheet.h"

#include <algorithm>
#include <iterator>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace firn {

namespace {

std::string freshId(const Recipe& recipe)
{
    std::size_t number = recipe.versions.size() + 1;
    while (versionNamed(recipe, std::to_string(number)))
        ++number;
    return std::to_string(number);
}

/// Calls `change` with the version's id in every reading, batch correction, tasting and coded sample.
template <class Change>
void forEachMention(Recipe& recipe, Change change)
{
    for (ReadingRecord& reading : recipe.readings)
        change(reading.version);
    for (BatchCorrection& correction : recipe.batchCorrections)
        change(correction.version);
    for (Tasting& tasting : recipe.tastings)
        if (tasting.code.empty())
            change(tasting.version);
    for (BlindSheet& sheet : recipe.blindSheets)
        for (CodedSample& sample : sheet.samples)
            change(sample.version);
}

/// The version that holds exactly this, if possible the one that the bench is based on.
const Version* versionLike(const Recipe& recipe, const Recipe& bench)
{
    const Version* base = versionNamed(recipe, recipe.basedOn);
    if (base && base->recipe == bench)
        return base;
    const auto found = std::ranges::find(recipe.versions, bench, &Version::recipe);
    return found == recipe.versions.end() ? nullptr : &*found;
}

void giveLooseMentionsTo(const std::string& id, Recipe& recipe)
{
    forEachMention(recipe, [&id](std::string& mentioned) {
        if (mentioned.empty())
            mentioned = id;
    });
}

}  // namespace

Recipe alone(const Recipe& recipe)
{
    Recipe result;
    result.title = recipe.title;
    result.process = recipe.process;
    result.overrun_percent = recipe.overrun_percent;
    result.serveAt_c = recipe.serveAt_c;
    result.freezerAt_c = recipe.freezerAt_c;
    result.notes = recipe.notes;
    result.components = recipe.components;
    result.ingredients = recipe.ingredients;
    result.linked = recipe.linked;
    return result;
}

const Version* versionNamed(const Recipe& recipe, std::string_view id)
{
    const auto found = std::ranges::find(recipe.versions, id, &Version::id);
    return found == recipe.versions.end() ? nullptr : &*found;
}

bool isAsKept(const Recipe& recipe)
{
    const Version* base = versionNamed(recipe, recipe.basedOn);
    return base && alone(recipe) == base->recipe;
}

std::string versionOfBench(const Recipe& recipe) { return isAsKept(recipe) ? recipe.basedOn : std::string(); }

Recipe withVersionKept(Recipe recipe, const VersionLabel& label)
{
    Version version;
    version.id = freshId(recipe);
    version.name = label.name;
    version.note = label.note;
    version.date = label.date;
    version.basedOn = recipe.basedOn;
    version.recipe = alone(recipe);
    giveLooseMentionsTo(version.id, recipe);
    recipe.basedOn = version.id;
    recipe.versions.push_back(std::move(version));
    return recipe;
}

Recipe withVersionOnBench(Recipe recipe, std::string_view id, const VersionLabel& label)
{
    if (!versionNamed(recipe, id))
        return recipe;
    const Recipe before = alone(recipe);
    if (const Version* same = versionLike(recipe, before))
        giveLooseMentionsTo(std::string(same->id), recipe);
    else if (!(before == Recipe()))
        recipe = withVersionKept(std::move(recipe), label);
    Recipe bench = versionNamed(recipe, id)->recipe;
    bench.unknown = std::move(recipe.unknown);
    bench.readings = std::move(recipe.readings);
    bench.batchCorrections = std::move(recipe.batchCorrections);
    bench.tags = std::move(recipe.tags);
    bench.isFavourite = recipe.isFavourite;
    bench.isArchived = recipe.isArchived;
    bench.versions = std::move(recipe.versions);
    bench.basedOn = std::string(id);
    bench.scales = std::move(recipe.scales);
    bench.tastings = std::move(recipe.tastings);
    bench.blindSheets = std::move(recipe.blindSheets);
    return bench;
}

Recipe withoutVersion(Recipe recipe, std::string_view id)
{
    const Version* version = versionNamed(recipe, id);
    if (!version)
        return recipe;
    const std::string gone = version->id;
    const std::string base = version->basedOn;
    std::erase_if(recipe.versions, [&](const Version& one) { return one.id == gone; });
    for (Version& one : recipe.versions)
        if (one.basedOn == gone)
            one.basedOn = base;
    if (recipe.basedOn == gone)
        recipe.basedOn = base;
    std::erase_if(recipe.readings, [&](const ReadingRecord& reading) { return reading.version == gone; });
    std::erase_if(recipe.batchCorrections, [&](const BatchCorrection& correction) { return correction.version == gone; });
    std::vector<Tasting> tastings;
    std::ranges::copy_if(
        recipe.tastings, std::back_inserter(tastings), [&](const Tasting& tasting) { return versionOf(tasting, recipe) != gone; });
    recipe.tastings = std::move(tastings);
    for (BlindSheet& sheet : recipe.blindSheets)
        std::erase_if(sheet.samples, [&](const CodedSample& sample) { return sample.version == gone; });
    return recipe;
}

std::vector<PlacedVersion> history(const Recipe& recipe)
{
    std::unordered_map<std::string_view, std::vector<std::size_t>> madeFrom;
    for (std::size_t i = 0; i < recipe.versions.size(); ++i)
        madeFrom[recipe.versions[i].basedOn].push_back(i);
    std::vector<PlacedVersion> placed;
    std::vector<bool> isPlaced(recipe.versions.size());
    std::vector<PlacedVersion> waiting;  // the last one is next
    const auto follow = [&](PlacedVersion first) {
        waiting.push_back(first);
        while (!waiting.empty()) {
            const PlacedVersion next = waiting.back();
            waiting.pop_back();
            if (isPlaced[next.version])
                continue;
            isPlaced[next.version] = true;
            placed.push_back(next);
            const std::vector<std::size_t>& further = madeFrom[recipe.versions[next.version].id];
            if (!further.empty())
                waiting.push_back({further.front(), next.depth});
            for (std::size_t i = further.size(); i-- > 1;)
                waiting.push_back({further[i], next.depth + 1});
        }
    };
    std::unordered_set<std::string_view> ids;
    for (const Version& version : recipe.versions)
        ids.insert(version.id);
    for (std::size_t i = 0; i < recipe.versions.size(); ++i)
        if (!ids.contains(recipe.versions[i].basedOn))
            follow({i, 0});
    for (std::size_t i = 0; i < recipe.versions.size(); ++i)
        if (!isPlaced[i])  // based on itself, round about
            follow({i, 0});
    return placed;
}

}  // namespace firn
