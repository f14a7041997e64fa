// Refractive index (sodium D line, against air) of a mix's liquid, and the sucrose scale of a refractometer.
//
// Lorentz-Lorenz: (n^2 - 1)/(n^2 + 2) times the volume is the sum of grams times specific refraction, each solute at its strength in the
// water as in volume.h. Fat and undissolved solids are not in the light's way between their drops, but blur the boundary.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

#include <optional>

namespace firn {

/// Valid from 0 to 60 °C. At 20 °C within 0.0001 of the CRC Handbook for sugars, salt and citric acid, 0.0003 for ethanol. None for a mix
/// without liquid.
std::optional<double> refractiveIndexOf(const Mix& mix, Celsius temperature, Working* working = nullptr);

/// The index of sucrose in water as steps name it: a function of strength and temperature.
Formula indexOfSucrose(std::vector<Formula> strengthAndTemperature);

/// The index as steps name it.
Symbol indexSymbol(double index);

/// Refractive index of pure water; standard values from memory, which the OIV's table of temperature corrections confirms.
double refractiveIndexOfWater(Celsius temperature);

/// The end of all sucrose scales.
inline constexpr double highestBrix = 95.0;

/// Index of a sucrose solution; at 20 °C the scale of a refractometer in °Bx. Within 0.00006 of OIV-MA-AS2-02 Table II and the CRC Handbook
/// from 0 to 84 °Bx at 20 °C.
double refractiveIndexOfBrix(double brix, Celsius temperature = {20.0});

/// Strength of the sucrose solution that has this index at this temperature: 0 for anything below water, none above 95 °Bx.
std::optional<double> brixOfRefractiveIndex(double index, Celsius temperature = {20.0});

}  // namespace firn
