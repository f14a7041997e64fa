// The steps of a derivation as JSON. Only the files of this folder include it.
#pragma once

#include "derivation/working.h"
#include "exchange/json.h"

namespace firn {

Json stepsJson(const std::vector<WorkingStep>& steps);

}  // namespace firn
