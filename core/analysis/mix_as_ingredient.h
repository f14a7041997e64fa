// A finished mix as something that can be weighed into another.
#pragma once

#include "ingredients/ingredient.h"
#include "mix/mix.h"

namespace firn {

/// Its composition per 100 g and its density at 20 °C; nothing but the name for an empty mix.
Ingredient asIngredient(const std::string& name, const Mix& mix, const std::string& densitySource);

}  // namespace firn
