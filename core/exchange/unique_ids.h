// Ids for imported ingredients that came without.
#pragma once

#include "exchange/imported_ingredient.h"

#include <span>

namespace firn {

/// Gives an id made from its name to each ingredient without one, with a number after it where another of them has it.
void fillMissingIds(std::span<ImportedIngredient> imported);

}  // namespace firn
