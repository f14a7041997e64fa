// What the cook's instruments show in a mix at a temperature, before anything freezes.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "readings/egg.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

struct Readings {
    Celsius temperature;
    GramsPerMillilitre density;                // of the strained mix: fat included, air not
    double refractiveIndex = 0.0;              // at the temperature, sodium D line
    std::optional<double> refractometer_brix;  // a sucrose scale made for 20 °C, no compensation; none where the field stays dark
    double specificGravity_20_20 = 0.0;        // a hydrometer's scale: apparent in air, against water at 20 °C
    double baume = 0.0;                        // 145 (1 - 1/SG), by the ratio of true densities at 20 °C
    EggFloat egg;
    std::vector<Sentence> disturbances;  // what makes these readings say something else than sugar
};

/// None for a mix without water or alcohol to read in. `workings`, if given, take each reading.
std::optional<Readings> readings(const Mix& mix, Celsius temperature, const Egg& egg = {}, Workings* workings = nullptr);

}  // namespace firn
