// One ingredient as JSON: a line of the catalogue, of a person's own ingredients, or of those that travel in a recipe. Only the files of
// this folder include it.
#pragma once

#include "exchange/json.h"
#include "ingredients/ingredient.h"

#include <string>

namespace firn {

/// Fails on an unknown field or key, or on a composition that does not close to 100 g within 1 g; the sentence begins with the place.
Result<Ingredient> ingredientFromJson(const Json& object, const std::string& place);

/// On one line, in the catalogue's order of fields.
std::string ingredientToJson(const Ingredient& ingredient);

}  // namespace firn
