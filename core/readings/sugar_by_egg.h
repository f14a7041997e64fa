// Sugar from an egg that floats in the mix.
#pragma once

#include "mix/mix.h"
#include "readings/egg.h"
#include "readings/egg_kinds.h"
#include "readings/measurement.h"

namespace firn {

struct EggReading {
    Millimetres patchWidth;
    Celsius temperature{20.0};
    Grams mass{57.0};
    EggAge age = eggAges().back();
    Millimetres width_sd{1.0};  // common practice with a ruler, no source
};

/// Where the sugar lies for the oldest and for the freshest egg that it may have been, the width read 1 sd too large or too small.
struct SugarRange {
    MassFraction least;
    MassFraction likely;
    MassFraction most;
    MassFraction alcohol;
    Mix mix;  // 1 g of the likely one
};

/// Alcohol and background as in solve() for one hydrometer. Fails on a patch that no such egg can show, and on a density that no mix has.
/// `workings`, if given, take how the ends of the range and what is likely are found, under "measured.sugars_least_percent",
/// "measured.sugars_likely_percent" and "measured.sugars_most_percent", and the alcohol under "measured.alcohol_percent".
Result<SugarRange> sugarByEgg(
    const EggReading& reading, std::optional<MassFraction> alcohol = {}, const Mix& background = {}, Workings* workings = nullptr);

/// The middle of the range, with half of it as the uncertainty. `workings`, if given, take it under "measured.sugars_percent".
MixEstimate asEstimate(const SugarRange& range, Workings* workings = nullptr);

}  // namespace firn
