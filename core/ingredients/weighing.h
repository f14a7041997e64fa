// From an amount in the kitchen's units to grams, through the food's own cup weight or density.
#pragma once

#include "derivation/working.h"
#include "ingredients/ingredient.h"
#include "units/amount.h"
#include "units/sentence.h"

#include <string_view>

namespace firn {

/// The mass that an amount has, and how it was found ("cup weight, USDA SR28", "density 1.03 g/mL").
struct Weighing {
    Grams mass;
    Sentence how;
};

/// Weighs an amount of this ingredient. Not for % of the mix, which needs the other rows. Fails where a volume or a piece is asked of
/// an ingredient that has neither a density nor a weighed measure. Of several measures of a unit the one that the row's note names
/// ("thinly sliced", "large") is taken, and otherwise the first.
Result<Weighing> weigh(const Amount& amount, const Ingredient& ingredient, std::string_view note = {}, Working* working = nullptr);

/// The mass of an amount given as a mass, whatever it is of; nothing for volumes, pieces and shares.
std::optional<Weighing> weighWithoutIngredient(const Amount& amount, Working* working = nullptr);

/// The mass of a row, as steps of its weighing name it.
Symbol rowMass(Grams mass);

}  // namespace firn
