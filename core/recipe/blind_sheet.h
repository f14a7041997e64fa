// Tasting blind: cups carry codes, and nobody who tastes knows which version is in which until the sheet is revealed.
#pragma once

#include "recipe/recipe.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace firn {

/// How many cups a palate tells apart in one sitting (common practice, no source).
inline constexpr std::size_t fewestCups = 2;
inline constexpr std::size_t mostCups = 6;

/// A sheet of these versions in random order, each with a random code of three digits that does not begin with 0, as is usual in sensory tests
/// (ISO 6658, from memory). Codes are distinct, and none of `taken` as long as others are left. The same seed makes the same sheet.
BlindSheet blindSheet(const std::vector<std::string>& versions, std::uint64_t seed, const std::vector<std::string>& taken = {});

/// The codes on all sheets of a recipe, so that a new sheet does not use them again.
std::vector<std::string> codesOf(const Recipe& recipe);

/// The codes in the order in which this taster (0, 1, …) gets the cups: each taster starts one cup later, so that every cup comes first equally
/// often (common practice, no source).
std::vector<std::string> servingOrder(const BlindSheet& sheet, std::size_t taster);

/// The newest sheet that has this code; none if none has it.
const BlindSheet* sheetWith(const Recipe& recipe, std::string_view code);

/// Whether a sheet that is not revealed yet hides what was tasted.
bool isStillHidden(const Tasting& tasting, const Recipe& recipe);

/// Id of the version that was tasted, empty for what is on the bench. None while a sheet hides it, or if no sheet knows the code.
std::optional<std::string> versionOf(const Tasting& tasting, const Recipe& recipe);

/// Whether a sheet that is not revealed yet has a cup of this version: what happens to the version would tell the tasters.
bool isBehindCode(const Recipe& recipe, std::string_view version);

}  // namespace firn
