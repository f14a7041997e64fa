// What the program carries in itself: the catalogue and the sample recipes.
#pragma once

#include "ingredients/catalogue.h"
#include "recipe/recipe.h"
#include "units/sentence.h"

#include <vector>

namespace firn::app {

Result<Catalogue> builtInCatalogue();

std::vector<Recipe> builtInSamples();

/// The sample that lies on the bench at the first start.
Recipe greetingSample();

}  // namespace firn::app
