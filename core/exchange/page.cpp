#include "exchange/page.h"

#include "exchange/plain_text.h"
#include "units/text.h"

#include <algorithm>
#include <fmt/format.h>

namespace firn {

namespace {

/// The bytes of the character that the text starts with.
std::size_t characterLength(std::string_view text)
{
    std::size_t length = 1;
    while (length < text.size() && isInsideCharacter(text[length]))
        ++length;
    return length;
}

}  // namespace

std::size_t widthOf(std::string_view text)
{
    return static_cast<std::size_t>(std::ranges::count_if(text, [](char c) { return !isInsideCharacter(c); }));
}

std::string atMost(std::size_t width, std::string_view text)
{
    if (widthOf(text) <= width)
        return std::string(text);
    std::size_t end = 0;
    for (std::size_t column = 0; column + 1 < width; ++column)
        end += characterLength(text.substr(end));
    return std::string(text.substr(0, end)) + "…";
}

std::string cell(std::size_t width, std::string_view text)
{
    const std::string shortText = atMost(width, text);
    return shortText + std::string(width - widthOf(shortText), ' ');
}

std::string number(double value, int decimals) { return english(phrase("{0}", Figure{value, decimals})); }

std::string paragraph(std::string_view mark, const Sentence& sentence)
{
    const std::string text = printable(english(sentence));
    std::string page(mark);
    std::size_t column = widthOf(mark);
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = std::min(text.find(' ', start), text.size());
        const std::string_view word = std::string_view(text).substr(start, end - start);
        start = end + 1;
        const bool isFirstOfLine = column == widthOf(mark);
        if (!isFirstOfLine && column + 1 + widthOf(word) > pageWidth) {
            page += "\n" + std::string(widthOf(mark), ' ');
            column = widthOf(mark);
        } else if (!isFirstOfLine) {
            page += ' ';
            ++column;
        }
        page += word;
        column += widthOf(word);
    }
    return page + "\n";
}

std::string heading(std::string_view text, char line) { return fmt::format("{}\n{}\n", text, std::string(widthOf(text), line)); }

}  // namespace firn
