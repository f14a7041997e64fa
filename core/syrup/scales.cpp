#include "syrup/scales.h"

#include "readings/readings.h"
#include "solution/sucrose.h"
#include "syrup/syrup.h"

#include <array>
#include <boost/math/tools/roots.hpp>
#include <cstdint>
#include <string>

namespace firn {

namespace {

constexpr GramsPerMillilitre heapOfSugar{200.0 / 236.5882365};  // USDA SR28, NDB 19335: a US cup of granulated sugar weighs 200 g

constexpr std::string_view nbs = "ICUMSA SPS-4 densities; NBS Circular 440 prints the same";

constexpr std::array scales{
    SyrupScaleFacts{SyrupScale::Brix, "°Bx (% by mass)", "°Bx", 1, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::SpecificGravity, "Specific gravity 20/20 °C", "", 4, strongestOfKnownDensity, nbs},
    SyrupScaleFacts{SyrupScale::Baume, "°Bé (modulus 145)", "°Bé", 1, strongestOfKnownDensity, nbs},
    SyrupScaleFacts{
        SyrupScale::GramsPerLitre, "Sugar in a litre of syrup, 20 °C", "g/L", 0, strongestOfKnownDensity, "ICUMSA SPS-4 densities"},
    SyrupScaleFacts{
        SyrupScale::GramsPerLitreOfWater, "Sugar to a litre of water, 20 °C", "g/L", 0, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::PartsByMass, "Parts of sugar to one of water, by mass", "", 3, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::PartsByVolume, "Cups of dry sugar to one cup of water", "", 2, strongestSyrup,
        "a cup of sugar 200 g, USDA SR28, NDB 19335; packing moves it by a tenth (judgement)"},
};

Readings readingsOf(MassFraction sucrose)
{
    Mix solution;
    solution.amounts[Constituent::Sucrose] = {sucrose.value};
    solution.amounts[Constituent::Water] = {1.0 - sucrose.value};
    return *readings(solution, {20.0});
}

double shownOn(SyrupScale scale, MassFraction sucrose)
{
    const double w = sucrose.value;
    const double perGramOfWater = w / (1.0 - w);
    constexpr double litre_mL = 1000.0;
    switch (scale) {
    case SyrupScale::Brix:
        return percent(sucrose);
    case SyrupScale::SpecificGravity:
        return readingsOf(sucrose).specificGravity_20_20;
    case SyrupScale::Baume:
        return readingsOf(sucrose).baume;
    case SyrupScale::GramsPerLitre:
        return litre_mL * w * sucroseSolutionDensity(sucrose, {20.0}).value;
    case SyrupScale::GramsPerLitreOfWater:
        return litre_mL * waterDensity({20.0}).value * perGramOfWater;
    case SyrupScale::PartsByMass:
        return perGramOfWater;
    case SyrupScale::PartsByVolume:
        return perGramOfWater * (waterDensity({20.0}) / heapOfSugar);
    }
    return 0.0;
}

}  // namespace

std::span<const SyrupScaleFacts> allSyrupScales() { return scales; }

const SyrupScaleFacts& factsOf(SyrupScale scale) { return scales[static_cast<std::size_t>(scale)]; }

Result<double> valueOn(SyrupScale scale, MassFraction sucrose)
{
    const SyrupScaleFacts& facts = factsOf(scale);
    if (!(sucrose.value >= 0.0 && sucrose <= facts.strongest))
        return failure(phrase("“{0}” is known from 0 to {1} % sugar by mass, not at {2} %.", std::string(facts.name),
            Figure{percent(facts.strongest), 0}, Figure{percent(sucrose), 1}));
    return shownOn(scale, sucrose);
}

Result<MassFraction> strengthFrom(SyrupScale scale, double value)
{
    const SyrupScaleFacts& facts = factsOf(scale);
    const double lowest = shownOn(scale, {0.0});
    const double highest = shownOn(scale, facts.strongest);
    if (!(value >= lowest && value <= highest))
        return failure(
            phrase("No syrup has {0} on the scale “{1}”: it goes from {2}, which is water, to {3}.", Figure{value, facts.decimals},
                std::string(facts.name), Figure{lowest, facts.decimals}, Figure{highest, facts.decimals}));
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::toms748_solve([&](double w) { return shownOn(scale, {w}) - value; }, 0.0,
        facts.strongest.value, boost::math::tools::eps_tolerance<double>(50), steps);
    return MassFraction{(low + high) / 2.0};
}

}  // namespace firn
