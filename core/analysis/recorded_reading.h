// Readings of the record beside what is computed: what the instrument would have shown, and what the mix was.
#pragma once

#include "mix/mix.h"
#include "readings/measurement.h"
#include "recipe/reading_record.h"

#include <optional>

namespace firn {

/// What the instrument of this record shows in the computed mix, in the record's unit: measured beside computed. None off its scale, where the
/// egg sinks, and where it cannot be used.
std::optional<ScaleReading> computedFor(const ReadingRecord& record, const Mix& computed);

/// What mix reads so, with `computed` as background (readings/measurement.h). An egg's range is given as its middle, half of it as the
/// uncertainty.
Result<std::vector<MixEstimate>> mixesBy(const ReadingRecord& record, const Mix& computed = {});

}  // namespace firn
