// Edits that make more or less of the recipe.
#pragma once

#include "recipe/recipe.h"

namespace firn::app {

class Document;

/// Puts the recipe in its new size on the bench, as one step of the undo history.
void scaleRecipe(Document& document, Recipe scaledRecipe);

}  // namespace firn::app
