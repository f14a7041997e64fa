// Which slip, or which one or two ingredients that differ from the table, explain a reading that is not what the recipe says.
#pragma once

#include "analysis/preparation.h"
#include "correction/correction.h"

namespace firn {

/// What the row is made of as it counts in the mix: a measured fruit as measured. None for unknown names and for other components.
std::optional<Composition> compositionOf(const Row& row, const PreparedRow& prepared);

/// A reading is not trusted beyond twice this, nor beyond the division of a hand refractometer, 0.2 % (common practice, no source).
MassFraction readingTolerance(const MeasuredState& measured);

/// Likeliest first; empty where nothing was measured or the reading agrees with the recipe. Exact where the component's steps lose nothing; with losses
/// the sugars are taken to be lost in the proportion of the recipe.
std::vector<Cause> causesOf(const Component& component, const PreparedComponent& prepared, const MeasuredState& measured);

}  // namespace firn
