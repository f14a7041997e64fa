// Ingredients as CSV: a table of Firn's own constituents, or of what nutrition tables print. The columns are in docs/file-format.md.
#pragma once

#include "exchange/imported_ingredient.h"

#include <string_view>
#include <vector>

namespace firn {

/// Reads CSV with comma, semicolon or tab whose first line names the columns, in any order; one of them is the name. Amounts are grams (or
/// milligrams, if the header says so) per 100 g, with either decimal mark; an empty cell is not known. All or nothing: fails with the line
/// on a missing name, a bad, negative or ambiguous number, a composition beyond 101 g, an id twice, a line of too few or too many cells,
/// a header without a name, columns that mean the same, and a broken quote.
Result<std::vector<ImportedIngredient>> ingredientsFromCsv(std::string_view text);

}  // namespace firn
