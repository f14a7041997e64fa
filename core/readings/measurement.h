// From readings back to the mix: how much sugar, and how much alcohol. The forward models of refractometer.h and hydrometer.h are solved
// for what makes them show what was read; there is no second model.
#pragma once

#include "derivation/working.h"
#include "readings/hydrometer.h"
#include "readings/refractometer.h"

#include <span>
#include <variant>
#include <vector>

namespace firn {

struct RefractometerReading {
    double brix = 0.0;
    Celsius temperature{20.0};  // of the drop
    Refractometer instrument;
};

struct HydrometerReading {
    double value = 0.0;
    Celsius temperature{20.0};
    Hydrometer instrument;
};

using Measurement = std::variant<RefractometerReading, HydrometerReading>;

/// What is known without measuring, by mass of the mix.
struct Beforehand {
    std::optional<MassFraction> sugar = {};
    std::optional<MassFraction> alcohol = {};
};

/// A mix that reads so. Uncertainties are one standard deviation, from errorsOf() each instrument; nothing is added for the rest of a recipe.
struct MixEstimate {
    MassFraction sugar;  // all sugars, lactose included
    MassFraction sugar_sd;
    MassFraction alcohol;
    MassFraction alcohol_sd;
    Mix mix;  // 1 g
};

/// All mixes that read so, weakest in alcohol first; never an empty list.
///
/// - one reading: sugar. The alcohol is what is known, else what `background` has in its water (none in an empty one).
/// - one reading and the sugar known: alcohol.
/// - a refractometer and a hydrometer: sugar and alcohol, or, where one is known, the other as both together have it.
///
/// `background` is the mix as computed, of which all but sugar and alcohol is believed (mix_family.h). A reading that lies within two
/// standard deviations beyond what can be counts as the end of what can be. Fails, saying what is wrong, on a reading off its scale, on one
/// that no mix has, and on two that no mix has together. 0 to 60 °C, with alcohol in question to 40 °C.
///
/// `workings`, if given, take for each mix how its sugars and its alcohol are found, under "measured.sugars_percent" and
/// "measured.alcohol_percent".
Result<std::vector<MixEstimate>> solve(std::span<const Measurement> measurements, const Beforehand& known = {},
    const Mix& background = {}, std::vector<Workings>* workings = nullptr);

}  // namespace firn
