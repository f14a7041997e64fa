// The energy of food, reckoned from its constituents as a nutrition declaration does.
#pragma once

#include "ingredients/composition.h"

namespace firn {

/// Energy in kcal by the conversion factors of Regulation (EU) 1169/2011, annex XIV, which add organic acids, polyols and fibre to the
/// general factors of Atwater (protein 4, fat 9, carbohydrate 4, alcohol 7 kcal/g). Published tables that reckon with factors of their own
/// for a food (USDA SR28 for fruit, nuts, cocoa) differ by more than 5 % for a quarter of them: the ingredient's energyNote says so. Fructans and polydextrose, which the catalogue has as oligosaccharides and dextrins, come out at 4 instead of 2.
double energy_kcal(const Amounts& amounts);

}  // namespace firn
