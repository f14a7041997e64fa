// What to do about too much spirit.
#pragma once

#include "texture/texture.h"

namespace firn {

/// What makes a mix with alcohol freeze so far that this share of its fat-free part is ice at this temperature: a spirit of 40 % vol taken
/// out, its water with it, or water added, no more than the mix weighs. Nothing for a mix that has that much ice already, or holds no alcohol.
std::optional<SpiritExcess> spiritExcess(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree);

}  // namespace firn
