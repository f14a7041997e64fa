// The same recipe in another size.
#pragma once

#include "recipe/recipe.h"

namespace firn {

/// Every weighed, measured or counted amount times the factor, and so are the masses that steps name. Rows in % of the mix stay as they are.
/// The factor must be positive.
Recipe scaled(const Recipe& recipe, double factor);

}  // namespace firn
