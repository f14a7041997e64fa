// What tasters have to be told before they taste. A code hides a version, never what could harm.
#pragma once

#include "ingredients/catalogue.h"
#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <vector>

namespace firn {

/// That tasters have to hear it (common practice; local codes decide).
Sentence beforeTasting();

/// The dangers and allergens of these versions together (an empty id is what is on the bench), each once and without saying in which it is.
std::vector<Sentence> tasterCautions(const Recipe& recipe, const Catalogue& catalogue, const std::vector<std::string>& versions);

}  // namespace firn
