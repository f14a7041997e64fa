// Which figures the list of all figures offers, and in which order.
#pragma once

#include "derivation/working.h"

namespace firn::app {

/// Those of the gauges first, then all others but the many of the freezing curve and of single components, which steps lead to.
std::vector<std::string> listedFigures(const Workings& workings);

}  // namespace firn::app
