// What can be compared: a recipe or one of its versions, with what was measured and tasted of it.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// How many can stand beside each other.
inline constexpr std::size_t fewestCompared = 2;
inline constexpr std::size_t mostCompared = 4;

struct Candidate {
    std::string name;
    Recipe recipe;  // alone
    std::vector<ReadingRecord> readings = {};
    std::vector<Tasting> tastings = {};
    friend bool operator==(const Candidate&, const Candidate&) = default;
};

/// What is on the bench. Tastings that a blind sheet still hides are nobody's.
Candidate benchCandidate(const Recipe& recipe, std::string name);

/// A version kept in the recipe, by its id or else by its name. Fails if there is none; the sentence names those that there are.
Result<Candidate> versionCandidate(const Recipe& recipe, std::string_view idOrName);

/// "Version 2", or the name that the person gave it.
std::string calledVersion(const Version& version);

}  // namespace firn
