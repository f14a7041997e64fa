// The decimals of the values in a sum: a reader who adds up what is shown must come to what is shown.
#pragma once

#include "derivation/formula.h"

namespace firn {

/// Gives the values that stand in a sum the same number of decimals, where there are two of them or more. `inSymbols` is the sum before its values
/// were put in: where a symbol says how many decimals it has, its value keeps them.
void alignDecimals(Formula& sum, const Formula& inSymbols);

/// Gives them as few decimals as make their sum the result as it is shown. Leaves alone what is no sum of values only.
void alignDecimals(Formula& sum, const Formula& inSymbols, const Number& result);

}  // namespace firn
