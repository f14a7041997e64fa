#include "exchange/recipe_text.h"

#include "exchange/line_kind.h"
#include "exchange/plain_text.h"
#include "units/text.h"

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

/// Reads a recipe line by line.
class RecipeReader {
public:
    explicit RecipeReader(std::string_view text)
        : m_lines(linesOf(text))
    {
        for (const std::string_view line : m_lines)
            m_kinds.push_back(kindOf(line));
    }

    Result<Recipe> read() &&
    {
        for (m_at = 0; m_at < m_lines.size(); ++m_at)
            readLine();
        // What nothing at all could be read of is no recipe; its first fault says most.
        const bool isSaid =
            m_hasProse || std::ranges::any_of(m_recipe.components, [](const Component& c) { return !c.rows.empty(); });
        if (isSaid && !m_hasAmount && m_firstFault)
            return failure(std::move(*m_firstFault));
        if (isSaid && !m_hasAmount)
            return failure(phrase("No ingredient here has an amount. Write lines such as 250 g water."));
        while (m_recipe.notes.ends_with('\n'))
            m_recipe.notes.pop_back();
        return std::move(m_recipe);
    }

private:
    enum class Section { Ingredients, Method, Notes };

    void readLine()
    {
        KindOfLine& kind = m_kinds[m_at];
        if (m_section == Section::Notes)
            return addNote(true);
        switch (kind.kind) {
        case LineKind::Blank:
        case LineKind::Comment:
            return;
        case LineKind::Title:
            if (mayBeTitle()) {
                m_recipe.title = std::move(kind.heading);
                m_isTitleOfMessage = true;
            }
            return;
        case LineKind::Ingredients:
            m_section = Section::Ingredients;
            m_isAfterMethod = false;
            return;
        case LineKind::Method:
            // Nothing can be done yet while there are no ingredients: "Preparation" may head them.
            if (m_hasAmount)
                m_section = Section::Method;
            return;
        case LineKind::Notes:
            m_section = Section::Notes;
            return;
        case LineKind::Heading:
            return readHeading(kind);
        case LineKind::Prose:
            m_isAfterMethod = m_hasAmount;
            m_hasProse = true;
            return addNote(false);
        case LineKind::Amount:
            return m_section == Section::Method ? addNote(false) : addRow();
        case LineKind::Name:
            return readName(kind);
        }
    }

    void readHeading(KindOfLine& kind)
    {
        if (mayBeTitle() && !kind.isForComponent && m_section == Section::Ingredients) {
            m_recipe.title = std::move(kind.heading);
            return;
        }
        if (m_section == Section::Method && nextKind() != LineKind::Amount)
            return addNote(false);
        beginComponent(std::move(kind.heading));
    }

    void readName(KindOfLine& kind)
    {
        const bool isHeadingLike = isWordsOnly(kind) && isBeforeAmount() && isAfterBlank();
        if (m_section == Section::Method)
            return isHeadingLike ? beginComponent(std::move(kind.heading)) : addNote(false);
        if (mayBeTitle() && isWordsOnly(kind) && (standsAlone() || (isBeforeRecipe(kind.heading) && !m_isTitleOfMessage))) {
            m_recipe.title = std::move(kind.heading);
            m_isTitleOfMessage = false;
            return;
        }
        if (isHeadingLike && m_hasAmount && !isOneLowWord(kind.heading))
            return beginComponent(std::move(kind.heading));
        if (isHeadingLike && !m_recipe.title.empty() && !m_hasAmount)
            return beginComponent(std::move(kind.heading));
        return m_isAfterMethod ? addNote(false) : addRow();
    }

    void beginComponent(std::string name)
    {
        m_section = Section::Ingredients;
        m_isAfterMethod = false;
        if (!m_recipe.components.back().rows.empty() || !m_recipe.components.back().name.empty())
            m_recipe.components.emplace_back();
        m_recipe.components.back().name = std::move(name);
    }

    void addRow()
    {
        KindOfLine& kind = m_kinds[m_at];
        m_hasAmount |= kind.kind == LineKind::Amount && kind.line;
        if (!kind.line && !m_firstFault)
            m_firstFault = phrase("Line {0}: {1}", wholeNumber(m_at + 1), english(lineFrom(m_lines[m_at]).error()));
        m_recipe.components.back().rows.push_back(kind.line ? std::move(kind.line->row) : rowFromLine(m_lines[m_at]));
    }

    void addNote(bool keepsBlanks)
    {
        const std::string line = onOneLine(m_lines[m_at]);
        if (line.empty() && (!keepsBlanks || m_recipe.notes.empty()))
            return;
        m_recipe.notes += line + "\n";
    }

    bool mayBeTitle() const
    {
        return (m_recipe.title.empty() || m_isTitleOfMessage) && m_recipe.components.size() == 1
               && m_recipe.components.front().rows.empty() && m_recipe.components.front().name.empty();
    }

    static bool isWordsOnly(const KindOfLine& kind)
    {
        const auto isOfWord = [](char c) { return isAsciiLetter(c) || isDigit(c) || static_cast<unsigned char>(c) >= 0x80; };
        return std::ranges::any_of(kind.heading, isOfWord) && kind.line && !kind.line->isListed
               && (kind.line->row.note.empty() || kind.heading.ends_with(')'));
    }

    static bool isOneLowWord(const std::string& text)
    {
        return text.find(' ') == std::string::npos && text.front() >= 'a' && text.front() <= 'z';
    }

    LineKind kindAt(std::size_t line) const { return line < m_kinds.size() ? m_kinds[line].kind : LineKind::Blank; }
    /// Of the next line that is not blank; Blank at the end.
    LineKind nextKind() const
    {
        std::size_t next = m_at + 1;
        while (next < m_kinds.size() && (m_kinds[next].kind == LineKind::Blank || m_kinds[next].kind == LineKind::Comment))
            ++next;
        return kindAt(next);
    }
    bool isBeforeAmount() const { return kindAt(m_at + 1) == LineKind::Amount; }
    bool isAfterBlank() const { return m_at > 0 && kindAt(m_at - 1) == LineKind::Blank; }
    bool standsAlone() const { return kindAt(m_at + 1) == LineKind::Blank && nextKind() != LineKind::Blank; }
    /// Words right above an amount or a heading are the title, but for one such as "salt".
    bool isBeforeRecipe(const std::string& words) const
    {
        const LineKind next = kindAt(m_at + 1);
        return next != LineKind::Blank && next != LineKind::Comment && next != LineKind::Name && !isOneLowWord(words);
    }

    std::vector<std::string_view> m_lines;
    std::vector<KindOfLine> m_kinds;
    std::size_t m_at = 0;
    Recipe m_recipe;
    Section m_section = Section::Ingredients;
    bool m_hasAmount = false;
    bool m_hasProse = false;
    bool m_isTitleOfMessage = false;  // its subject, for want of a better one
    std::optional<Sentence> m_firstFault;
    bool m_isAfterMethod = false;  // where words without an amount are greetings, not ingredients
};

std::string headingText(const std::string& name, bool isFirst)
{
    std::string text = onOneLine(name);
    std::ranges::replace(text, '\t', ' ');
    // Without a title above it, the name of the first component would be taken for one.
    const std::string before = isFirst ? "For the " : "";
    for (const std::string& line : {before + text + ":", "## " + before + text + " ##"}) {
        const KindOfLine kind = kindOf(line);
        if (kind.kind == LineKind::Heading && kind.heading == text && kind.isForComponent == isFirst)
            return line + "\n";
    }
    return "# " + text + "\n";
}

/// Whether the line says this row and nothing else, wherever it stands, or as the first of a component.
bool says(const std::string& text, const Row& row, bool isFirst)
{
    const KindOfLine kind = kindOf(text);
    const bool isRow = kind.kind == LineKind::Amount ? kind.line || !isFirst : kind.kind == LineKind::Name && !isFirst;
    if (!isRow)
        return false;
    const Row read = kind.line ? kind.line->row : rowFromLine(text);
    return read.ingredient == row.ingredient && read.amount == row.amount && read.note == row.note;
}

/// The row as a person would write it, or, where that would be read as something else, in full. First words without an amount would be a
/// heading, and a text in which nothing can be read is refused.
std::string lineOf(const Row& row, bool isFirst)
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
    if (says(natural, row, isFirst))
        return natural;
    const std::string number = exactAmountNumber(row.amount);
    const std::string symbol(factsOf(row.amount.unit).symbol);
    const std::string full = number + " " + symbol + " " + ingredient + note;
    // In cells of their own nothing runs into another thing, as "200 g" does after "1 kg".
    return says(full, row, isFirst) ? full : number + "\t" + symbol + "\t" + onOneLine(row.ingredient) + note;
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
    return RecipeReader(text).read();
}

std::string rowsToText(const std::vector<Row>& rows)
{
    std::string text;
    for (const Row& row : rows)
        text += lineOf(row, text.empty()) + "\n";
    return text;
}

std::string recipeToText(const Recipe& recipe)
{
    std::string text = recipe.title.empty() ? "" : headingText(recipe.title, false);
    // Without a title above it, a row before a blank line would be taken for one.
    const std::string gap = isPassedOver(text) ? "" : "\n";
    for (const Component& component : recipe.components) {
        const bool isWithoutTitle = gap.empty() && &component == &recipe.components.front();
        text += gap + (component.name.empty() ? "" : headingText(component.name, isWithoutTitle)) + rowsToText(component.rows);
    }
    return recipe.notes.empty() ? text : text + (text.empty() ? "" : "\n") + "Notes:\n" + recipe.notes + "\n";
}

}  // namespace firn
