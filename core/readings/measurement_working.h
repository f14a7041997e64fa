// How an estimate follows from what was read. Only the files of this folder include it.
#pragma once

#include "derivation/working.h"
#include "readings/target.h"

namespace firn {

/// Which of the two a reading finds; the other is known.
enum class Unknown { Sugars, Alcohol };

/// The share of it that was found: w_sugars, w_alcohol.
Symbol symbolOf(Unknown unknown, const MixEstimate& found);

/// The other one, which was known beforehand, or which the recipe has in its water.
enum class KnownFrom { Beforehand, Recipe };
void recordKnown(Workings& workings, Unknown unknown, const MixEstimate& found, KnownFrom from);

/// One unknown from one reading.
void recordEstimate(
    Workings& workings, const ExplainedTarget& reading, Unknown unknown, const MixEstimate& found, KnownFrom otherFrom);

/// The mean of what two readings say about one unknown.
void recordMean(Workings& workings, const ExplainedTarget& firstReading, const MixEstimate& first,
    const ExplainedTarget& secondReading, const MixEstimate& second, Unknown unknown, const MixEstimate& mean);

/// Two unknowns from two readings.
void recordPair(Workings& workings, const ExplainedTarget& index, const ExplainedTarget& density, const MixEstimate& found);

}  // namespace firn
