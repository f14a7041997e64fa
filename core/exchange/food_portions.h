// The weighed portions of one food of FoodData Central. Only the files of this folder include it.
#pragma once

#include "exchange/imported_ingredient.h"
#include "exchange/json.h"

#include <optional>
#include <string>

namespace firn {

/// Makes a measure of each portion whose unit is clear, and says which portions are of no use. The sentence of a failure lacks the food.
std::optional<Sentence> takePortions(const Json& foodPortions, const std::string& source, ImportedIngredient& imported);

}  // namespace firn
