// What a row of a recipe weighs, also where nobody weighed its ingredient.
#pragma once

#include "ingredients/weighing.h"
#include "recipe/recipe.h"

namespace firn {

/// As weigh() has it; a volume of an ingredient without density and measures goes by the density of its composition, and says so. The row's
/// name and note choose between measures: "2 large eggs" says in its name which egg is meant, "1 cup strawberries, sliced" in its note.
Result<Weighing> weightOf(const Amount& amount, const Row& row, const Ingredient& ingredient, Working* working = nullptr);

}  // namespace firn
