// Scales that tasters give numbers on.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

/// No scale reaches further, either way from zero: more is a slip of the key.
inline constexpr double largestScore = 1e6;

/// What people who make ices often judge, to choose from: with the words for both ends (common practice, no source).
const std::vector<TastingScale>& suggestedScales();

const TastingScale* scaleNamed(const Recipe& recipe, std::string_view name);

/// The score that a tasting has on a scale; none if nobody gave one.
std::optional<double> scoreOn(const Tasting& tasting, std::string_view scale);

/// Why this is no score on the scale; nothing if it is one.
std::optional<Sentence> faultOfScore(const TastingScale& scale, double value);

/// Why the recipe's scale at this place cannot be like that: no name, one that another scale has, ends the wrong way round or
/// out of reach. Nothing if it can.
std::optional<Sentence> faultOfScale(const Recipe& recipe, std::size_t place, const TastingScale& scale);

/// The recipe with the scale at this place changed. A new name goes to the scores that were given on it.
Recipe withScale(Recipe recipe, std::size_t place, const TastingScale& scale);

/// The recipe without the scale and the scores that were given on it.
Recipe withoutScale(Recipe recipe, std::size_t place);

}  // namespace firn
