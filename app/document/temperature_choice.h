// The unit of temperatures that the person chose, from one start to the next.
#pragma once

#include "units/temperature.h"

namespace firn::app {

/// Shows temperatures as was chosen at some time, or as the locale has them.
void showTemperaturesAsChosen();

/// Shows them in this unit from now on, and remembers it.
void chooseTemperatureUnit(TemperatureUnit unit);

}  // namespace firn::app
