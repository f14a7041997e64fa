// Text as people type it: blanks of every kind, and upper or lower case.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace firn {

/// What counts as a blank in a line: blank, tab, the no-break and thin blanks of typesetting (U+00A0, U+202F, U+2009), and the
/// byte-order mark (U+FEFF), which pasted text may have anywhere.
inline constexpr std::array<std::string_view, 6> blanks = {" ", "\t", "\u00a0", "\u202f", "\u2009", "\ufeff"};

/// The bytes of the one blank that the text starts with; 0 if it starts with none.
inline std::size_t blankAt(std::string_view text)
{
    const auto found = std::ranges::find_if(blanks, [&](std::string_view blank) { return text.starts_with(blank); });
    return found == blanks.end() ? 0 : found->size();
}

/// The bytes of all blanks that the text starts with.
inline std::size_t blanksAt(std::string_view text)
{
    std::size_t length = 0;
    while (const std::size_t blank = blankAt(text.substr(length)))
        length += blank;
    return length;
}

inline std::string_view trimmed(std::string_view text)
{
    text.remove_prefix(blanksAt(text));
    const auto endsInBlank = [&](std::string_view blank) { return text.ends_with(blank); };
    for (auto found = std::ranges::find_if(blanks, endsInBlank); found != blanks.end();
         found = std::ranges::find_if(blanks, endsInBlank))
        text.remove_suffix(found->size());
    return text;
}

inline bool isDigit(char c) { return c >= '0' && c <= '9'; }

inline bool isAsciiLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// Whether a byte of UTF-8 continues a character that an earlier byte began.
inline bool isInsideCharacter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; }

/// The start of a text, for quoting it in a sentence.
inline std::string shortened(std::string_view text)
{
    constexpr std::size_t longest = 40;
    if (text.size() <= longest)
        return std::string(text);
    std::size_t end = longest;
    while (end > 0 && isInsideCharacter(text[end]))
        --end;
    return std::string(text.substr(0, end)) + "…";
}

/// How many bytes the text starts with that are of one kind.
inline std::size_t lengthOf(bool (*isOfKind)(char), std::string_view text)
{
    return static_cast<std::size_t>(std::ranges::find_if_not(text, isOfKind) - text.begin());
}

/// In lower case as far as ASCII goes.
inline std::string lowered(std::string_view text)
{
    std::string result(text);
    std::ranges::transform(
        result, result.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return result;
}

}  // namespace firn
