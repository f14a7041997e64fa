#include "exchange/recipe_text.h"

#include "exchange/plain_text.h"
#include "exchange/text_line.h"

#include <algorithm>
#include <utility>

namespace firn {

namespace {

std::vector<std::string_view> linesOf(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        lines.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

/// Whether this line is followed by a blank one, and something after that.
bool standsAlone(const std::vector<std::string_view>& lines, std::size_t index)
{
    const auto isBlank = [](std::string_view line) { return onOneLine(line).empty(); };
    return index + 1 < lines.size() && isBlank(lines[index + 1])
           && !std::all_of(lines.begin() + static_cast<std::ptrdiff_t>(index) + 2, lines.end(), isBlank);
}

std::string headingText(const std::string& name)
{
    const std::string heading = onOneLine(name) + ":";
    return (headingFrom(heading) && !isPassedOver(heading) ? heading : "# " + onOneLine(name)) + "\n";
}

/// Whether the line says this row and nothing else.
bool says(const std::string& line, const Row& row)
{
    if (isPassedOver(line) || headingFrom(line))
        return false;
    const auto read = lineFrom(line);
    return read && read->row.ingredient == row.ingredient && read->row.amount == row.amount && read->row.note == row.note;
}

/// The row as a person would write it, or, where that would be read as something else, in full.
std::string lineOf(const Row& row)
{
    const std::string note = row.note.empty() ? "" : "\t" + onOneLine(row.note);
    std::string ingredient = onOneLine(row.ingredient);
    if (withoutOf(ingredient) != ingredient)
        ingredient = "of " + ingredient;

    std::string natural = amountText(row.amount) + " " + ingredient + note;
    if (row.amount == Amount{})
        natural = ingredient + note;
    else if (row.amount.unit == Unit::Piece)
        natural = amountNumber(row.amount) + " " + ingredient + note;
    if (says(natural, row))
        return natural;
    const std::string number = exactAmountNumber(row.amount);
    const std::string symbol(factsOf(row.amount.unit).symbol);
    const std::string full = number + " " + symbol + " " + ingredient + note;
    // In cells of their own a name cannot run into a unit, as "of. mix" does after "%".
    return says(full, row) ? full : onOneLine(row.ingredient) + "\t" + number + "\t" + symbol + note;
}

}  // namespace

Result<Row> rowFromText(std::string_view line)
{
    auto read = lineFrom(line);
    if (!read)
        return failure(std::move(read.error()));
    return std::move(read->row);
}

Result<Recipe> recipeFromText(std::string_view text)
{
    text = withoutByteOrderMark(text);
    if (auto fault = faultOfText(text))
        return failure(std::move(*fault));
    Recipe recipe;
    bool isFirst = true;
    const auto lines = linesOf(text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (isPassedOver(lines[i]))
            continue;
        const bool mayBeTitle = std::exchange(isFirst, false);
        if (auto heading = headingFrom(lines[i])) {
            if (mayBeTitle) {
                recipe.title = std::move(*heading);
                continue;
            }
            if (!recipe.components.back().rows.empty() || !recipe.components.back().name.empty())
                recipe.components.emplace_back();
            recipe.components.back().name = std::move(*heading);
            continue;
        }
        auto line = lineFrom(lines[i]);
        if (!line)
            return failure(phrase("Line {0}: {1}", wholeNumber(i + 1), english(line.error())));
        auto title =
            mayBeTitle && !line->hasAmount && standsAlone(lines, i) ? headingFrom(std::string(lines[i]) + ":") : std::nullopt;
        if (title)
            recipe.title = std::move(*title);
        else
            recipe.components.back().rows.push_back(std::move(line->row));
    }
    return recipe;
}

std::string rowsToText(const std::vector<Row>& rows)
{
    std::string text;
    for (const Row& row : rows)
        text += lineOf(row) + "\n";
    return text;
}

std::string recipeToText(const Recipe& recipe)
{
    std::string text = recipe.title.empty() ? "" : headingText(recipe.title);
    // Without a title above it, a row before a blank line would be taken for one.
    const std::string gap = isPassedOver(text) ? "" : "\n";
    for (const Component& component : recipe.components)
        text += gap + (component.name.empty() ? "" : headingText(component.name)) + rowsToText(component.rows);
    return text;
}

}  // namespace firn
