// How figures come about in a mix that is being read: all of an analysis, as warm as the sample, and what the instruments show in it.
#pragma once

#include "analysis/analysis.h"

#include <span>

namespace firn {

/// The key under which workings have what an instrument shows in the computed mix: "computed.refractometer_brix".
std::string figureComputedFor(Instrument instrument);

/// The workings of analyse(), after all steps and without the readings that were kept, at the temperature of these records' sample; and under
/// that key what each of their instruments shows in it. Records are of one sample.
Workings workingsAsRead(std::span<const ReadingRecord> records, Recipe recipe, const Catalogue& catalogue, Conditions conditions,
    std::optional<std::size_t> component = {});

}  // namespace firn
