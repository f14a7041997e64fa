#include "exchange/plain_text.h"

#include "units/text.h"

#include <algorithm>

namespace firn {

namespace {

/// The bytes of the character that the text starts with, 0 if they are not UTF-8 (RFC 3629: shortest form, no surrogates).
std::size_t characterAt(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    if (first < 0x80)
        return 1;
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length)
        return 0;
    if (!std::ranges::all_of(text.substr(1, length - 1), isInsideCharacter))
        return 0;
    const bool isOverlong = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
    const bool isOutside = (first == 0xED && byte(1) > 0x9F) || (first == 0xF4 && byte(1) > 0x8F);
    return isOverlong || isOutside ? 0 : length;
}

}  // namespace

TextPosition positionOf(std::string_view text, std::size_t offset_bytes)
{
    const std::string_view before = text.substr(0, offset_bytes);
    const std::size_t lineStart = before.rfind('\n') == before.npos ? 0 : before.rfind('\n') + 1;
    const auto lines = std::ranges::count(before, '\n');
    const auto columns = std::ranges::count_if(before.substr(lineStart), [](char c) { return !isInsideCharacter(c); });
    return {static_cast<std::size_t>(lines) + 1, static_cast<std::size_t>(columns) + 1};
}

Figure wholeNumber(std::size_t number) { return {static_cast<double>(number), 0}; }

std::string_view withoutByteOrderMark(std::string_view text)
{
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.starts_with(mark) ? text.substr(mark.size()) : text;
}

std::optional<Sentence> faultOfText(std::string_view text)
{
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t length = characterAt(text.substr(i));
        if (length > 0 && text[i] != '\0') {
            i += length;
            continue;
        }
        const TextPosition at = positionOf(text, i);
        const Figure line = wholeNumber(at.line);
        const Figure column = wholeNumber(at.column);
        if (length > 0)
            return phrase("This is not text: it has a zero byte at line {0}, column {1}. Save it as text in UTF-8.", line, column);
        return phrase("This is not UTF-8 text at line {0}, column {1}. Save it as text in UTF-8.", line, column);
    }
    return std::nullopt;
}

std::string printable(std::string text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const bool isC1 = byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0;
        if (byte < 0x20 || byte == 0x7F)
            text[i] = ' ';
        else if (isC1)
            text.replace(i, 2, " ");
    }
    return text;
}

}  // namespace firn
