// Fruit with a measured °Bx: what is really in this batch.
#pragma once

#include "ingredients/composition.h"
#include "units/sentence.h"

namespace firn {

/// The composition with its sugars, in their own proportions, and its water changed so that its juice reads this at 20 °C; all else stays.
/// Fails where there are no sugars to change, or no sugars and no water would read so.
Result<Composition> measuredComposition(const Composition& composition, double brix);

}  // namespace firn
