// The edits of what a recipe has taken in from elsewhere: linked recipes and own ingredients.
#pragma once

#include "recipe/recipe.h"

namespace firn::app {

class Document;

/// Takes a recipe in, or anew if its file is linked already, and puts a row for it, with no amount yet, behind the component's last.
void linkRecipe(Document& document, std::size_t component, LinkedRecipe linked);

/// The linked recipe as its file has it now.
void takeNewRecipe(Document& document, std::size_t linked, Recipe now);

/// The own ingredient, in place of the one with its id that travels in the recipe.
void takeNewIngredient(Document& document, const Ingredient& now);

/// Copies of the own ingredients that the rows use, which travel in the recipe's file. A step of its own, because undo must not take from the recipe
/// what the file has without that being known.
void storeOwnIngredients(Document& document);

}  // namespace firn::app
