// A reading as the physical property that a mix must have to give it. Only the files of this folder include it.
#pragma once

#include "derivation/working.h"
#include "readings/measurement.h"

#include <string>

namespace firn {

/// Readings that lie this many standard deviations beyond what can be are taken for the end of what can be.
inline constexpr double toleratedDeviations = 2.0;

struct Target {
    enum class Property { RefractiveIndex, Density };

    Property property;
    double value;  // at the temperature
    Celsius temperature;
    Measurement reading;

    /// How much more of the property a mix has than it should.
    double excess(const Mix& mix) const;

    /// One standard deviation of the property, in this mix.
    double sd(const Mix& mix) const;
};

/// A target, and how it follows from the reading; without steps where nobody asks.
struct ExplainedTarget {
    Target target;
    Working working;
};

/// Fails on a reading that is off its scale, out of the temperatures, or beyond what liquids can be.
Result<Target> targetOf(const Measurement& reading, Working* working = nullptr);

/// solve() of measurement.h, for readings that are targets already: one, or one of an index and then one of a density.
Result<std::vector<MixEstimate>> solve(
    const std::vector<ExplainedTarget>& readings, const Beforehand& known, const Mix& background, std::vector<Workings>* workings);

/// "19.0 °Bx", "1.078 SG", "12.0 °Bé", for sentences.
struct Shown {
    Figure value;
    std::string unit;
};
Shown shown(const Measurement& reading);

/// What the same instrument would show in this mix; the nearer end of all scales of its kind where it would be off them.
Shown wouldShow(const Measurement& reading, const Mix& mix);

}  // namespace firn
