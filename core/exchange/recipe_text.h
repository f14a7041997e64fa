// One ingredient a line, as a person would write it.
#pragma once

#include "recipe/recipe.h"
#include "recipe/text_line.h"
#include "units/sentence.h"

#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// One row from one line: "250 g water", "1 1/2 cups granulated sugar", "2 eggs", "water 250 g", "- 200 g of sugar", "juice of 2 limes",
/// "3-4 lemons", "½ cup + 1 tbsp honey", "2 x 400 g tins coconut milk", "salt, to taste". Without a unit it counts pieces, and without a
/// number the row has amount 0. In a line with tabs, as tables paste it, the amount may have cells of its own and what is left over is
/// the note. A name that no one knows stays as typed. Fails on an amount that cannot be read or can mean two; rowFromLine keeps such a line.
Result<Row> rowFromText(std::string_view line);

/// Rows from a text. A line that cannot be read becomes a row with the whole line as its name and no amount (see rowFromLine). The first
/// words without an amount are the title; headings ("For the syrup:", "## Syrup", "Syrup" after a blank line) begin components; the method,
/// greetings and the like become the notes. Blank lines and lines that begin with one # are passed over. Fails on text that is not UTF-8,
/// and where something is written but nothing has an amount.
Result<Recipe> recipeFromText(std::string_view text);

/// "250 g water", one row a line, a note after a tab. What is written is read back as the same rows, as long as they have a name without
/// control characters and without blanks around it.
std::string rowsToText(const std::vector<Row>& rows);

/// Title, components, rows and notes. A title or name that cannot be written as a heading is written as a comment.
std::string recipeToText(const Recipe& recipe);

}  // namespace firn
