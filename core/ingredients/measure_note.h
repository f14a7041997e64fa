// Which of a food's measures a cook's note speaks of: "thinly sliced" means the cup of slices.
#pragma once

#include "ingredients/ingredient.h"

#include <string_view>

namespace firn {

/// By how many words a note names a measure; 0 if it does not. "slices", "sliced" and "Slice" are one word. Of a measure "chopped or sliced"
/// either will do, of "small curd, not packed" what stands before the comma. A piece is named by how the note or a part of it after a comma
/// begins, so that "in small dice" does not make the fruit a small one.
std::size_t wordsThatName(const Measure& measure, std::string_view note);

}  // namespace firn
