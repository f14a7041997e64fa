// Whether one exercise tells the answer of another.
#pragma once

#include "explain/exercises.h"

namespace firn {

/// Everything that an exercise prints before its solution is asked for, hints and tables included, in English: a cell of a table with the name
/// of its column after it.
std::string textOf(const Exercise& exercise);

/// Whether a number with this answer's unit after it stands in the text, and is as near to the answer as counts as right.
bool givesAway(std::string_view text, const ExpectedAnswer& answer);

}  // namespace firn
