// Recipes from web pages: JSON-LD in the schema.org vocabulary (https://schema.org/Recipe).
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string_view>

namespace firn {

/// The first Recipe in the JSON, wherever it lies: "name" becomes the title, each text in "recipeIngredient" (or the older "ingredients") a
/// row, and the texts of "recipeInstructions" the notes. Fails on bad JSON, on JSON without a recipe, and on an ingredient that
/// rowFromText refuses.
Result<Recipe> recipeFromJsonLd(std::string_view text);

}  // namespace firn
