// From a formula to its box of type.
#pragma once

#include "derivation/formula.h"
#include "formulas/formula_box.h"

namespace firn::app {

/// A sum of more terms than this is folded to one less, and says how many are left.
inline constexpr std::size_t mostTermsFolded = 4;

/// Sets the formula in this font, in as many lines as `room` pixels ask for. A sum over an index that is written out is folded where
/// `isFolded`.
FormulaBox laidOut(const Formula& formula, const QFont& font, double room, bool isFolded);

/// As `laidOut`, in smaller type where even one part is wider than the room.
FormulaBox fitted(const Formula& formula, const QFont& font, double room, bool isFolded);

}  // namespace firn::app
