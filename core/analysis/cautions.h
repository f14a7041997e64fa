// What a cook should know before going on, in the usual words; local codes and licensed practice decide.
#pragma once

#include "analysis/analysis.h"

namespace firn {

/// Cautions for an analysed recipe, most serious first. `ingredients` are those of its rows that are known, each once.
std::vector<Caution> cautionsFor(const Recipe& recipe, const Analysis& analysis, const std::vector<const Ingredient*>& ingredients);

}  // namespace firn
