// Rows on the clipboard: as text, so that they go to and come from any program.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <vector>

namespace firn::app {

void putOnClipboard(const std::vector<Row>& rows);

/// What the clipboard's text says: lines as a person writes them, or a table with commas, semicolons or tabs.
Result<Recipe> recipeOnClipboard();

Result<Recipe> recipeFromPastedText(const std::string& text);

}  // namespace firn::app
