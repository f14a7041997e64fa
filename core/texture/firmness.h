// From ice to what the spoon feels.
#pragma once

#include "texture/texture.h"

namespace firn {

/// How much of the mix's ice counts for firmness: fat beyond that of an ice cream and air both soften.
struct Softening {
    MassFraction fat;
    double overrun_percent = 0.0;
};

/// Ice, as share of the whole mix, at which a firmness begins. Zero for Liquid.
MassFraction iceWhere(Firmness firmness, Softening softening, Working* working = nullptr);

Firmness firmnessOf(MassFraction ice, Softening softening);

/// Firmness from 0 °C to -30 °C, warmest first, without gaps.
std::vector<FirmnessRegion> firmnessRegions(const FreezingCurve& curve, Softening softening);

}  // namespace firn
