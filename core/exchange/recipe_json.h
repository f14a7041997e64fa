// Recipe files (.firn): UTF-8 JSON, described in docs/file-format.md.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <string_view>

namespace firn {

inline constexpr std::string_view recipeFormat = "firn-recipe";
inline constexpr unsigned recipeFormatVersion = 1;

/// Reads a recipe. Fields that are not known are kept. Fails on JSON that is torn, nested too deep, repeats a key, is no recipe or is of
/// a newer format; the sentence names the line and column, or the field.
Result<Recipe> recipeFromJson(std::string_view text);

/// Writes a recipe with a stable key order, one row a line, so that files compare well.
std::string recipeToJson(const Recipe& recipe);

}  // namespace firn
