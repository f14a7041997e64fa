// How much of something brings a mix to a wanted share of ice: solved on the liquid's water activity, without a curve.
#pragma once

#include "texture/advice.h"

namespace firn {

/// Ice at a temperature: of the whole mix, or of what in it is not fat.
struct IceWanted {
    Celsius temperature;
    MassFraction share;
    bool isOfFatFree = false;
};

/// Whether the mix has as much ice.
bool hasIce(const Mix& mix, const IceWanted& wanted);

/// How often to make the changes that make up a gram, up to `most`, for the mix to have just as much ice; none where that lies beyond.
std::optional<Grams> amountForIce(const Mix& mix, const std::vector<MixChange>& perGram, Grams most, const IceWanted& wanted);

/// The most of something that can be left out of a mix.
Grams mostOf(Stuff stuff, const Mix& mix);

}  // namespace firn
