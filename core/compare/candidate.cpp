#include "compare/candidate.h"

#include "ingredients/catalogue.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "units/text.h"

#include <algorithm>
#include <iterator>

namespace firn {

namespace {

Candidate withRecords(Candidate candidate, const Recipe& recipe, const std::string& id, bool isBench)
{
    const auto isOfIt = [&](const std::string& version) { return version == id || (isBench && version.empty()); };
    std::ranges::copy_if(recipe.readings, std::back_inserter(candidate.readings),
        [&](const ReadingRecord& reading) { return isOfIt(reading.version); });
    std::ranges::copy_if(recipe.tastings, std::back_inserter(candidate.tastings), [&](const Tasting& tasting) {
        const auto version = versionOf(tasting, recipe);
        return version && isOfIt(*version);
    });
    return candidate;
}

std::string idsOf(const Recipe& recipe)
{
    constexpr std::size_t mostNamed = 12;
    std::string ids;
    for (std::size_t i = 0; i < recipe.versions.size() && i < mostNamed; ++i)
        ids += (ids.empty() ? "" : ", ") + shortened(recipe.versions[i].id);
    return recipe.versions.size() > mostNamed ? ids + " …" : ids;
}

}  // namespace

std::string calledVersion(const Version& version)
{
    return version.name.empty() ? english(phrase("Version {0}", version.id)) : version.name;
}

Candidate benchCandidate(const Recipe& recipe, std::string name)
{
    return withRecords({std::move(name), alone(recipe)}, recipe, versionOfBench(recipe), true);
}

Result<Candidate> versionCandidate(const Recipe& recipe, std::string_view idOrName)
{
    const Version* version = versionNamed(recipe, idOrName);
    if (!version) {
        const auto named = std::ranges::find_if(recipe.versions,
            [name = folded(idOrName)](const Version& one) { return !one.name.empty() && folded(one.name) == name; });
        version = named == recipe.versions.end() ? nullptr : &*named;
    }
    if (!version && recipe.versions.empty())
        return failure(phrase("“{0}” keeps no versions. Leave out “{1}”.", recipe.title, shortened(idOrName)));
    if (!version)
        return failure(phrase("“{0}” has no version “{1}”. There are: {2}.", recipe.title, shortened(idOrName), idsOf(recipe)));
    return withRecords({calledVersion(*version), version->recipe}, recipe, version->id, false);
}

}  // namespace firn
