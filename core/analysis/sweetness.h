// Sweetness of a mix against sucrose.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

namespace firn {

/// Percent by mass of a sucrose solution as sweet as the mix: the sum of mass shares times relative sweetness, +-20 % of the figure.
/// Sources in sweetness.cpp. Valid for the strength of desserts (above 0.5 mol/L, where cold no longer dulls sweetness: Bartoshuk and
/// others, Physiol. Behav. 28 (1982) 905).
double sweetnessAsSucrose_percent(const Mix& mix, Working* working = nullptr);

}  // namespace firn
