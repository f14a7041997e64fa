// The temperature below which the freeze-concentrated liquid is a glass and no more ice forms.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

namespace firn {

/// Mean of the solutes' own limits, weighted by mass. The limits (onset of ice melting, Tm') are from memory after Y. Roos, Carbohydr. Res.
/// 238 (1993) 39, and contradict other schools by up to 10 K: sucrose -34 °C, glucose and fructose -46, lactose and trehalose -30, maltose
/// -32, chains of glucose syrups -23 and -11, sugar alcohols -49 to -57; glycerol and ethanol have none in a freezer's range.
Celsius glassLimit(const Mix& mix, Working* working = nullptr);

}  // namespace firn
