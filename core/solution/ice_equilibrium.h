// Where ice and a watery liquid are in equilibrium: ln a_w(liquid, T) = ln p_ice(T) - ln p_liquid(T).
// Source: D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equations 7 and 10, shifted by 1e-4 so that pure water
// freezes at exactly 0 °C (the formulas meet at the triple point). Agrees with IAPWS R14-08(2011) to 0.03 %.
#pragma once

#include "units/quantity.h"

namespace firn {

/// Natural logarithm of the water activity of a liquid in equilibrium with ice. Valid from 0 to -60 °C.
double lnWaterActivityOverIce(Celsius temperature);

/// ln a_w of a liquid as a function of its temperature T in kelvin: constant + perKelvin / T.
struct LnActivity {
    double constant = 0.0;
    double perKelvin = 0.0;  // K; the excess enthalpy of sugars in water makes their activity a function of 1/T

    double at(Celsius temperature) const { return constant + perKelvin / kelvin(temperature); }
};

/// The lowest temperature that equilibriumTemperature answers with; no dessert's liquid is used beyond it.
inline constexpr Celsius coldestEquilibrium{-60.0};

/// The temperature at which a liquid of this activity begins to freeze, within 1e-5 K; coldestEquilibrium where it would be lower.
Celsius equilibriumTemperature(const LnActivity& activity);

}  // namespace firn
