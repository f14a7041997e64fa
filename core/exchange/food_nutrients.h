// The nutrients of one food of FoodData Central. Only the files of this folder include it.
#pragma once

#include "exchange/imported_ingredient.h"
#include "exchange/json.h"
#include "exchange/nutrition_table.h"

#include <optional>

namespace firn {

/// Puts the nutrients of a food into the table and the energy into the ingredient, and says what was mapped and what is of no use. The
/// sentence of a failure lacks the food.
std::optional<Sentence> takeNutrients(const Json& foodNutrients, NutritionTable& table, ImportedIngredient& imported);

}  // namespace firn
