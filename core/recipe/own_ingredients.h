// A cook's own ingredients in a recipe: copies that travel with it, so that it reads the same on another machine.
#pragma once

#include "ingredients/catalogue.h"
#include "recipe/recipe.h"

#include <span>

namespace firn {

/// The recipe with a copy of every own ingredient that a row stands for and that does not travel in it yet. `catalogue` is what names are
/// looked up in, the own ingredients included.
Recipe withOwnIngredients(Recipe recipe, const Catalogue& catalogue, std::span<const Ingredient> own);

/// The own ingredients that travel in the recipe as something else than they are now: they were changed, here or by another cook.
std::vector<const Ingredient*> changedOwnIngredients(const Recipe& recipe, std::span<const Ingredient> own);

}  // namespace firn
