// Rows on the clipboard: whole for Firn itself, and as text, so that they go to and come from any program.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <vector>

namespace firn::app {

void putOnClipboard(const std::vector<Row>& rows);

/// What the clipboard holds: rows of Firn, or text with lines as a person writes them, or a table with commas, semicolons or tabs.
struct OnClipboard {
    Result<Recipe> recipe;
    bool isText = false;  // from elsewhere
};
OnClipboard recipeOnClipboard();

Result<Recipe> recipeFromPastedText(const std::string& text);

}  // namespace firn::app
