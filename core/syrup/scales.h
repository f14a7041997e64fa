// The scales on which people give the strength of a sugar syrup, from one to another through the share of sucrose by mass.
#pragma once

#include "derivation/working.h"
#include "units/quantity.h"
#include "units/sentence.h"

#include <span>
#include <string_view>

namespace firn {

enum class SyrupScale {
    Brix,                  // grams of sucrose in 100 g of syrup, which is also % by mass
    SpecificGravity,       // 20/20 °C, apparent in air
    Baume,                 // modulus 145
    GramsPerLitre,         // of sugar in a litre of syrup at 20 °C
    GramsPerLitreOfWater,  // of sugar to a litre of water at 20 °C
    PartsByMass,           // of sugar to one of water
    PartsByVolume          // cups of dry granulated sugar to one cup of water
};

struct SyrupScaleFacts {
    SyrupScale scale;
    std::string_view name;  // for people
    std::string_view unit;  // after a number; nothing for a bare one
    int decimals;
    MassFraction strongest;  // the scale is known from water to here
    std::string_view source;
};

std::span<const SyrupScaleFacts> allSyrupScales();
const SyrupScaleFacts& factsOf(SyrupScale scale);

/// Fails beyond the scale's range.
Result<double> valueOn(SyrupScale scale, MassFraction sucrose, Working* working = nullptr);

/// The share of sucrose of which the scale shows this. The inverse of valueOn to 1e-12. Fails outside the scale's range.
Result<MassFraction> strengthFrom(SyrupScale scale, double value);

}  // namespace firn
