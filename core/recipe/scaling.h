// The same recipe in another size.
#pragma once

#include "recipe/recipe.h"
#include "units/quantity.h"

namespace firn {

/// Every weighed, measured or counted amount times the factor, and so are the masses that steps name. Rows in % of the mix stay as they are.
/// The factor must be positive.
Recipe scaled(const Recipe& recipe, double factor);

/// To what amounts are rounded.
struct Rounding {
    Grams scaleStep{1.0};  // the kitchen scale's resolution; weights become multiples of it
    // Cups and spoons to quarters and thirds, with a smaller one where that would move the amount by more than a twentieth; jugs to 5 mL, pieces
    // to halves.
    bool toSpoonFractions = true;
};

/// The recipe with amounts that can be weighed or measured. An amount never becomes zero: it keeps at least one step.
Recipe rounded(const Recipe& recipe, const Rounding& rounding);

}  // namespace firn
