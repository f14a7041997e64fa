// What an ingredient's id may look like, and one for an ingredient that came without.
#pragma once

#include <string>
#include <string_view>

namespace firn {

/// Whether this is lower-case letters and digits in words with single hyphens between them.
bool isIngredientId(std::string_view text);

/// An id made of the words of a name: "Crème fraîche, 30 %" becomes "creme-fraiche-30". Letters of other scripts are left out; a name
/// without any other becomes "ingredient".
std::string ingredientIdFrom(std::string_view name);

}  // namespace firn
