#include "exchange/csv.h"

#include "exchange/plain_text.h"
#include "units/text.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

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

    Result<std::vector<CsvRecord>> records()
    {
        std::vector<CsvRecord> records;
        while (!m_rest.empty()) {
            auto record = takeCsvRecord();
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

    Result<CsvRecord> takeCsvRecord()
    {
        CsvRecord record{m_line, {}};
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

constexpr std::string_view formulaStarts = "=+-@\t\r";

/// Apostrophes, then the start of a formula.
bool isGuarded(std::string_view cell)
{
    const std::size_t start = cell.find_first_not_of('\'');
    return start != cell.npos && formulaStarts.find(cell[start]) != formulaStarts.npos;
}

}  // namespace

Result<std::vector<CsvRecord>> csvRecords(std::string_view text)
{
    text = withoutByteOrderMark(text);
    if (auto fault = faultOfText(text))
        return failure(std::move(*fault));
    return Splitter(text).records();
}

std::string withoutFormulaGuard(const std::string& cell)
{
    return cell.starts_with('\'') && isGuarded(cell) ? cell.substr(1) : cell;
}

std::string csvCell(std::string cell)
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

}  // namespace firn
