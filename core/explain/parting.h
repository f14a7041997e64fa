// Where the two methods for the freezing point differ, cause by cause.
#pragma once

#include "explain/methods.h"

namespace firn {

/// The parts of the difference between the curve's freezing point and the textbook's, in the order of PartingCause; without those that the mix
/// has nothing for.
std::vector<Parting> partingsOf(const Mix& mix, Celsius byWaterActivity, Celsius byTextbook);

/// What the textbook and the curve do with a cause, and which way the curve goes for it.
Sentence reasonFor(PartingCause cause, const Mix& mix, KelvinDifference difference);

}  // namespace firn
