// Numbers as people write them: "250", "0,5", "1/2", "1 1/2", "1½".
#pragma once

#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

/// The largest number that an amount may have, in whatever unit: a thousand tonnes in grams. More is a slip of the key.
inline constexpr double largestAmount = 1e9;

/// A number at the start of a text: whole, decimal (point or comma), fraction ("1/2", "½") or mixed ("1 1/2", "1½").
struct LeadingNumber {
    double value;
    std::size_t length;  // bytes of the text that it takes
};

/// Whether the text, after blanks, starts with what is meant as a number, be it one that leadingNumber refuses ("-5", "2-3").
bool startsWithNumber(std::string_view text);

/// Why this number cannot be an amount: negative, or beyond largestAmount; nothing if it can.
std::optional<Sentence> faultOfAmount(double value);

/// The number that `text` starts with, after blanks. Either mark is a decimal mark, so "1,000" is one; a number with two marks or with
/// blanks between thousands is refused, never half read. Fails on no number, on a fraction with zero below, on a negative number, on a
/// range ("2-3"), and beyond largestAmount, each with a sentence of its own. Words such as "nan" and "inf" are no numbers.
Result<LeadingNumber> leadingNumber(std::string_view text);

/// Whether the mark in this number may be that between thousands as well as that of the decimals: one mark, up to three digits before it
/// of which the first is no zero, and exactly three after it ("1.015", "12,500"). Nothing else that leadingNumber reads can be taken so:
/// thousands have three digits in a group, and none begins with zero.
bool mayPartThousands(std::string_view number);

/// As a cook rounds: halves go away from zero, also those that a binary number only nearly holds, such as 1.005.
double roundedTo(int decimals, double value);

/// The shortest plain decimal, with a point, that reads back as this very number.
std::string exactNumber(double value);

}  // namespace firn
