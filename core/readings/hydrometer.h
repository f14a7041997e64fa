// A hydrometer: a weighted glass float with a scale in °Bx, specific gravity or °Bé, made for 20 °C or 60 °F.
//
// It shows the density of the liquid at the liquid's own temperature, as if that were the scale's; only the glass has then a little more or
// less room. So a warm syrup reads less, as it does in the kitchen.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "readings/scale_reading.h"

#include <optional>
#include <span>

namespace firn {

enum class HydrometerScale { Brix, SpecificGravity, Baume };
enum class Calibration { At20C, At60F };

Celsius temperatureOf(Calibration calibration);

struct Hydrometer {
    HydrometerScale scale = HydrometerScale::Brix;
    Calibration calibration = Calibration::At20C;
    double from = 0.0;
    double to = 70.0;
    double division = 0.5;
    friend bool operator==(const Hydrometer&, const Hydrometer&) = default;
};

/// Scales that are sold, one of each kind, for 20 °C: common practice, no source.
std::span<const Hydrometer> commonHydrometers();

/// A scale of this kind without ends, for readings of which nothing else is known.
Hydrometer wholeScale(HydrometerScale scale, Calibration calibration = Calibration::At20C);

/// What the densities of scales are weighed in.
inline constexpr GramsPerMillilitre densityOfAir{0.0012};  // NBS Circular 440

/// Modulus of °Bé for liquids heavier than water.
inline constexpr double baumeModulus = 145.0;  // NBS Circular 440

/// Specific gravity as scales and tables give it: both weighed in air of 1.2 mg/mL, against water at the temperature of the scale.
double specificGravityInAir(GramsPerMillilitre density, Celsius water = {20.0});

/// 145 (1 - 1/SG), the modulus of NBS Circular 440, whose °Bé column goes by the ratio of true densities, unlike its SG column.
double baumeOf(GramsPerMillilitre density, Celsius water = {20.0});

/// Density, at this temperature, of the liquid in which the instrument shows this. Without regard to the ends of its scale.
GramsPerMillilitre densityAt(const Hydrometer& instrument, double value, Celsius temperature, Working* working = nullptr);

/// What it shows in a liquid of this density; errors are left out.
ScaleReading read(const Hydrometer& instrument, GramsPerMillilitre liquid, Celsius temperature);

/// None for an empty mix. °Bx to SG within 0.0003 and to °Bé within 0.05 of NBS Circular 440. Valid from 0 to 60 °C.
std::optional<ScaleReading> read(const Hydrometer& instrument, const Mix& mix, Celsius temperature, Working* working = nullptr);

/// Why this instrument may be off in this mix, in its own units.
std::vector<ErrorPart> errorsOf(const Hydrometer& instrument, const Mix& mix, Celsius temperature);

}  // namespace firn
