// How much spirit a mix may carry and still freeze.
#pragma once

#include "texture/texture.h"

namespace firn {

/// The ethanol that must leave the mix for this share of the fat-free rest to be ice at this temperature; nothing if the mix has that
/// much ice already, or would not have it without any ethanol either.
std::optional<SpiritExcess> spiritExcess(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree);

}  // namespace firn
