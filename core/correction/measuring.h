// Readings as they are being made in a component: what they find, beside what the recipe computes.
#pragma once

#include "analysis/measured_beside.h"
#include "analysis/recorded_reading.h"
#include "analysis/workings_as_read.h"
#include "correction/correction.h"
#include "readings/jar.h"

namespace firn {

/// One mix that reads so, beside the recipe's.
struct FoundMix {
    MixEstimate estimate;
    bool isAlcoholFound = false;  // rather than known beforehand
    bool isSugarFound = true;
    MassFraction sugarDifference;  // found less computed
    MassFraction alcoholDifference;
    MeasuredState state;  // what a correction starts from
};

struct Measuring {
    Mix computed;  // of the component after its steps
    MassFraction sugar;
    MassFraction alcohol;
    std::optional<double> refractometer_brix;  // of the computed mix at 20 °C, by a scale without end
    std::vector<BesideReading> beside;         // each instrument; without a reading only what it would show counts
    std::vector<FoundMix> mixes;               // empty where there is no reading, or an impossible one
    std::optional<SugarRange> range;
    std::optional<Sentence> problem;  // why the readings are impossible
    std::vector<Sentence> disturbances;
};

/// `instruments` are those at hand, with their readings where `isRead`. The component must be one of the recipe's.
/// `workings`, if given, take for each of the mixes how it is found, under the keys of solve().
Measuring measuring(const Recipe& recipe, const Catalogue& catalogue, std::size_t component,
    const std::vector<ReadingRecord>& instruments, bool isRead, const Beforehand& known, std::vector<Workings>* workings = nullptr);

/// The key under which workings have how far a reading is from what is computed for it: "apart.refractometer_brix".
std::string figureApart(Instrument instrument);

/// How the figures of a measuring come about: those of the component by its recipe and of the instruments in it (workings_as_read.h); where they
/// are read, how far that is from what is computed; and where they find a mix of this number, what was found and under
/// "apart.sugars_percent" and "apart.alcohol_percent" how far that is from the recipe.
Workings workingsOfMeasuring(const Recipe& recipe, const Catalogue& catalogue, std::size_t component, const Conditions& conditions,
    const std::vector<ReadingRecord>& instruments, bool isRead, const Beforehand& known, std::size_t mix);

/// How much of this mix a jar takes for the usual hydrometer; none without a liquid.
std::optional<Result<JarFilling>> fillingFor(const Jar& jar, const Mix& mix, Celsius temperature);

}  // namespace firn
