// From the % vol of a label to grams of alcohol, and back. % vol is mL of ethanol in 100 mL of the drink, both at 20 °C (OIML R 22).
#pragma once

#include "ingredients/composition.h"
#include "units/sentence.h"

#include <string_view>

namespace firn {

/// Whether a unit is that of a label's strength: "% vol", "vol%", "% ABV", "% v/v", "% by volume".
bool isAlcoholByVolume(std::string_view unit);

/// % vol of a drink of this composition; 0 for none.
double alcoholByVolume_percent(const Amounts& amounts);

/// Grams of ethanol in 100 g of a drink of this strength that holds the other constituents as they stand, its own ethanol not counted; what is
/// missing of 100 g is taken as `rest`, of which none is counted in `others` if it is water. Fails on a strength outside 0 to 100 % vol, and
/// where the other constituents leave too little room for so much alcohol.
Result<Grams> ethanolIn100g(double alcoholByVolume_percent, Amounts others, Constituent rest = Constituent::Water);

}  // namespace firn
