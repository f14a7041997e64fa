// Sugar from the temperature at which the mix boils.
#pragma once

#include "readings/measurement.h"
#include "solution/boiling_point.h"

namespace firn {

struct BoilingReading {
    Celsius boilsAt;
    Hectopascals pressure = standardPressure;
    KelvinDifference thermometer_sd{0.5};  // of a kitchen thermometer: common practice, no source
    Hectopascals pressure_sd{10.0};        // of the weather, where no barometer is read: from memory
};

/// One kelvin is worth 20 % of sugar in a weak syrup and 2 % in a strong one: below 50 % the uncertainty says that nothing was learnt. Fails
/// below the boiling point of water and beyond 80 % of sugar, and for a background with alcohol.
///
/// `workings`, if given, take how the sugars are found, under "measured.sugars_percent".
Result<MixEstimate> sugarByBoiling(const BoilingReading& reading, const Mix& background = {}, Workings* workings = nullptr);

/// What a thermometer in the boiling mix is off by, in kelvin: itself, the weather, and the two sources of boilingPointOf().
std::vector<ErrorPart> errorsOf(const BoilingReading& reading, KelvinDifference halfGap);

}  // namespace firn
