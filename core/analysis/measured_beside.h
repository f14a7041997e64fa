// The kept readings of one component beside what is computed for it.
#pragma once

#include "derivation/working.h"
#include "readings/measurement.h"
#include "recipe/recipe.h"

#include <optional>
#include <vector>

namespace firn {

struct BesideReading {
    ReadingRecord record;
    std::optional<ScaleReading> computed;  // what the same instrument shows in the computed mix
    std::optional<double> difference;      // measured less computed, in the record's unit
};

BesideReading besideComputed(const ReadingRecord& record, const Mix& computed);

struct MeasuredBeside {
    std::vector<BesideReading> readings;  // the latest of each kind of instrument, the latest of all at the end
    std::optional<MixEstimate> mix;  // as the last one finds it, or the last two if read together; none where they do not decide
    MassFraction sugarDifference;    // measured less computed
};

/// Whether a record with this component's name, of a reading or of a correction, is about this component; without one, about the whole recipe.
bool isAbout(const std::string& recorded, const Recipe& recipe, std::optional<std::size_t> component);

/// Costs nothing where nothing was kept. `workings`, if given, take how sugars and alcohol are found, under the keys of solve().
MeasuredBeside measuredBeside(
    const Recipe& recipe, std::optional<std::size_t> component, const Mix& computed, Workings* workings = nullptr);

}  // namespace firn
