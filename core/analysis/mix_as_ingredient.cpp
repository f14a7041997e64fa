#include "analysis/mix_as_ingredient.h"

#include "solution/volume.h"

namespace firn {

Ingredient asIngredient(const std::string& name, const Mix& mix, const std::string& densitySource)
{
    Ingredient result;
    result.name = name;
    if (mix.isEmpty())
        return result;
    const double perHundredGrams = 100.0 / mix.mass().value;
    result.composition.per100g.add(mix.amounts, perHundredGrams);
    result.composition.milkFat = mix.milkFat * perHundredGrams;
    result.composition.milkSolidsNotFat = mix.milkSolidsNotFat * perHundredGrams;
    result.composition.yolkSolids = mix.yolkSolids * perHundredGrams;
    result.density = densityOf(mix, {20.0});
    result.densitySource = densitySource;
    return result;
}

}  // namespace firn
