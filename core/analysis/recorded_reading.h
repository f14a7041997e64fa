// Readings of the record beside what is computed: what the instrument would have shown, and what the mix was.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "readings/measurement.h"
#include "readings/sugar_by_egg.h"
#include "recipe/reading_record.h"

#include <optional>
#include <span>

namespace firn {

/// The instruments of a record: the usual one of its kind where it says nothing.
Refractometer refractometerOf(const ReadingRecord& record);
Hydrometer hydrometerOf(const ReadingRecord& record);

/// How warm the sample was: 20 °C where the record says nothing.
Celsius temperatureOf(const ReadingRecord& record);

/// The egg of a record: its mass, and how old it is.
EggReading eggOf(const ReadingRecord& record);

/// What the instrument of this record shows in the computed mix, in the record's unit: measured beside computed. None off its scale, where the
/// egg sinks, and where it cannot be used. `working`, if given, takes how it comes about.
std::optional<ScaleReading> computedFor(const ReadingRecord& record, const Mix& computed, Working* working = nullptr);

/// What readings of one mix, made at one time, say about it.
struct Found {
    std::vector<MixEstimate> mixes;        // all that read so, never an empty list
    std::optional<SugarRange> range = {};  // of an egg, of which `mixes` has the middle with half of it as the uncertainty
};

/// What mix reads so, with `computed` as background (readings/measurement.h). One reading of any kind, or one of a refractometer and one of a
/// hydrometer. An egg heeds the alcohol that is known, a boiling point nothing that is.
///
/// `workings`, if given, take for each mix those of solve(), of sugarByEgg() or of sugarByBoiling().
Result<Found> foundBy(std::span<const ReadingRecord> records, const Beforehand& known, const Mix& computed,
    std::vector<Workings>* workings = nullptr);

/// The mixes that one record finds.
Result<std::vector<MixEstimate>> mixesBy(const ReadingRecord& record, const Mix& computed = {});

}  // namespace firn
