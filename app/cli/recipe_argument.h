// A recipe named on the command line.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <QString>
#include <optional>

namespace firn::app {

/// The recipe in a file of any kind, or as text on standard input for "-".
Result<Recipe> recipeIn(const QString& file);

/// The component of this name, whatever its case; none, for the whole dessert, where the name is empty. Fails if there is no such component.
Result<std::optional<std::size_t>> componentIn(const Recipe& recipe, const std::string& name);

}  // namespace firn::app
