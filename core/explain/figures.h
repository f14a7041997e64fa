// The keys of figures, and what a person may have meant by one that is none.
#pragma once

#include "derivation/working.h"

#include <span>

namespace firn {

/// Figures that some recipes lack; all others but rows and temperatures of the curve are always there.
std::span<const std::string_view> missableFigures();

/// Whether a recipe can have a figure of this key, rows and temperatures of the curve included.
bool isFigure(std::string_view key);

/// Figures that a report does not print: what instruments of the cook's own show, what was measured, and what the window shows beside.
std::span<const std::string_view> figuresBesideReport();

/// What a cook would call a figure: its meaning, told apart from other figures that mean the like.
Sentence titleOf(std::string_view key, const Symbol& result);

/// Why a recipe may lack such a figure, and the way out.
Sentence reasonForNone(std::string_view key);

/// The few keys most like this one, best first, of those that the workings have and that a report shows.
std::vector<std::string> figuresNear(std::string_view key, const Workings& workings);

/// "a, b and c"
std::string listOf(const std::vector<std::string>& words);

}  // namespace firn
