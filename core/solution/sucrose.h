// Density of water and of pure sucrose solutions.
// Source: ICUMSA SPS-4, in Z. Bubnik, P. Kadlec, D. Urban and M. Bruhns, Sugar Technologists Manual (Bartens 1995), p. 164.
// Valid from 0 to 100 °C and for 0 to 0.75 mass fraction of sucrose; agrees with the CRC Handbook to 0.0002 g/mL.
#pragma once

#include "derivation/working.h"
#include "units/quantity.h"

namespace firn {

GramsPerMillilitre waterDensity(Celsius temperature);
GramsPerMillilitre sucroseSolutionDensity(MassFraction sucrose, Celsius temperature);

/// Of water at this temperature, as steps name it.
Symbol waterDensitySymbol(Celsius temperature);

/// What waterDensity() reckons.
void recordWaterDensity(Working& working, const Symbol& density, const Symbol& temperature);

/// What sucroseSolutionDensity() reckons, with the density of water at hand.
void recordSucroseDensity(
    Working& working, const Symbol& density, const Symbol& sucrose, const Symbol& water, const Symbol& temperature);

}  // namespace firn
