// Foods in the JSON of FoodData Central, the open food table of the US Department of Agriculture (public domain).
#pragma once

#include "exchange/imported_ingredient.h"

#include <string_view>
#include <vector>

namespace firn {

/// Reads one food, a list of foods, or an object that holds lists of foods ("foods", "SRLegacyFoods", "FoundationFoods", …), in the full
/// or the abridged form. Nutrients are told by their number and are per 100 g; weighed portions become measures where their unit is
/// clear. All or nothing: fails with line and column on broken JSON, with what was expected on JSON of another kind, and with number and
/// name of the food on a missing name, a bad or negative amount, and a composition beyond 101 g.
Result<std::vector<ImportedIngredient>> ingredientsFromFoodData(std::string_view text);

}  // namespace firn
