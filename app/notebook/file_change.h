// Changing a recipe in its file while it is not on the bench.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <QString>
#include <functional>

namespace firn::app {

/// Reads the file anew, changes the recipe and writes it back in one stroke. On failure the file is as it was, and the sentence says why: it
/// cannot be read or written, or another program changed it just then.
Result<void> changeInFile(const QString& file, const std::function<void(Recipe&)>& change);

}  // namespace firn::app
