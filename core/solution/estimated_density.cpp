#include "solution/estimated_density.h"

#include "mix/mix.h"
#include "solution/volume.h"
#include "units/number.h"

#include <algorithm>

namespace firn {

namespace {

using enum Constituent;

// Honey flows with 17 g of water in 100 g; powders hold up to 14 g; a nut has up to 75 g of fat. Juices and syrups have under 1 g of fibre and
// starch, fruit has more (the catalogue's ingredients).
constexpr Grams leastToFlow{15.0};
constexpr Grams leastFatOfOil{95.0};
constexpr Grams mostInJuice{1.0};

bool flows(const Amounts& per100g)
{
    return per100g[Water] + per100g[Ethanol] + per100g[Glycerol] >= leastToFlow || per100g[Fat] >= leastFatOfOil;
}

}  // namespace

std::optional<GramsPerMillilitre> estimatedDensity(const Composition& composition, Filling filling)
{
    const Amounts& per100g = composition.per100g;
    const bool isJuice = per100g[Fibre] + per100g[Starch] < mostInJuice;
    if (!flows(per100g) || (filling == Filling::MayBeHeaped && !isJuice))
        return std::nullopt;
    constexpr int decimals = 3;
    const auto density = densityOf(Mix{per100g, {}, {}, {}}, {20.0});
    return density ? std::optional(GramsPerMillilitre{roundedTo(decimals, density->value)}) : std::nullopt;
}

std::optional<GramsPerMillilitre> estimatedDensity(const Ingredient& ingredient, Filling filling)
{
    const bool hasVolume = std::ranges::any_of(
        ingredient.measures, [](const Measure& measure) { return factsOf(measure.unit).dimension == Dimension::Volume; });
    return ingredient.density || hasVolume ? std::nullopt : estimatedDensity(ingredient.composition, filling);
}

}  // namespace firn
