// Sugar and alcohol from a refractometer and a hydrometer. Only the files of this folder include it.
#pragma once

#include "readings/mix_family.h"
#include "readings/target.h"

namespace firn {

/// For each alcohol the density gives the sugar; the index then picks the alcohol. Never an empty list; fails if no mix has both.
Result<std::vector<MixEstimate>> sugarAndAlcoholFrom(const Target& index, const Target& density, const MixFamily& family);

}  // namespace firn
