#include "recipe/text_line.h"

#include "recipe/measure_words.h"
#include "recipe/stated_twice.h"
#include "recipe/word_reader.h"
#include "recipe/written_amount.h"
#include "recipe/written_name.h"

#include <algorithm>
#include <vector>

namespace firn {

namespace {

/// What one cell, or a line without tabs, says.
struct Phrase {
    std::string ingredient;
    std::optional<WrittenAmount> amount;
    std::string note;
};

void addNote(std::string& notes, std::string_view note)
{
    notes += notes.empty() || note.empty() ? "" : ", ";
    notes += note;
}

/// "2. " and "2) " before an amount, which number the lines of a list.
std::string_view withoutListNumber(std::string_view line)
{
    constexpr std::size_t mostDigits = 2;
    const std::size_t digits = lengthOf(isDigit, line);
    if (digits == 0 || digits > mostDigits || digits == line.size() || (line[digits] != '.' && line[digits] != ')'))
        return line;
    const std::string_view rest = line.substr(digits + 1);
    const auto amount = blankAt(rest) > 0 ? writtenAmountAt(trimmed(rest)) : Result<std::optional<WrittenAmount>>(std::nullopt);
    return amount && *amount ? trimmed(rest) : line;
}

/// Leaders between a name and its amount become a tab: "Sugar.....200 g", "Sugar … 200 g".
std::string withLeadersAsTabs(std::string_view line)
{
    std::string result;
    for (std::size_t i = 0; i < line.size();) {
        std::size_t end = i;
        int dots = 0;
        for (;;) {
            const std::size_t at = end + (dots > 0 ? blanksAt(line.substr(end)) : 0);
            const std::size_t dot = line.substr(at).starts_with('.') ? 1 : line.substr(at).starts_with("\u2026") ? 3 : 0;
            if (dot == 0)
                break;
            dots += static_cast<int>(dot);
            end = at + dot;
        }
        constexpr int fewestDots = 3;
        if (dots == 0) {
            result += line[i++];
        } else {
            result += dots >= fewestDots ? "\t" : std::string(line.substr(i, end - i));
            i = end;
        }
    }
    return result;
}

/// Whether the last word is a unit, glued to its number or not.
bool endsInUnit(std::string_view text)
{
    const auto isBlankOrDigit = [](char c) { return c == ' ' || isDigit(c); };
    const auto lastWord = std::find_if(text.rbegin(), text.rend(), isBlankOrDigit).base();
    return unitNamed(std::string_view(lastWord, text.end())).has_value();
}

/// Whether an amount may begin here that ends a line.
bool mayBeginAmount(std::string_view text)
{
    return startsWithNumber(text) || text.starts_with('~') || oneOfWordsAt(words::rough, text) > 0
           || oneOfWordsAt(words::aloneForOne, text) > 0 || lowered(text.substr(0, 2)) == "a ";
}

/// "water 250 g", "water: 250 g", "egg yolks x 4", "eggs: 3": the first place from which the rest is an amount.
Result<Phrase> phraseWithAmountLast(std::string_view text, bool mayCount)
{
    constexpr std::size_t longestLine_bytes = 1000;  // of an ingredient; every blank in it is looked at
    if (text.size() > longestLine_bytes)
        return Phrase{std::string(text), std::nullopt, ""};
    const bool isMeantAsAmount = endsInUnit(text);
    for (std::size_t i = 0; i < text.size();) {
        // A dot may be all that is left of the leaders before an amount: "Ground almonds.100 g".
        const std::size_t gap = text[i] == '.' && i > 0 && isAsciiLetter(text[i - 1]) ? 1 : blankAt(text.substr(i));
        i += std::max<std::size_t>(gap, 1);
        const std::string_view rest = text.substr(i);
        if (gap == 0 || !mayBeginAmount(rest))
            continue;
        auto amount = writtenAmountAt(rest);
        if (!amount && isMeantAsAmount)
            return failure(amount.error());
        if (!amount || !*amount || !(*amount)->amount || (*amount)->length != rest.size())
            continue;
        std::string_view name = trimmed(text.substr(0, i));
        const bool isTimes = name.ends_with(" x") || name.ends_with("\u00d7");
        if ((*amount)->isBare && !mayCount && !isTimes && !name.ends_with(':'))
            continue;
        if (isTimes)
            name = trimmed(name.substr(0, name.size() - (name.ends_with('x') ? 1 : 2)));
        for (bool isDone = false; !isDone;) {
            isDone = true;
            for (const std::string_view mark : {",", ";", ":", "-", "=", ".", "\u2013", "\u2014"}) {
                if (name.ends_with(mark)) {
                    name = trimmed(name.substr(0, name.size() - mark.size()));
                    isDone = false;
                }
            }
        }
        if (name.empty())
            break;
        return Phrase{std::string(name), std::move(**amount), ""};
    }
    return Phrase{std::string(text), std::nullopt, ""};
}

/// "2% milk": with an amount elsewhere in the line, the share belongs to the name. "2 % milk" is always 2 % of the mix.
bool startsWithGluedPercent(std::string_view text)
{
    const auto number = leadingNumber(text);
    return number && text.substr(number->length).starts_with('%');
}

Result<Phrase> phraseWithAmount(std::string_view text, bool mayCount)
{
    auto amountLast = phraseWithAmountLast(text, mayCount);
    if (startsWithGluedPercent(text) && amountLast && amountLast->amount)
        return amountLast;
    auto amount = writtenAmountAt(text);
    if (!amount)
        return failure(amount.error());
    if (!*amount)
        return amountLast;
    std::string_view name = trimmed(text.substr((*amount)->length));
    while (!name.empty() && std::string_view(",;:").find(name.front()) != std::string_view::npos)
        name = trimmed(name.substr(1));
    name = withoutOf(name);
    if (oneOfWordsAt(std::to_array<std::string_view>({"the"}), name) == 3 && name.size() > 3)
        name = trimmed(name.substr(3));
    return Phrase{std::string(name), std::move(**amount), ""};
}

/// "juice of 2 limes" as 2 pieces of lime juice; nothing if the text names no part of something counted.
Result<std::optional<Phrase>> phraseOfPart(std::string_view text)
{
    const auto part = partFrom(text);
    if (!part)
        return failure(part.error());
    if (!*part)
        return std::nullopt;
    auto said = phraseWithAmount((*part)->whole, true);
    if (!said)
        return failure(said.error());
    if (!said->amount || !said->amount->amount || !said->amount->isBare || said->ingredient.empty())
        return std::nullopt;
    said->ingredient = nameOfPart((*part)->part, said->ingredient);
    return std::optional(std::move(*said));
}

/// What stands in brackets after a name: the amount ("pears (500 g)", "lemons (2)"), or the same amount once more ("sugar (½ cup)").
std::optional<Sentence> weighBrackets(Phrase& said, std::string_view brackets)
{
    const std::string name(trimmed(said.ingredient.substr(0, said.ingredient.rfind('('))));
    const auto measured = amountInBrackets(brackets);
    if (said.amount && said.amount->amount && measured) {
        const auto better = betterOf(*said.amount->amount, *measured);
        if (!better)
            return better.error();
        addNote(said.note, amountText(*better == *measured ? *said.amount->amount : *measured));
        said.amount->amount = *better;
        said.ingredient = name;
    } else if (!said.amount) {
        auto counted = writtenAmountAt(brackets);
        if (!counted)
            return counted.error();
        if (*counted && (*counted)->amount && (*counted)->length == brackets.size()) {
            said.amount = std::move(**counted);
            said.ingredient = name;
        }
    }
    return std::nullopt;
}

Result<Phrase> phraseFrom(std::string_view text)
{
    auto part = phraseOfPart(text);
    if (!part)
        return failure(part.error());
    auto said = *part ? Result<Phrase>(std::move(**part)) : phraseWithAmount(text, false);
    if (!said)
        return said;
    const std::string written = said->ingredient;
    const WrittenName name = nameFrom(written);
    said->ingredient = name.ingredient;
    if (said->amount)
        said->note = said->amount->note;
    if (name.brackets)
        if (auto fault = weighBrackets(*said, *name.brackets))
            return failure(std::move(*fault));
    addNote(said->note, name.note);
    return said;
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
    WrittenAmount amount;
    std::size_t count;
};

Result<std::optional<AmountCells>> amountCellsAt(const std::vector<std::string_view>& cells, std::size_t first)
{
    if (first >= cells.size() || !mayBeginAmount(cells[first]))
        return std::nullopt;
    // Read together, for "cl" and "dl" are no units of their own.
    const bool isNumberAlone = std::ranges::none_of(cells[first], isAsciiLetter);
    if (isNumberAlone && first + 1 < cells.size()) {
        const std::string both = std::string(cells[first]) + " " + std::string(cells[first + 1]);
        auto amount = writtenAmountAt(both);
        if (amount && *amount && (*amount)->amount && !(*amount)->isBare && (*amount)->length == both.size())
            return AmountCells{std::move(**amount), 2};
        if (!amount && unitNamed(cells[first + 1]))
            return failure(amount.error());
    }
    auto amount = writtenAmountAt(cells[first]);
    if (!amount)
        return failure(amount.error());
    if (!*amount || !(*amount)->amount || (*amount)->length != cells[first].size())
        return std::nullopt;
    return AmountCells{std::move(**amount), 1};
}

/// The name, amount and note that the cells of one line hold.
Result<Line> lineFromCells(const std::vector<std::string_view>& cells)
{
    Line line;
    line.isListed = cells.size() > 1;
    std::size_t used = 0;
    const auto take = [&](const AmountCells& amount) {
        line.row.amount = *amount.amount.amount;
        line.row.note = amount.amount.note;
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
        line.row.note = said->note;
        if (said->ingredient.empty() && used < cells.size())
            line.row.ingredient = cells[used++];
        const bool isArticle =
            said->amount && said->amount->isInWords && said->amount->isBare && lowered(cells[0].substr(0, 1)) == "a";
        line.hasAmount = said->amount.has_value() && !isArticle;
        if (said->amount)
            line.row.amount = said->amount->amount.value_or(Amount{});
        const bool mayHaveCell = !said->amount || startsWithGluedPercent(cells[0]);
        const auto amountNext = mayHaveCell ? amountCellsAt(cells, used) : std::nullopt;
        if (!amountNext)
            return failure(amountNext.error());
        if (*amountNext) {
            line.row.ingredient = said->amount ? std::string(cells[0]) : said->ingredient;
            take(**amountNext);
        }
    }
    std::string cellNote;
    for (; used < cells.size(); ++used)
        cellNote += (cellNote.empty() ? "" : " ") + std::string(cells[used]);
    addNote(line.row.note, cellNote);
    if (line.row.ingredient.empty()) {
        // A note needs a name to stand beside.
        line.row.note.clear();
        if (line.row.amount == Amount{})
            line.row.ingredient = cells[0];
    }
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

std::string_view withoutBullet(std::string_view line)
{
    // Dashes and stars need a blank after them; dots, ticks and boxes do not.
    constexpr auto signs = std::to_array<std::string_view>({"\u2022", "\u00b7", "\u25aa", "\u25e6", "\u2023", "\u25cf", "\u25cb",
        "\u2610", "\u2611", "\u2612", "\u25a2", "\u25a1", "\u25a0", "\u2713", "\u2714", "[ ]", "[x]", "[X]", "[]"});
    constexpr auto strokes = std::to_array<std::string_view>({"-", "*", "\u2013", "\u2014", "+"});
    for (bool isDone = false; !isDone;) {
        isDone = true;
        for (const std::string_view sign : signs)
            if (line.starts_with(sign))
                line = trimmed(line.substr(sign.size())), isDone = false;
        for (const std::string_view stroke : strokes)
            if (line.starts_with(stroke) && (line.size() == stroke.size() || blankAt(line.substr(stroke.size())) > 0))
                line = trimmed(line.substr(stroke.size())), isDone = false;
    }
    return line;
}

std::string_view withoutOf(std::string_view text)
{
    const bool startsWithOf = lowered(text.substr(0, 2)) == "of" && blankAt(text.substr(2)) > 0;
    return startsWithOf ? trimmed(text.substr(2)) : text;
}

Result<Line> lineFrom(std::string_view text)
{
    const std::string plain = onOneLine(text);
    const std::string_view body = withoutBullet(plain);
    const std::string_view unnumbered = withoutListNumber(body);
    const std::string parted =
        unnumbered.find('\t') == std::string_view::npos ? withLeadersAsTabs(unnumbered) : std::string(unnumbered);
    const auto cells = cellsOf(parted);
    auto line = cells.empty() ? Line{} : lineFromCells(cells);
    if (line && unnumbered.size() != plain.size())
        line->isListed = true;
    return line;
}

Row rowFromLine(std::string_view text)
{
    if (auto line = lineFrom(text))
        return std::move(line->row);
    Row row;
    row.ingredient = onOneLine(text);
    std::ranges::replace(row.ingredient, '\t', ' ');
    return row;
}

std::optional<Sentence> faultOfLine(const Row& row)
{
    if (row.amount != Amount{})
        return std::nullopt;
    auto line = lineFrom(row.ingredient);
    return line ? std::nullopt : std::optional(std::move(line.error()));
}

bool isPassedOver(std::string_view line)
{
    const std::string plain = onOneLine(line);
    return withoutBullet(plain).empty() || (plain.starts_with('#') && !plain.starts_with("##"));
}

}  // namespace firn
