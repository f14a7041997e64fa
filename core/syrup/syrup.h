// Making, boiling down and diluting a syrup of sucrose and water. Strengths are shares of sugar by mass: °Bx/100.
#pragma once

#include "derivation/working.h"
#include "solution/boiling_point.h"
#include "units/quantity.h"
#include "units/sentence.h"

#include <optional>

namespace firn {

// Functions that take a Working write into it how the first thing that they answer comes about.

/// Beyond, a boiled syrup is candy: judgement.
inline constexpr MassFraction strongestSyrup{0.95};

/// The end of the density formula, solution/sucrose.h.
inline constexpr MassFraction strongestOfKnownDensity{0.75};

struct SugarAndWater {
    Grams sugar;
    Grams water;
};

/// What this much syrup of this strength, a share from 0 to 1, is made of.
SugarAndWater contentsOf(Grams syrup, MassFraction strength);

struct SyrupRecipe {
    Grams sugar;
    Grams water;
    GramsPerMillilitre density;       // of the syrup, at the temperature asked for
    std::optional<Sentence> warning;  // where it is near saturation or beyond at that temperature
};

/// What makes this much syrup, measured at this temperature. Density: ICUMSA SPS-4, 0 to 75 % sugar and 0 to 100 °C; fails beyond, and
/// for no volume.
Result<SyrupRecipe> syrupOf(MassFraction strength, Millilitres volume, Celsius measuredAt, Working* working = nullptr);

struct BoiledSyrup {
    Grams mass;
    MassFraction strength;
    Grams waterDrivenOff;
    std::optional<BoilingPoint> boilsAt;  // at sea level, when it is done; none beyond what was ever measured
};

/// Boiled until it has this strength, at most 95 %. All sugar stays; that none of it inverts or browns is an assumption. Fails where it would
/// have to become weaker.
Result<BoiledSyrup> boiledTo(MassFraction wanted, Grams mass, MassFraction now, Working* working = nullptr);

/// Boiled until this much of it is left. Fails where that is more than there was, or leaves less than 5 % water.
Result<BoiledSyrup> boiledTo(Grams left, Grams mass, MassFraction now, Working* working = nullptr);

struct DilutedSyrup {
    Grams water;  // to add
    Grams mass;   // with it
};

/// Water that brings it down to a weaker strength. Fails where it is weaker already. For diluting with another syrup or a juice see amountToReach.
Result<DilutedSyrup> dilutedTo(MassFraction wanted, Grams mass, MassFraction now, Working* working = nullptr);

}  // namespace firn
