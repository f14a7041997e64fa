// The keys of figures, and what a person may have meant by one that is none.
#pragma once

#include "derivation/working.h"

#include <span>

namespace firn {

/// Figures that some recipes lack; all others but rows and temperatures of the curve are always there.
std::span<const std::string_view> missableFigures();

/// Whether a recipe can have a figure of this key, rows and temperatures of the curve included.
bool isFigure(std::string_view key);

/// Why a recipe may lack such a figure, and the way out.
Sentence reasonForNone(std::string_view key);

/// The few keys most like this one, best first, of those that the workings have and that a report shows.
std::vector<std::string> figuresNear(std::string_view key, const Workings& workings);

/// "a, b and c"
std::string listOf(const std::vector<std::string>& words);

}  // namespace firn
