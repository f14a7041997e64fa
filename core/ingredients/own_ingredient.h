// What is asked of an ingredient that a person describes, before it is kept.
#pragma once

#include "ingredients/catalogue.h"
#include "units/sentence.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// The parts of an ingredient that can be at fault, each a place in the form.
enum class IngredientField { Name, Composition, MilkFat, MilkSolidsNotFat, YolkSolids };

struct IngredientFault {
    IngredientField field;
    Sentence sentence;
};

/// What stands against keeping this ingredient; nothing if it may be kept.
std::vector<IngredientFault> faultsOf(const Ingredient& ingredient);

/// Why it cannot have this name: an ingredient of the catalogue has it, and would be silently replaced by it in every recipe. Nothing where the
/// name is free or is that of the ingredient itself.
std::optional<Sentence> faultOfName(const Ingredient& ingredient, const Catalogue& catalogue);

/// What the constituents lack to 100 g; negative where they are more.
Grams missingTo100g(const Amounts& per100g);

/// "98.5 g of 100 g: 1.5 g are missing."
Sentence closureSentence(const Amounts& per100g);

/// The same with the rest as water, which never goes below none.
Amounts withRestAsWater(Amounts per100g);

/// A syrup of this strength in °Bx: water and sucrose.
Amounts syrupPer100g(double brix);

/// An id made of the name, and a number behind it where that is taken.
std::string idFor(std::string_view name, const std::function<bool(const std::string&)>& isTaken);

/// What a recipe may call this ingredient so that this very one is found: its name, or its id where another has that name; nothing
/// where another has both.
std::optional<std::string> callName(const Ingredient& ingredient, const Catalogue& catalogue);

}  // namespace firn
