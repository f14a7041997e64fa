// One ingredient a line, as a person would write it.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// One row from one line: "250 g water", "1 1/2 cups granulated sugar", "2 eggs", "water 250 g", "- 200 g of sugar", "salt". The amount
/// stands first or last; lacking a unit it counts pieces, and lacking a number the row has amount 0. In a line with tabs, as tables paste
/// it, the amount may have cells of its own and what is left over is the note. A name that no one knows stays as typed. Fails on an
/// amount that leadingNumber refuses.
Result<Row> rowFromText(std::string_view line);

/// Rows from a text; blank lines and lines that begin with # are passed over. A first line without an amount that ends with a colon, or
/// stands alone before a blank line, is not a row but the title; a later one that ends with a colon names a component. Fails on text that
/// is not UTF-8 and on a line that rowFromText refuses; the sentence names the line.
Result<Recipe> recipeFromText(std::string_view text);

/// "250 g water", one row a line, a note after a tab. What is written is read back as the same rows, as long as they have a name without
/// control characters and without blanks around it.
std::string rowsToText(const std::vector<Row>& rows);

/// Title, components and rows. A title or name that would be read as a row is written as a comment.
std::string recipeToText(const Recipe& recipe);

}  // namespace firn
