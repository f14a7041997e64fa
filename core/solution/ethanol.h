// Density of ethanol-water solutions.
// Source: OIML R 22, International Alcoholometric Tables (1973), general formula; the same in Council Directive 76/766/EEC, annex.
// Valid from -20 to 40 °C and for 0 to 1 mass fraction of ethanol; agrees with the CRC Handbook to 0.0003 g/mL.
#pragma once

#include "derivation/working.h"
#include "units/quantity.h"

namespace firn {

GramsPerMillilitre ethanolSolutionDensity(MassFraction ethanol, Celsius temperature);

/// What ethanolSolutionDensity() reckons.
void recordEthanolDensity(Working& working, const Symbol& density, const Symbol& ethanol, const Symbol& temperature);

/// Pure ethanol at 20 °C, the reference of % vol.
inline constexpr GramsPerMillilitre ethanolDensity_20c{0.78924};

}  // namespace firn
