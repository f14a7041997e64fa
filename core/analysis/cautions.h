// What a cook should know before going on, in the usual words; local codes and licensed practice decide.
#pragma once

#include "analysis/analysis.h"

namespace firn {

/// Cautions for an analysed recipe, most serious first. `ingredients` are those of its rows that are known, each once: with or without an
/// amount that can be used, for what is named is in the kitchen.
std::vector<Caution> cautionsFor(const Recipe& recipe, const Analysis& analysis, const std::vector<const Ingredient*>& ingredients);

}  // namespace firn
