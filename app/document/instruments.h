// The cook's instruments, remembered between starts.
#pragma once

#include "analysis/instrument_readings.h"
#include "readings/jar.h"
#include "recipe/reading_record.h"

namespace firn::app {

/// A record of this kind of instrument as it was chosen last, with no reading of it; the usual one before that. All hydrometers are one kind.
ReadingRecord rememberedInstrument(Instrument kind);
void rememberInstrument(const ReadingRecord& instrument);

Jar rememberedJar();
void rememberJar(const Jar& jar);

/// Those that the gauges show.
Instruments rememberedInstruments();

}  // namespace firn::app
