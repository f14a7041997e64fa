// How cold a dessert is usually served: what is taken where the recipe does not say.
#pragma once

#include "recipe/recipe.h"

namespace firn {

/// Unverified, all of them: scraped -10 °C, where the trade's granitas (14 to 26 % sugar) lie loose by this program's own figures; churned -12 °C,
/// the case from which ices of 30 to 36 % are scooped; folded -14 °C, because a foam softens on its way to the table; still -12 °C. What is not
/// frozen comes from the refrigerator at 4 °C.
Celsius usualServing(Process process);

}  // namespace firn
