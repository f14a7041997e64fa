// Words that a cook adds to a name that says so already: "ricotta cheese", "amaretto liqueur", "frozen raspberries", "chopped toasted pecans".
#pragma once

#include "ingredients/ingredient.h"
#include "ingredients/kitchen_words.h"

namespace firn {

/// The words, by what the ingredient is made of and its group, in the form of plainWords().
Words saidAnyway(const Ingredient& ingredient);

/// Whether the word is said anyway of some ingredients.
bool isSaidAnywayOfSome(const std::string& word);

}  // namespace firn
