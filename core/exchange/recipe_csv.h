// Recipes as CSV (RFC 4180): columns ingredient, amount, unit, and optionally note.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <string_view>

namespace firn {

/// Reads CSV with comma, semicolon or tab, with or without a header. A header may have its columns in any order, may say "name" and
/// "quantity", and may have more of them, which are passed over. Amounts are read as in text ("1 1/2", "1,5", "2-3"); an empty one is 0,
/// an empty unit counts pieces. A record that cannot be read becomes a row with all of it as the name (see rowFromLine). Fails with the line on a
/// broken quote and a column missing in the header, and where no amount at all can be read.
Result<Recipe> recipeFromCsv(std::string_view text);

/// Whether a text is such a table to its last record: lines such as "250 g sugar, fine" have commas, too.
bool isRecipeTable(std::string_view text);

/// Writes CSV, all components one after the other. A cell that a spreadsheet would take for a formula (it begins with = + - @ tab or CR)
/// is led by an apostrophe, which reading takes off again.
std::string recipeToCsv(const Recipe& recipe);

}  // namespace firn
