// The place of an edit that touches more than one part of the recipe.
#pragma once

#include "recipe/recipe.h"

namespace firn::app {

struct WholeRecipe {
    using Value = Recipe;
    auto& in(auto& recipe) const { return recipe; }
    friend bool operator==(const WholeRecipe&, const WholeRecipe&) = default;
};

}  // namespace firn::app
