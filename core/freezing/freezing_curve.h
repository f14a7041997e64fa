// Freezing point and freezing curve of a mix from the water activity of its liquid.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

#include <optional>
#include <vector>

namespace firn {

struct FreezingPoint {
    Celsius temperature;
    bool isExtrapolated = false;  // a solute is stronger there than any measurement the model was fitted to
};

/// One temperature of the curve.
struct FreezingStep {
    Celsius temperature;
    MassFraction ice;          // of the whole mix
    MassFraction waterFrozen;  // of all its water
    bool isExtrapolated = false;
};

/// How a mix freezes, from its freezing point down to -30 °C.
struct FreezingCurve {
    std::optional<FreezingPoint> freezingPoint;  // none for a mix without water
    Celsius glassLimit;                          // no more ice forms below
    std::vector<FreezingStep> steps;  // warmest first: the freezing point, then every half degree; empty if nothing freezes

    /// Ice at a temperature, as share of the mix: 0 above the freezing point, what the last step has below -30 °C.
    MassFraction iceAt(Celsius temperature, Working* working = nullptr) const;

    /// The temperature at which this share of the mix is ice; none if it never is above -30 °C.
    std::optional<Celsius> temperatureWithIce(MassFraction ice, Working* working = nullptr) const;
};

/// The curve's coldest temperature.
inline constexpr Celsius coldestOfCurve{-30.0};

/// `workings`, if given, take the freezing point, the glass limit, and the ice at each temperature of the curve.
FreezingCurve freezingCurve(const Mix& mix, Workings* workings = nullptr);

}  // namespace firn
