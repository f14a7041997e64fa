#include "analysis/row_weight.h"

#include "solution/estimated_density.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

/// Cups and spoons take pieces and powders too.
Filling fillingOf(Unit unit)
{
    constexpr std::array measuresOfLiquids{
        Unit::Millilitre, Unit::Litre, Unit::FluidOunce, Unit::ImperialFluidOunce, Unit::Shot, Unit::Drop};
    return std::ranges::find(measuresOfLiquids, unit) != measuresOfLiquids.end() ? Filling::Poured : Filling::MayBeHeaped;
}

}  // namespace

Result<Weighing> weightOf(const Amount& amount, const Row& row, const Ingredient& ingredient, Working* working)
{
    const std::string note = row.ingredient + ", " + row.note;
    const bool isVolume = factsOf(amount.unit).dimension == Dimension::Volume;
    const auto density = isVolume ? estimatedDensity(ingredient, fillingOf(amount.unit)) : std::nullopt;
    if (!density)
        return weigh(amount, ingredient, note, working);
    Ingredient estimated = ingredient;
    estimated.density = density;
    estimated.densitySource = "estimated from the composition, ±2 %";
    return weigh(amount, estimated, note, working);
}

}  // namespace firn
