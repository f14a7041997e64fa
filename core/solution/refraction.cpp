#include "solution/refraction.h"

#include "mix/symbols.h"
#include "solution/solute_optics.h"
#include "solution/sucrose.h"
#include "solution/volume.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

namespace firn {

namespace {

constexpr double indexOfWater_20c = 1.33299;  // OIV-MA-AS2-02, 20 °C, sodium D line, against air

double lorentzLorenz(double index) { return (index * index - 1.0) / (index * index + 2.0); }
double indexOf(double refractionPerVolume) { return std::sqrt((1.0 + 2.0 * refractionPerVolume) / (1.0 - refractionPerVolume)); }

/// Fitted to n of water at 0 to 60 °C: 1.33395, 1.33388 (5), 1.33369 (10), 1.33339 (15), 1.33299 (20), 1.33250 (25), 1.33194 (30),
/// 1.33061 (40), 1.32904 (50), 1.32725 (60), all from memory; within 0.00001. The formula of IAPWS R9-97, also from memory, against air of
/// the same temperature agrees within 0.00002.
double waterRefraction_mL_g(Celsius temperature)
{
    static const double at20 = lorentzLorenz(indexOfWater_20c) / waterDensity({20.0}).value;
    const double d = (temperature.value - 20.0) / 100.0;
    return at20 * (1.0 + d * (-0.00352536 + d * (0.00595555 - d * 0.00293802)));
}

/// Sugar and water together refract a little more when warm than each alone, by their shares. Fitted, together with the expansion of the
/// prism (readings/refractometer.cpp), to the OIV's Table I of temperature corrections, 5 to 17 °C and 10 to 75 °Bx.
double warming(MassFraction strength, Celsius temperature)
{
    const double w = strength.value;
    return 1.0 + 0.040 * w * (1.0 - w) * (temperature.value - 20.0) / 100.0;
}

/// Fitted to the CRC Handbook's ethanol table with OIML densities; 0.0001 in the index to 90 %, 0.0003 to 100 %.
double ethanolRefraction_mL_g(MassFraction strength)
{
    const double p = strength.value;
    return 0.278744 + p * (-0.021105 + p * (0.114940 + p * (-0.238540 + p * (0.230490 - p * 0.083726))));
}

// From the refractive increment of milk proteins, 0.185 mL/g (from memory).
constexpr double proteinRefraction_mL_g = 0.255;

/// Grams times specific refraction, for what the mix holds any of. `refraction_mL_g` is that of a constituent.
template <class RefractionOf>
void recordRefraction(
    Working& working, const Mix& mix, Celsius temperature, double refraction_mL, Millilitres volume, RefractionOf refraction_mL_g)
{
    std::vector<SeriesTerm> terms;
    for (const MixPart& part : mixParts()) {
        const auto c = static_cast<Constituent>(part.index);
        if (&part != &partOf(c) || part.of(mix).value <= 0.0)
            continue;
        if (const std::optional<double> each = refraction_mL_g(c))
            terms.push_back(
                {part.label, massOf(c, mix, working)
                                 * Symbol{"ν", part.subscript, *each, "mL/g",
                                     phrase("specific refraction of {0} at this strength and temperature", part.label), {}, 5}});
    }
    const Symbol sum{"N", "", refraction_mL, "mL", phrase("refraction of all of it")};
    working.found(sum,
        series("i", generalMass() * Symbol{"ν", "i", 0.0, "mL/g", phrase("specific refraction of each")}, std::move(terms)),
        Source::Refraction);
    const Formula perVolume = sum / volumeSymbol(volume, "liquid", temperature);
    WorkingStep& step = working.found(
        indexSymbol(indexOf(refraction_mL / volume.value)), root((1.0 + 2.0 * perVolume) / (1.0 - perVolume)), Source::Refraction);
    step.range = phrase("From 0 to 60 °C; fat and undissolved solids are not in the light's way, but blur the boundary.");
    step.uncertainty = phrase("0.0001 in the index for sugars and salt at 20 °C, 0.0003 for alcohol.");
}

}  // namespace

Formula indexOfSucrose(std::vector<Formula> strengthAndTemperature)
{
    return function("nD_sucrose", std::move(strengthAndTemperature),
        phrase("refractive index of sucrose in water, of that strength and temperature"));
}

Symbol indexSymbol(double index) { return {"nD", "", index, "", phrase("refractive index of the liquid"), {}, 5}; }

double refractiveIndexOfWater(Celsius temperature)
{
    return indexOf(waterRefraction_mL_g(temperature) * waterDensity(temperature).value);
}

std::optional<double> refractiveIndexOf(const Mix& mix, Celsius temperature, Working* working)
{
    const Strength strength = strengthOf(mix);
    const double factor = warming(strength.dissolvedSolids, temperature);
    double refraction_mL = mix[Constituent::Water].value * waterRefraction_mL_g(temperature)
                           + mix[Constituent::Ethanol].value * ethanolRefraction_mL_g(strength.ethanol)
                           + mix[Constituent::Protein].value * proteinRefraction_mL_g;
    for (const DissolvedSolid& solid : dissolvedSolids())
        refraction_mL += mix[solid.constituent].value * solid.refraction_mL_g.at(strength.dissolvedSolids) * factor;
    const bool hasLiquid = mix[Constituent::Water].value > 0.0 || mix[Constituent::Ethanol].value > 0.0;
    if (!hasLiquid)
        return std::nullopt;
    const Millilitres volume = liquidVolumeOf(mix, temperature, working);
    if (working) [[unlikely]]
        recordRefraction(*working, mix, temperature, refraction_mL, volume, [&](Constituent c) -> std::optional<double> {
            if (c == Constituent::Water)
                return waterRefraction_mL_g(temperature);
            if (c == Constituent::Ethanol)
                return ethanolRefraction_mL_g(strength.ethanol);
            if (c == Constituent::Protein)
                return proteinRefraction_mL_g;
            for (const DissolvedSolid& solid : dissolvedSolids())
                if (solid.constituent == c)
                    return solid.refraction_mL_g.at(strength.dissolvedSolids) * factor;
            return std::nullopt;
        });
    return indexOf(refraction_mL / volume.value);
}

double refractiveIndexOfBrix(double brix, Celsius temperature)
{
    Mix solution;
    solution.amounts[Constituent::Sucrose] = {brix};
    solution.amounts[Constituent::Water] = {100.0 - brix};
    return *refractiveIndexOf(solution, temperature);
}

std::optional<double> brixOfRefractiveIndex(double index, Celsius temperature)
{
    if (index > refractiveIndexOfBrix(highestBrix, temperature))
        return std::nullopt;
    if (index <= refractiveIndexOfBrix(0.0, temperature))
        return 0.0;
    std::uintmax_t steps = 50;
    const auto [low, high] =
        boost::math::tools::toms748_solve([&](double brix) { return refractiveIndexOfBrix(brix, temperature) - index; }, 0.0,
            highestBrix, boost::math::tools::eps_tolerance<double>(40), steps);
    return (low + high) / 2.0;
}

}  // namespace firn
