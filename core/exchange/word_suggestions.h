// What the words of a food's name and group let one suppose: allergens, milk, egg yolk.
#pragma once

#include "exchange/imported_ingredient.h"

namespace firn {

/// Whether name and group speak of a milk product; "coconut milk" and "egg" in a group of dairy and eggs do not.
bool isDairy(const Ingredient& ingredient);

/// Notes the allergens that the words of the name speak of. Each of them is a guess and says so.
void suggestAllergens(ImportedIngredient& imported);

/// Takes the fat of a milk product for milk fat, its protein, lactose and minerals for milk solids-not-fat, and egg yolk without its water
/// for yolk solids. Each of them is a guess and says so.
void suggestMilkAndYolk(ImportedIngredient& imported);

}  // namespace firn
