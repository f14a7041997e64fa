#include "exchange/recipe_csv.h"

#include "exchange/csv.h"
#include "exchange/plain_text.h"
#include "recipe/text_line.h"
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

/// More than a plain number and its unit is read as in a line of text: "2-3", "½ cup + 1 tbsp".
Row rowFromCells(const std::string& ingredient, const std::string& number, const std::string& unit, const std::string& note)
{
    const std::string amount = number + (unit.empty() ? "" : " " + unit);
    Row row = rowFromLine(ingredient + "\t" + amount);
    if (row.amount == Amount{})
        return {onOneLine(ingredient + " " + amount), {}, note, ""};
    row.note += (row.note.empty() || note.empty() ? "" : ", ") + note;
    return row;
}

std::size_t lastColumnOf(const Columns& columns) { return std::max({*columns.ingredient, *columns.amount, *columns.unit}); }

Row rowFrom(const CsvRecord& record, const Columns& columns)
{
    const auto cell = [&](std::size_t column) { return column < record.cells.size() ? record.cells[column] : std::string(); };
    if (lastColumnOf(columns) >= record.cells.size()) {
        std::string line;
        for (const std::string& each : record.cells)
            line += each + "\t";
        return rowFromLine(line);
    }
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
    if (const auto amount = parseAmount(number + " " + unit, Unit::Piece)) {
        row.amount = *amount;
        return row;
    }
    return rowFromCells(row.ingredient, number, unit, row.note);
}

/// "salt,0,g"
bool isZeroWritten(const CsvRecord& record, const Columns& columns)
{
    const auto number = *columns.amount < record.cells.size() ? leadingNumber(record.cells[*columns.amount]) : failure(Sentence{});
    return number && number->value == 0.0;
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
    std::vector<Row>& rows = recipe.components.front().rows;
    bool hasAmount = false;
    for (std::size_t i = header ? 1 : 0; i < records->size(); ++i) {
        Row row = rowFrom((*records)[i], columns);
        hasAmount |= row.amount != Amount{} || isZeroWritten((*records)[i], columns);
        rows.push_back(std::move(row));
    }
    if (!rows.empty() && !hasAmount) {
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (auto fault = faultOfLine(rows[i]))
                return failure(phrase("Line {0}: {1}", wholeNumber((*records)[i + (header ? 1 : 0)].line), english(*fault)));
        return failure(
            phrase("No ingredient here has an amount. Write it in a column of its own, such as 250, and its unit in the next."));
    }
    return recipe;
}

bool isRecipeTable(std::string_view text)
{
    const auto records = csvRecords(text);
    if (!records || records->empty())
        return false;
    if (const auto header = headerFrom(records->front()))
        return header->ingredient && header->amount && header->unit;
    return std::ranges::all_of(*records, [](const CsvRecord& record) {
        return record.cells.size() > lastColumnOf(columnsWithoutHeader)
               && (record.cells[1].empty() || startsWithNumber(record.cells[1]))
               && (record.cells[2].empty() || parseAmount("1 " + record.cells[2]));
    });
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
