// A refractometer in °Bx: a sucrose scale made for 20 °C, with limits, and with or without automatic temperature compensation.
//
// Without compensation it shows the refractive index at the drop's temperature, seen through its prism, on the 20 °C scale. Compensation
// moves the scale as a sucrose solution would need it.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "readings/scale_reading.h"

#include <optional>
#include <span>

namespace firn {

struct Refractometer {
    double from_brix = 0.0;
    double to_brix = 95.0;
    bool compensates = false;
    double division_brix = 0.2;
    friend bool operator==(const Refractometer&, const Refractometer&) = default;
};

/// Scales that are sold, without compensation: common practice, no source.
std::span<const Refractometer> commonRefractometers();

/// The temperatures over which compensation is meant to work: common practice, no source.
inline constexpr Celsius compensatedFrom{10.0};
inline constexpr Celsius compensatedTo{30.0};

/// The index that the scale of an instrument without compensation seems to see: its prism's own index changes with temperature.
double refractiveIndexSeen(double index, Celsius temperature);

/// What a scale without compensation shows for the index of a liquid at this temperature: 0 for anything below water, none above 95 °Bx.
std::optional<double> brixShown(double index, Celsius temperature, Working* working = nullptr);

/// The true index, at this temperature, of whatever makes the instrument show this. The inverse of read().
double refractiveIndexAt(const Refractometer& instrument, double brix, Celsius temperature, Working* working = nullptr);

/// None for a mix without liquid. Errors of pure sucrose: docs/models.md. Valid from 0 to 60 °C.
std::optional<ScaleReading> read(const Refractometer& instrument, const Mix& mix, Celsius temperature, Working* working = nullptr);

/// Why this instrument may be off in this mix, in °Bx.
std::vector<ErrorPart> errorsOf(const Refractometer& instrument, const Mix& mix, Celsius temperature);

}  // namespace firn
