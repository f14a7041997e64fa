// "The refractometer reads 19 at 30 °C: what is it?"
#pragma once

#include "explain/dice.h"
#include "explain/exercises.h"

namespace firn {

/// From a reading back to sugars by mass, in a mix like this one (readings/measurement.h). With seed 0 the refractometer shows what the mix
/// would at 30 °C, to the nearest whole degree; another one varies reading and temperature. None where no mix reads so.
std::optional<Exercise> sugarsByRefractometer(const Mix& mix, std::uint64_t seed, Dice& dice);

}  // namespace firn
