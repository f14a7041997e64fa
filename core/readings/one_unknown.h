// One unknown from one reading. Only the files of this folder include it.
#pragma once

#include "readings/mix_family.h"
#include "readings/target.h"

namespace firn {

/// The sugar, beside this much alcohol, that makes the reading. Never an empty list; fails if there is none.
Result<std::vector<MixEstimate>> sugarFrom(const Target& target, const MixFamily& family, MassFraction alcohol);

/// The alcohol, beside this much sugar, that makes the reading. Never an empty list; fails if there is none.
Result<std::vector<MixEstimate>> alcoholFrom(const Target& target, const MixFamily& family, MassFraction sugar);

}  // namespace firn
