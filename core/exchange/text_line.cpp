#include "exchange/text_line.h"

#include "units/text.h"

#include <algorithm>
#include <vector>

namespace firn {

namespace {

/// What one cell, or a line without tabs, says.
struct Phrase {
    std::string_view ingredient;
    std::optional<Amount> amount;
};

std::string_view withoutBullet(std::string_view line)
{
    for (const std::string_view bullet : {"-", "*", "\u2022", "\u2013"}) {
        if (line.starts_with(bullet) && (bullet == "\u2022" || blankAt(line.substr(bullet.size())) > 0))
            return trimmed(line.substr(bullet.size()));
    }
    return line;
}

Amount counted(const LeadingAmount& amount) { return {amount.value, amount.unit.value_or(Unit::Piece)}; }

/// Whether the last word is a unit, glued to its number or not.
bool endsInUnit(std::string_view text)
{
    const auto isBlankOrDigit = [](char c) { return c == ' ' || isDigit(c); };
    const auto lastWord = std::find_if(text.rbegin(), text.rend(), isBlankOrDigit).base();
    return unitNamed(std::string_view(lastWord, text.end())).has_value();
}

/// "water 250 g", "water: 250 g": the first place from which the rest is an amount.
Result<Phrase> phraseWithAmountLast(std::string_view text)
{
    const bool isMeantAsAmount = endsInUnit(text);
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t blank = blankAt(text.substr(i));
        i += std::max<std::size_t>(blank, 1);
        const std::string_view rest = text.substr(i);
        if (blank == 0 || !startsWithNumber(rest))
            continue;
        const auto amount = leadingAmount(rest);
        if (!amount && isMeantAsAmount)
            return failure(amount.error());
        if (amount && amount->unit && amount->length == rest.size()) {
            std::string_view name = trimmed(text.substr(0, i));
            while (!name.empty() && std::string_view(",;:-").find(name.back()) != std::string_view::npos)
                name = trimmed(name.substr(0, name.size() - 1));
            return name.empty() ? Phrase{text, std::nullopt} : Phrase{name, counted(*amount)};
        }
    }
    return Phrase{text, std::nullopt};
}

/// "2% milk": with an amount elsewhere in the line, the share belongs to the name. "2 % milk" is always 2 % of the mix.
bool startsWithGluedPercent(std::string_view text)
{
    const auto number = leadingNumber(text);
    return number && text.substr(number->length).starts_with('%');
}

Result<Phrase> phraseFrom(std::string_view text)
{
    auto amountLast = phraseWithAmountLast(text);
    if (!startsWithNumber(text) || (startsWithGluedPercent(text) && amountLast && amountLast->amount))
        return amountLast;
    const auto amount = leadingAmount(text);
    if (!amount)
        return failure(amount.error());
    const std::string_view rest = text.substr(amount->length);
    const bool isPartOfName = !amount->unit && !rest.empty() && blankAt(rest) == 0;  // "7up"
    return isPartOfName ? amountLast : Phrase{withoutOf(trimmed(rest)), counted(*amount)};
}

std::vector<std::string_view> cellsOf(std::string_view line)
{
    std::vector<std::string_view> cells;
    for (std::size_t start = 0; start <= line.size();) {
        const std::size_t end = std::min(line.find('\t', start), line.size());
        if (const auto cell = trimmed(line.substr(start, end - start)); !cell.empty())
            cells.push_back(cell);
        start = end + 1;
    }
    return cells;
}

/// An amount with cells of its own, "250 g" or "250" and "g", and how many it takes.
struct AmountCells {
    Amount amount;
    std::size_t count;
};

Result<std::optional<AmountCells>> amountCellsAt(const std::vector<std::string_view>& cells, std::size_t first)
{
    if (first >= cells.size() || !startsWithNumber(cells[first]))
        return std::nullopt;
    if (first + 1 < cells.size()) {
        // Read together, for "cl" and "dl" are no units of their own, and "1.250" is doubtful until its unit is known.
        const auto both = parseAmount(std::string(cells[first]) + " " + std::string(cells[first + 1]));
        if (both)
            return AmountCells{*both, 2};
        if (both.error().readings)
            return failure(both.error());
    }
    const auto amount = leadingAmount(cells[first]);
    if (!amount)
        return failure(amount.error());
    if (amount->length != cells[first].size())
        return std::nullopt;
    return AmountCells{counted(*amount), 1};
}

/// The name, amount and note that the cells of one line hold.
Result<Line> lineFromCells(const std::vector<std::string_view>& cells)
{
    Line line;
    std::size_t used = 0;
    const auto take = [&](const AmountCells& amount) {
        line.row.amount = amount.amount;
        line.hasAmount = true;
        used += amount.count;
    };

    const auto amountFirst = amountCellsAt(cells, 0);
    if (!amountFirst)
        return failure(amountFirst.error());
    if (*amountFirst && cells.size() > 1) {
        take(**amountFirst);
        if (used < cells.size())
            line.row.ingredient = cells[used++];
    } else {
        const auto said = phraseFrom(cells[used++]);
        if (!said)
            return failure(said.error());
        line.row.ingredient = said->ingredient;
        line.row.amount = said->amount.value_or(Amount{});
        line.hasAmount = said->amount.has_value();
        const bool mayHaveCell = !line.hasAmount || startsWithGluedPercent(cells[0]);
        const auto amountNext = mayHaveCell ? amountCellsAt(cells, used) : std::nullopt;
        if (!amountNext)
            return failure(amountNext.error());
        if (*amountNext) {
            line.row.ingredient = line.hasAmount ? cells[0] : said->ingredient;
            take(**amountNext);
        }
    }
    for (; used < cells.size(); ++used)
        line.row.note += (line.row.note.empty() ? "" : " ") + std::string(cells[used]);
    return line;
}

}  // namespace

std::string onOneLine(std::string_view text)
{
    std::string line(text);
    std::ranges::replace_if(
        line, [](char c) { return (c >= '\0' && c < ' ' && c != '\t') || c == '\x7f'; }, ' ');
    return std::string(trimmed(line));
}

std::string_view withoutOf(std::string_view text)
{
    const bool startsWithOf = lowered(text.substr(0, 2)) == "of" && blankAt(text.substr(2)) > 0;
    return startsWithOf ? trimmed(text.substr(2)) : text;
}

Result<Line> lineFrom(std::string_view text)
{
    const std::string plain = onOneLine(text);
    const auto cells = cellsOf(withoutBullet(plain));
    return cells.empty() ? Line{} : lineFromCells(cells);
}

std::optional<std::string> headingFrom(std::string_view text)
{
    std::string plain = onOneLine(text);
    std::ranges::replace(plain, '\t', ' ');  // a heading has no cells
    if (!plain.ends_with(':'))
        return std::nullopt;
    const auto line = lineFrom(plain);
    if (line && line->hasAmount)
        return std::nullopt;
    std::string_view name = plain;
    while (name.ends_with(':'))
        name = trimmed(name.substr(0, name.size() - 1));
    return name.empty() ? std::nullopt : std::optional(std::string(name));
}

bool isPassedOver(std::string_view line)
{
    const std::string plain = onOneLine(line);
    return withoutBullet(plain).empty() || plain.starts_with('#');
}

}  // namespace firn
