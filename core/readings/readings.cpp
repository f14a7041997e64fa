#include "readings/readings.h"

#include "readings/hydrometer.h"
#include "readings/refractometer.h"
#include "solution/refraction.h"
#include "solution/sucrose.h"
#include "solution/volume.h"

#include <cmath>

namespace firn {

namespace {

double shareOfMix(const Mix& mix, Constituent c) { return shareOf(mix[c], mix).value; }

/// What these instruments would read if only the sugars were there, in as much water.
struct SugarsOnly {
    double brix;
    double specificGravity;
};

std::optional<SugarsOnly> sugarsOnly(const Mix& mix)
{
    const double sugars_g = sugars(mix).value;
    const double water_g = mix[Constituent::Water].value;
    if (water_g <= 0.0)
        return std::nullopt;
    const double share = sugars_g / (sugars_g + water_g);
    return SugarsOnly{100.0 * share, specificGravityInAir(sucroseSolutionDensity({share}, {20.0}))};
}

/// The mix with one constituent taken out, to see what it does to a reading.
Mix without(Mix mix, Constituent c)
{
    mix.amounts[c] = {0.0};
    return mix;
}

std::optional<double> brixAt20(const Mix& mix)
{
    const auto index = refractiveIndexOf(mix, {20.0});
    return index ? brixOfRefractiveIndex(*index) : std::nullopt;
}

std::vector<Sentence> disturbances(const Mix& mix)
{
    std::vector<Sentence> result;
    const auto brix = brixAt20(mix);
    if (shareOfMix(mix, Constituent::Ethanol) > 0.002) {
        const auto alone = brixAt20(without(mix, Constituent::Ethanol));
        constexpr double visible_brix = 0.1;
        if (brix && alone && std::abs(*brix - *alone) >= visible_brix)
            result.push_back(phrase("Alcohol: it bends light like sugar and lightens the mix. Without it the refractometer would "
                                    "show {0} °Bx instead of {1}, "
                                    "and the hydrometer and the egg read too little sugar.",
                Figure{*alone, 1}, Figure{*brix, 1}));
    }
    if (shareOf(mix.milkSolidsNotFat, mix).value > 0.01)
        result.push_back(
            phrase("Milk: its protein and minerals read as sugar, and its fat blurs the refractometer's line and carries the "
                   "hydrometer higher or lower. Do not trust either by more than a degree."));
    else if (shareOfMix(mix, Constituent::Fat) > 0.01)
        result.push_back(
            phrase("Fat: it blurs the refractometer's line and lightens the mix, so that a hydrometer reads too little sugar."));
    if (shareOfMix(mix, Constituent::Fibre) + shareOfMix(mix, Constituent::Starch) > 0.005)
        result.push_back(
            phrase("Fibre and pulp: they hold a hydrometer and an egg up. Strain the sample and let bubbles rise before reading."));
    if (const auto only = sugarsOnly(mix);
        only && brix && shareOfMix(mix, Constituent::Ethanol) <= 0.002 && *brix - only->brix > 0.3)
        result.push_back(phrase("Acids, minerals and other dissolved solids add {0} °Bx to what the sugars alone would show.",
            Figure{*brix - only->brix, 1}));
    if (shareOfMix(mix, Constituent::Hydrocolloid) > 0.001)
        result.push_back(phrase("Stabiliser: a thick mix settles a hydrometer and an egg slowly; wait before reading."));
    return result;
}

}  // namespace

std::optional<Readings> readings(const Mix& mix, Celsius temperature, const Egg& egg)
{
    const auto index = refractiveIndexOf(mix, temperature);
    const auto density = densityOf(mix, temperature);
    if (!index || !density)
        return std::nullopt;
    Readings result;
    result.temperature = temperature;
    result.density = *density;
    result.refractiveIndex = *index;
    result.refractometer_brix = brixOfRefractiveIndex(refractiveIndexSeen(*index, temperature));
    result.specificGravity_20_20 = specificGravityInAir(*density);
    result.baume = baumeOf(*density);
    result.egg = floatEgg(egg, *density);
    result.disturbances = disturbances(mix);
    return result;
}

}  // namespace firn
