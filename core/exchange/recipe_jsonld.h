// Recipes from web pages: JSON-LD in the schema.org vocabulary (https://schema.org/Recipe).
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string_view>

namespace firn {

/// The first Recipe in the JSON, wherever it lies: "name" becomes the title, each text in "recipeIngredient" (or the older "ingredients") a
/// row (see rowFromLine), and the texts of "recipeInstructions" the notes. Fails on bad JSON and on JSON without a recipe.
Result<Recipe> recipeFromJsonLd(std::string_view text);

}  // namespace firn
