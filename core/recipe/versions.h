// Keeping versions of a recipe in the recipe, and going back to them. None of these loses anything: what was on the bench is kept first.
#pragma once

#include "recipe/recipe.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// What a person says about a version when they keep it.
struct VersionLabel {
    std::string name;  // empty for "Version 3"
    std::string note;
    std::string date;  // ISO 8601
};

/// The recipe alone, as a version holds it and as another recipe takes it in: without versions, readings, tastings, tags, and fields of
/// the file that this Firn does not know.
Recipe alone(const Recipe& recipe);

const Version* versionNamed(const Recipe& recipe, std::string_view id);

/// Whether the bench holds exactly the version that it is based on.
bool isAsKept(const Recipe& recipe);

/// The id that readings and tastings of what is on the bench get: none if no version holds just that.
std::string versionOfBench(const Recipe& recipe);

/// The recipe with what is on the bench kept as a further version, based on the one that the bench is based on. Readings and tastings that
/// belonged to the bench belong to the version then.
Recipe withVersionKept(Recipe recipe, const VersionLabel& label);

/// The recipe with this version on the bench. What was there is kept first under `label`, unless a version holds it already.
Recipe withVersionOnBench(Recipe recipe, std::string_view id, const VersionLabel& label);

/// The recipe without a version. Those based on it are then based on what it was based on. Its readings and tastings go with it.
Recipe withoutVersion(Recipe recipe, std::string_view id);

/// The versions as a list reads them: each under the one that it is based on. The first one made from a version carries on at its depth, so
/// that a straight history stays straight; other trials from it stand between the two, one deeper.
struct PlacedVersion {
    std::size_t version = 0;  // its place in Recipe::versions
    std::size_t depth = 0;
};
std::vector<PlacedVersion> history(const Recipe& recipe);

}  // namespace firn
