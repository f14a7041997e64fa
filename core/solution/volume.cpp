#include "solution/volume.h"

#include "solution/ethanol.h"
#include "solution/solute_optics.h"
#include "solution/sucrose.h"

#include <algorithm>

namespace firn {

namespace {

/// Volume per gram that a solute seems to take when the solution's density is rho at this mass fraction.
double apparentVolume_mL_g(double massFraction, GramsPerMillilitre solution, GramsPerMillilitre water)
{
    return (1.0 / solution.value - (1.0 - massFraction) / water.value) / massFraction;
}

// Below this strength the difference of two densities is all rounding; the apparent volume no longer changes there.
constexpr double weakest = 1e-4;
constexpr double strongestSucrose = 0.84;

double sucroseVolume_mL_g(MassFraction strength, Celsius temperature)
{
    const double w = std::clamp(strength.value, weakest, strongestSucrose);
    return apparentVolume_mL_g(w, sucroseSolutionDensity({w}, temperature), waterDensity(temperature));
}

double ethanolVolume_mL_g(MassFraction strength, Celsius temperature)
{
    const double p = std::max(strength.value, weakest);
    return apparentVolume_mL_g(p, ethanolSolutionDensity({p}, temperature), waterDensity(temperature));
}

constexpr double proteinVolume_mL_g = 0.735;  // milk proteins in solution, from memory

// Choi and Okos 1986: densities in kg/m3 against t in °C, -40 to 150 °C, given there as straight lines.
double fatVolume_mL_g(double t_c) { return 1000.0 / (925.59 - 0.41757 * t_c); }
double carbohydrateVolume_mL_g(double t_c) { return 1000.0 / (1599.1 - 0.31046 * t_c); }
double fibreVolume_mL_g(double t_c) { return 1000.0 / (1311.5 - 0.36589 * t_c); }

}  // namespace

Strength strengthOf(const Mix& mix)
{
    const Grams water = mix[Constituent::Water];
    Grams solids;
    for (const DissolvedSolid& solid : dissolvedSolids())
        solids += mix[solid.constituent];
    const Grams ethanol = mix[Constituent::Ethanol];
    const auto share = [&](Grams part) { return MassFraction{part.value > 0.0 ? part / (part + water) : 0.0}; };
    return {share(solids), share(ethanol)};
}

Millilitres liquidVolumeOf(const Mix& mix, Celsius temperature)
{
    const Strength strength = strengthOf(mix);
    // Other solids expand with warmth as sucrose does at the same strength.
    const double ofSucrose_mL_g = sucroseVolume_mL_g(strength.dissolvedSolids, temperature);
    const double expansion_mL_g = ofSucrose_mL_g - sucroseVolume_mL_g(strength.dissolvedSolids, {20.0});
    double volume_mL = mix[Constituent::Water].value / waterDensity(temperature).value;
    for (const DissolvedSolid& solid : dissolvedSolids()) {
        const double grams = mix[solid.constituent].value;
        if (grams > 0.0)
            volume_mL +=
                grams
                * (solid.hasVolumeOfSucrose ? ofSucrose_mL_g : solid.volume_mL_g.at(strength.dissolvedSolids) + expansion_mL_g);
    }
    if (const double ethanol_g = mix[Constituent::Ethanol].value; ethanol_g > 0.0)
        volume_mL += ethanol_g * ethanolVolume_mL_g(strength.ethanol, temperature);
    volume_mL += mix[Constituent::Protein].value * proteinVolume_mL_g;
    return {volume_mL};
}

Millilitres volumeOf(const Mix& mix, Celsius temperature)
{
    const double t_c = temperature.value;
    const double beside_mL = mix[Constituent::Fat].value * fatVolume_mL_g(t_c)
                             + mix[Constituent::Fibre].value * fibreVolume_mL_g(t_c)
                             + (mix[Constituent::Starch] + mix[Constituent::Other]).value * carbohydrateVolume_mL_g(t_c);
    return liquidVolumeOf(mix, temperature) + Millilitres{beside_mL};
}

std::optional<GramsPerMillilitre> densityOf(const Mix& mix, Celsius temperature)
{
    if (mix.isEmpty())
        return std::nullopt;
    return GramsPerMillilitre{mix.mass().value / volumeOf(mix, temperature).value};
}

}  // namespace firn
