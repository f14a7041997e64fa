#include "exchange/recipe_csv.h"

#include "exchange/csv.h"
#include "exchange/plain_text.h"
#include "units/text.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace firn {

namespace {

/// Where the columns are.
struct Columns {
    std::optional<std::size_t> ingredient;
    std::optional<std::size_t> amount;
    std::optional<std::size_t> unit;
    std::optional<std::size_t> note;
};
constexpr Columns columnsWithoutHeader{0, 1, 2, 3};

/// The columns that a header names; nothing if the record is no header.
std::optional<Columns> headerFrom(const CsvRecord& record)
{
    Columns columns;
    bool isHeader = false;
    for (std::size_t i = 0; i < record.cells.size(); ++i) {
        const std::string name = lowered(trimmed(record.cells[i]));
        const auto column = [&]() -> std::optional<std::size_t>* {
            if (name == "ingredient" || name == "name")
                return &columns.ingredient;
            if (name == "amount" || name == "quantity")
                return &columns.amount;
            if (name == "unit")
                return &columns.unit;
            return name == "note" ? &columns.note : nullptr;
        }();
        if (column == nullptr)
            continue;
        isHeader = true;
        if (!*column)
            *column = i;
    }
    return isHeader ? std::optional(columns) : std::nullopt;
}

Result<Row> rowFrom(const CsvRecord& record, const Columns& columns)
{
    const auto cell = [&](std::size_t column) { return column < record.cells.size() ? record.cells[column] : std::string(); };
    if (std::max({*columns.ingredient, *columns.amount, *columns.unit}) >= record.cells.size())
        return failure(phrase("A row needs an ingredient, an amount and a unit, each in its column."));

    Row row;
    row.ingredient = withoutFormulaGuard(cell(*columns.ingredient));
    row.note = columns.note ? withoutFormulaGuard(cell(*columns.note)) : "";
    const std::string unit = cell(*columns.unit);
    std::string number = cell(*columns.amount);
    if (number.empty()) {
        if (unit.empty())
            return row;
        number = "0";
    }
    const auto amount = parseAmount(number + " " + unit, Unit::Piece);
    if (!amount)
        return failure(amount.error());
    row.amount = *amount;
    return row;
}

}  // namespace

Result<Recipe> recipeFromCsv(std::string_view text)
{
    const auto records = csvRecords(text);
    if (!records)
        return failure(records.error());

    Recipe recipe;
    if (records->empty())
        return recipe;
    const auto header = headerFrom(records->front());
    const Columns columns = header.value_or(columnsWithoutHeader);
    if (!columns.ingredient || !columns.amount || !columns.unit)
        return failure(
            phrase("Line {0}: the header needs the columns ingredient, amount and unit.", wholeNumber(records->front().line)));
    for (std::size_t i = header ? 1 : 0; i < records->size(); ++i) {
        auto row = rowFrom((*records)[i], columns);
        if (!row)
            return failure(phrase("Line {0}: {1}", wholeNumber((*records)[i].line), english(row.error())));
        recipe.components.front().rows.push_back(std::move(*row));
    }
    return recipe;
}

std::string recipeToCsv(const Recipe& recipe)
{
    std::string csv = "ingredient,amount,unit,note\r\n";
    for (const Component& component : recipe.components) {
        for (const Row& row : component.rows)
            csv += csvCell(row.ingredient) + "," + exactAmountNumber(row.amount) + ","
                   + std::string(factsOf(row.amount.unit).symbol) + "," + csvCell(row.note) + "\r\n";
    }
    return csv;
}

}  // namespace firn
