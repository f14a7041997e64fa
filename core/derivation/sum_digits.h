// The decimals of the values in a sum: a reader who adds up what is shown must come to what is shown.
#pragma once

#include "derivation/formula.h"

namespace firn {

/// Gives the values that stand in a sum the same number of decimals, where there are two of them or more.
void alignDecimals(Formula& sum);

/// Gives them as few decimals as make their sum the result as it is shown. Leaves alone what is no sum of values only.
void alignDecimals(Formula& sum, const Number& result);

}  // namespace firn
