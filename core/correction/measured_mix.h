// The mix as it really is, after a reading: the recipe's mix made to hold what was measured.
#pragma once

#include "mix/mix.h"
#include "units/sentence.h"

#include <optional>

namespace firn {

/// The mix with its sugars, in their own proportions, and its alcohol made this share of it; water takes the rest, everything else and the
/// mass stay. Sugars measured in a mix that should have none are taken as sucrose. Without a measured alcohol the recipe's stays. Fails for an
/// empty mix, for shares below 0, and where sugars, alcohol and the rest leave no water.
Result<Mix> measuredMix(const Mix& recipe, MassFraction sugars, std::optional<MassFraction> alcohol = {});

}  // namespace firn
