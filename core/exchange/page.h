// A page of text for a terminal: columns, headings, and sentences on lines of its width.
#pragma once

#include "units/sentence.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace firn {

inline constexpr std::size_t pageWidth = 80;

/// The columns that a text takes.
std::size_t widthOf(std::string_view text);

/// The text, cut short with an ellipsis if it has more columns.
std::string atMost(std::size_t width, std::string_view text);

/// The text in exactly this many columns.
std::string cell(std::size_t width, std::string_view text);

/// A number with its decimals, never "-0.0".
std::string number(double value, int decimals);

/// A sentence on lines of the page's width, after a mark that stands out.
std::string paragraph(std::string_view mark, const Sentence& sentence);

std::string heading(std::string_view text, char line);

}  // namespace firn
