// What every reader asks of a text before it looks at its meaning.
#pragma once

#include "units/sentence.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace firn {

/// A place in a text as an editor shows it, from 1; columns count characters.
struct TextPosition {
    std::size_t line = 1;
    std::size_t column = 1;
};
TextPosition positionOf(std::string_view text, std::size_t offset_bytes);

/// A line, column or other count for a sentence.
Figure wholeNumber(std::size_t number);

/// The text without the byte-order mark that some programs put before UTF-8.
std::string_view withoutByteOrderMark(std::string_view text);

/// Why this is no text: a byte that is not UTF-8, or a zero byte; nothing if it is text.
std::optional<Sentence> faultOfText(std::string_view text);

/// Without control characters, with which a file could drive the terminal: a blank for each.
std::string printable(std::string text);

}  // namespace firn
