// The exercises one by one. Each has all that it takes to solve it, and a solution that starts from just that.
#pragma once

#include "explain/dice.h"
#include "explain/exercises.h"

namespace firn {

/// None where the recipe has nothing to ask about.
using AskedExercise = std::optional<Exercise>;

AskedExercise sugarsByMass(const ExplainedAnalysis& explained);
/// More than `more` percentage points beyond the full percent that the mix has; none where that is more than any dessert.
AskedExercise sucroseToReach(const ExplainedAnalysis& explained, int more);
AskedExercise freezingPoint(const ExplainedAnalysis& explained);
AskedExercise refractometer(const ExplainedAnalysis& explained);
AskedExercise baume(const ExplainedAnalysis& explained);
AskedExercise iceWhenServed(const ExplainedAnalysis& explained);
AskedExercise alcoholByVolume(const ExplainedAnalysis& explained);

/// From a reading back to sugars by mass, in a mix like this one (readings/measurement.h): a batch that reads otherwise than the recipe. None
/// where no mix reads so.
AskedExercise sugarsByRefractometer(const Mix& mix, std::uint64_t seed, Dice& dice);

}  // namespace firn
