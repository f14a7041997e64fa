#include "explain/giving_away.h"

#include <cctype>
#include <charconv>
#include <cmath>

namespace firn {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

/// "28 % by mass" has the unit "%", "28 % vol" has not, nor has "28 g/mL" the unit "g".
bool startsWithUnit(std::string_view text, std::string_view unit)
{
    while (text.starts_with(' '))
        text.remove_prefix(1);
    if (!text.starts_with(unit))
        return false;
    text.remove_prefix(unit.size());
    return text.empty() || (!isLetter(text.front()) && text.front() != '/' && !text.starts_with(" vol"));
}

}  // namespace

std::string textOf(const Exercise& exercise)
{
    std::string text = english(exercise.question) + "\n";
    for (const Sentence& line : exercise.given)
        text += english(line) + "\n";
    for (const GivenTable& table : exercise.tables) {
        for (const auto& row : table.rows) {
            for (std::size_t i = 0; i < row.size(); ++i)
                text += english(row[i]) + " " + english(table.names[i]) + "\n";
        }
    }
    for (const Sentence& hint : exercise.hints)
        text += english(hint) + "\n";
    return text;
}

bool givesAway(std::string_view text, const ExpectedAnswer& answer)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!isDigit(text[i]))
            continue;
        double value = 0.0;
        const auto [end, error] = std::from_chars(text.data() + i, text.data() + text.size(), value);
        if (error != std::errc())
            continue;
        const bool isNegative = i > 0 && text[i - 1] == '-';
        i = static_cast<std::size_t>(end - text.data());
        const bool isNear = std::abs((isNegative ? -value : value) - answer.value) <= answer.tolerance;
        if (isNear && startsWithUnit(text.substr(i), answer.unit))
            return true;
    }
    return false;
}

}  // namespace firn
