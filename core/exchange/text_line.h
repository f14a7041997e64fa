// One line of a recipe that is written as text.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

struct Line {
    Row row;
    bool hasAmount = false;
};

/// Reads a line; see rowFromText in recipe_text.h.
Result<Line> lineFrom(std::string_view text);

/// "Base:" as "Base": a line without an amount that ends with a colon.
std::optional<std::string> headingFrom(std::string_view text);

/// Whether the line holds nothing, or a comment.
bool isPassedOver(std::string_view line);

/// The text without line breaks, other control characters than tabs, and blanks around it.
std::string onOneLine(std::string_view text);

/// "of sugar" as "sugar": what follows an amount.
std::string_view withoutOf(std::string_view text);

}  // namespace firn
