// One amount stated twice: "200 g / 7 oz", "1 cup (250 g)".
#pragma once

#include "units/amount.h"

namespace firn {

/// In the unit in which its kind is counted: grams, millilitres, pieces.
double inBaseUnit(const Amount& amount);

Dimension dimensionOf(const Amount& amount);

/// Of two statements of one amount, the first unless the second is in grams, or in millilitres where the first is neither.
/// Fails if both have the same dimension and are far apart.
Result<Amount> betterOf(const Amount& first, const Amount& second);

}  // namespace firn
