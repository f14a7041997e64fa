// Scores across the versions of a recipe, and whether they can be compared.
#pragma once

#include "derivation/working.h"
#include "recipe/recipe.h"

#include <string>
#include <string_view>
#include <vector>

namespace firn {

struct ScoreMark {
    std::size_t tasting = 0;  // its place in Recipe::tastings
    double value = 0.0;
    bool isBlind = false;  // tasted by a code
    friend bool operator==(const ScoreMark&, const ScoreMark&) = default;
};

struct VersionScores {
    std::string version;           // its id; empty for what is on the bench
    std::vector<ScoreMark> marks;  // in the order of the tastings, never empty
    double mean = 0.0;
};

/// All scores on one scale.
struct ScoresOnScale {
    std::vector<VersionScores> versions;  // as they were kept, the bench last; those without a score are left out
    std::size_t hiddenTastings = 0;       // that wait for their sheet to be revealed
    std::vector<Sentence> unfair;         // why the versions' scores cannot be held against each other
};

/// The key under which workings have the mean score of the version at this place: "tasting.mean_score[0]".
std::string figureOfMean(std::size_t version);

/// What tasters said on this scale. `workings`, if given, take how the mean of each version comes about.
ScoresOnScale scoresOn(const Recipe& recipe, std::string_view scale, Workings* workings = nullptr);

}  // namespace firn
