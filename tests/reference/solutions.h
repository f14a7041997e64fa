// Mixes that tables are about: one thing in water.
#pragma once

#include "mix/mix.h"

namespace firn {

/// 100 g of a solution with this many percent by mass of one constituent.
inline Mix solutionOf(Constituent solute, double mass_percent)
{
    Mix mix;
    mix.amounts[solute] = {mass_percent};
    mix.amounts[Constituent::Water] += Grams{100.0 - mass_percent};
    return mix;
}

}  // namespace firn
