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
    bool hasAmount = false;  // or says how much in words: "a handful"
    bool isListed = false;   // behind a bullet, a box to tick, or in columns
};

/// Reads a line; see rowFromText in exchange/recipe_text.h.
Result<Line> lineFrom(std::string_view text);

/// A row from a line: what it says, or, where it cannot be read, the whole line as a name without an amount. Analysing such a row says what
/// is wrong with the line.
Row rowFromLine(std::string_view text);

/// Why a row without an amount has none: its name is a line that cannot be read.
std::optional<Sentence> faultOfLine(const Row& row);

/// Whether the line holds nothing, or a comment.
bool isPassedOver(std::string_view line);

/// The text without line breaks, other control characters than tabs, and blanks around it.
std::string onOneLine(std::string_view text);

/// The line without a bullet, a box to tick, or both before it.
std::string_view withoutBullet(std::string_view line);

/// "of sugar" as "sugar": what follows an amount.
std::string_view withoutOf(std::string_view text);

}  // namespace firn
