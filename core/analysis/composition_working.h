// The working of what the whole mix holds: masses, volume, and shares.
#pragma once

#include "analysis/analysis.h"

namespace firn {

/// Once the workings hold what each component weighs and the volumes of the chosen ones.
void recordComposition(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Analysis& found,
    double sugarsVariance_g2);

}  // namespace firn
