// An ingredient read from a file of somebody else's, with an account of how.
#pragma once

#include "ingredients/ingredient.h"
#include "units/sentence.h"

#include <vector>

namespace firn {

struct ImportedIngredient {
    Ingredient ingredient;
    std::vector<Sentence> mapped;   // what the file says and the ingredient now has
    std::vector<Sentence> guessed;  // what the file leaves open and was filled in, for the cook to look at
    std::vector<Sentence> unused;   // what the file says and Firn has no use for
};

}  // namespace firn
