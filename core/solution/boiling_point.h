// Where a mix boils: its water's vapour pressure, lowered by what is dissolved, reaches the pressure of the air.
//
// For sucrose there are two answers that no measurement at hand decides between: C. A. Browne's table (Handbook of Sugar Analysis, 1912) and
// the water activity of Starzak and Peacock. They differ by 0.2 to 0.4 K up to 50 % and by 2.5 K at 80 %. Firn answers midway, and gives half
// of the difference as the uncertainty; below 20 % it goes over to the activity alone, because Browne's 0.3 K at 2 % is ten times what any
// dilute solution can show.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

namespace firn {

/// W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, equation 1, coefficients from memory; 100 °C gives 1014.2 hPa. Valid from 0
/// to 370 °C.
Hectopascals saturationPressure(Celsius temperature);

/// The standard atmosphere, ISO 2533:1975; from -500 to 5000 m. The weather moves it by some 15 hPa.
Hectopascals pressureAtAltitude(double altitude_m);

inline constexpr Hectopascals standardPressure{1013.25};  // ISO 2533:1975, at sea level

/// The strongest solution in Browne's table.
inline constexpr MassFraction strongestBoiled{0.80};

struct BoilingPoint {
    Celsius temperature;
    KelvinDifference elevation;  // above water at the same pressure
    KelvinDifference halfGap;    // half of what the two sources differ by
};

/// Fails for a mix with alcohol, which leaves with the steam, for one without water, and beyond 80 % of solids in the water.
Result<BoilingPoint> boilingPointOf(const Mix& mix, Hectopascals pressure = standardPressure, Working* working = nullptr);

}  // namespace firn
