// Readings, and what they find, in words.
#pragma once

#include "correction/measuring.h"

#include <QString>

namespace firn::app {

/// "19.3 ± 0.3 % sugars", and the alcohol where that was found too.
QString mixText(const FoundMix& mix, QChar between);
QString sugarsText(const FoundMix& mix);
QString alcoholText(const FoundMix& mix);

/// Of an egg.
QString rangeText(const SugarRange& range);

/// "−3.1", or "none".
QString differenceText(MassFraction difference);
QString differenceText(const BesideReading& beside);

/// "21.9 ± 0.2 °Bx", or why there is none.
QString computedText(const BesideReading& beside);

/// The instrument and its settings, where they matter: "refractometer, corrects for temperature".
QString instrumentText(const ReadingRecord& record);

/// "88 ± 6 g"
QString addedText(const CorrectionChoice& choice);

}  // namespace firn::app
