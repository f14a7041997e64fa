// From ice to what the spoon feels.
#pragma once

#include "texture/texture.h"

namespace firn {

/// What holds the ice together: in one piece that a spoon cuts, or as loose crystals wetted with syrup, as scraping leaves them.
enum class IceForm { OnePiece, LooseCrystals };
IceForm iceFormOf(Process process);

/// How much of the mix's ice counts for firmness: fat beyond that of an ice cream and air both soften what is in one piece.
struct Softening {
    MassFraction fat;
    double overrun_percent = 0.0;
};

/// Ice, as share of the whole mix, at which a firmness begins. Zero for Liquid.
MassFraction iceWhere(Firmness firmness, Softening softening, Working* working = nullptr);

Firmness firmnessOf(MassFraction ice, Softening softening, IceForm form = IceForm::OnePiece);

/// Firmness from 0 °C to -30 °C, warmest first, without gaps.
std::vector<FirmnessRegion> firmnessRegions(const FreezingCurve& curve, Softening softening, IceForm form = IceForm::OnePiece);

/// The ice with which a kind of dessert is served, as share of the mix.
struct ServingEdges {
    MassFraction leastBest, mostBest;      // the serving window
    MassFraction leastServed, mostServed;  // beyond these it is softer or harder than it should be
};

/// None for kinds that nobody serves with a spoon: blocks, and what does not freeze.
std::optional<ServingEdges> servingEdges(TextureClass textureClass, Softening softening);

}  // namespace firn
