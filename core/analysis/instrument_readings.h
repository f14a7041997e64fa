// What the cook's own instruments show in the mix: their scales end somewhere, and every figure has its uncertainty.
#pragma once

#include "readings/egg.h"
#include "readings/hydrometer.h"
#include "readings/refractometer.h"

namespace firn {

struct Instruments {
    Refractometer refractometer;
    Calibration hydrometer = Calibration::At20C;
    Egg egg = {};
    friend bool operator==(const Instruments&, const Instruments&) = default;
};

struct InstrumentReadings {
    Refractometer refractometer;  // that was read
    ScaleReading brix;
    ScaleReading hydrometerBrix;
    ScaleReading hydrometerGravity;
    ScaleReading hydrometerBaume;
};

/// None for a mix without liquid.
/// `workings`, if given, take how each comes about, under "instruments.refractometer_brix", "instruments.hydrometer_brix",
/// "instruments.hydrometer_gravity" and "instruments.hydrometer_baume".
std::optional<InstrumentReadings> instrumentReadings(
    const Instruments& instruments, const Mix& mix, Celsius temperature, Workings* workings = nullptr);

}  // namespace firn
