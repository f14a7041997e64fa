#include "exchange/recipe_csv.h"

#include "exchange/plain_text.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace firn {

namespace {

struct Record {
    std::size_t line;  // on which it begins, from 1
    std::vector<std::string> cells;
};

// Splitting

/// The separator that the first line has most of, outside quotes.
char separatorOf(std::string_view text)
{
    constexpr std::array<char, 3> separators = {',', ';', '\t'};
    std::array<int, separators.size()> counts{};
    bool isQuoted = false;
    for (const char c : text) {
        if (c == '"')
            isQuoted = !isQuoted;
        if (isQuoted)
            continue;
        if (c == '\n' || c == '\r')
            break;
        if (const auto found = std::ranges::find(separators, c); found != separators.end())
            ++counts[static_cast<std::size_t>(found - separators.begin())];
    }
    return separators[static_cast<std::size_t>(std::ranges::max_element(counts) - counts.begin())];
}

/// Takes CSV apart. Cells without quotes lose the blanks around them, cells in quotes keep theirs.
class Splitter {
public:
    explicit Splitter(std::string_view text)
        : m_rest(text)
        , m_separator(separatorOf(text))
    {
    }

    Result<std::vector<Record>> records()
    {
        std::vector<Record> records;
        while (!m_rest.empty()) {
            auto record = takeRecord();
            if (!record)
                return failure(record.error());
            if (!std::ranges::all_of(record->cells, &std::string::empty))
                records.push_back(std::move(*record));
        }
        return records;
    }

private:
    std::string_view m_rest;
    char m_separator;
    std::size_t m_line = 1;

    Result<Record> takeRecord()
    {
        Record record{m_line, {}};
        while (true) {
            auto cell = takeCell();
            if (!cell)
                return failure(cell.error());
            record.cells.push_back(std::move(*cell));
            if (!m_rest.starts_with(m_separator))
                break;
            m_rest.remove_prefix(1);
        }
        takeLineEnd();
        return record;
    }

    void takeLineEnd()
    {
        m_rest.remove_prefix(m_rest.starts_with("\r\n") ? 2 : std::min<std::size_t>(1, m_rest.size()));
        ++m_line;
    }

    std::string_view takeUntil(std::string_view ends)
    {
        const std::string_view taken = m_rest.substr(0, m_rest.find_first_of(ends));
        m_rest.remove_prefix(taken.size());
        m_line += static_cast<std::size_t>(std::ranges::count(taken, '\n'));
        return taken;
    }

    Result<std::string> takeCell()
    {
        const std::string_view start = m_rest;
        const std::string_view plain = takeUntil(std::string{m_separator, '\r', '\n'});
        if (!trimmed(plain).starts_with('"'))
            return std::string(trimmed(plain));
        m_rest = start.substr(start.find('"'));
        return takeQuoted();
    }

    Result<std::string> takeQuoted()
    {
        const std::size_t firstLine = m_line;
        std::string cell;
        while (m_rest.starts_with('"')) {
            m_rest.remove_prefix(1);
            cell += takeUntil("\"");
            if (m_rest.empty())
                return failure(phrase("Line {0}: a quote is opened and never closed.", wholeNumber(firstLine)));
            m_rest.remove_prefix(1);
            if (m_rest.starts_with('"'))  // twice: one in the cell, which goes on
                cell += '"';
        }
        const std::string_view after = takeUntil(std::string{m_separator, '\r', '\n'});
        if (!trimmed(after).empty())
            return failure(phrase("Line {0}: “{1}” cannot stand after a closing quote; a quote inside a cell is written twice.",
                wholeNumber(m_line), shortened(trimmed(after))));
        return cell;
    }
};

// Meaning

/// Where the columns are.
struct Columns {
    std::optional<std::size_t> ingredient;
    std::optional<std::size_t> amount;
    std::optional<std::size_t> unit;
    std::optional<std::size_t> note;
};
constexpr Columns columnsWithoutHeader{0, 1, 2, 3};

/// The columns that a header names; nothing if the record is no header.
std::optional<Columns> headerFrom(const Record& record)
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

constexpr std::string_view formulaStarts = "=+-@\t\r";

/// Apostrophes, then the start of a formula.
bool isGuarded(std::string_view cell)
{
    const std::size_t start = cell.find_first_not_of('\'');
    return start != cell.npos && formulaStarts.find(cell[start]) != formulaStarts.npos;
}

std::string withoutGuard(const std::string& cell) { return cell.starts_with('\'') && isGuarded(cell) ? cell.substr(1) : cell; }

Result<Row> rowFrom(const Record& record, const Columns& columns)
{
    const auto cell = [&](std::size_t column) { return column < record.cells.size() ? record.cells[column] : std::string(); };
    if (std::max({*columns.ingredient, *columns.amount, *columns.unit}) >= record.cells.size())
        return failure(phrase("A row needs an ingredient, an amount and a unit, each in its column."));

    Row row;
    row.ingredient = withoutGuard(cell(*columns.ingredient));
    row.note = columns.note ? withoutGuard(cell(*columns.note)) : "";
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

std::string cellText(std::string cell)
{
    if (isGuarded(cell))
        cell.insert(0, 1, '\'');
    const bool needsQuotes = cell.find_first_of(",;\t\"\r\n") != cell.npos || trimmed(cell) != cell;
    if (!needsQuotes)
        return cell;
    std::string quoted = "\"";
    for (const char c : cell) {
        quoted += c;
        if (c == '"')
            quoted += c;
    }
    return quoted + '"';
}

}  // namespace

Result<Recipe> recipeFromCsv(std::string_view text)
{
    text = withoutByteOrderMark(text);
    if (auto fault = faultOfText(text))
        return failure(std::move(*fault));
    const auto records = Splitter(text).records();
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
            csv += cellText(row.ingredient) + "," + exactNumber(row.amount.value) + ","
                   + std::string(factsOf(row.amount.unit).symbol) + "," + cellText(row.note) + "\r\n";
    }
    return csv;
}

}  // namespace firn
