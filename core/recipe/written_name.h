// What a line of a recipe calls its ingredient, apart from what else stands there.
#pragma once

#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

struct WrittenName {
    std::string ingredient;
    std::string note;                               // "to taste", "optional", "plus extra for dusting"
    std::optional<std::string_view> brackets = {};  // what stands in brackets at the end, if that begins with a number or "about"
};

/// The name without footnote marks, marks at its end, and what does not belong to it: "sugar*,", "salt, to taste". What would leave no name
/// is left as it is.
WrittenName nameFrom(std::string_view text);

/// Part of a fruit or an egg: "juice of 2 limes", "1 lemon, zested".
struct WrittenPart {
    std::string_view part;   // "juice", "zest", "yolk"
    std::string_view whole;  // the text that says how many of what: "2 limes"
};

/// Nothing where the text names no part of something counted. Fails on two parts, which are two ingredients.
Result<std::optional<WrittenPart>> partFrom(std::string_view text);

/// "lime juice" of the juice of limes: of "2 large limes, chilled" the name is "large limes, chilled".
std::string nameOfPart(std::string_view part, std::string_view name);

}  // namespace firn
