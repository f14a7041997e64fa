// What core has to say to a person: an English pattern with its values kept apart, so that the window can translate the words and
// write the numbers in the user's locale. Errors are sentences too.
#pragma once

#include "units/quantity.h"

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <variant>
#include <vector>

namespace firn {

/// What a figure is of, where it is written in the unit that the reader chose, and with it.
enum class FigureKind { Number, Temperature, TemperatureDifference };

/// A number and the decimals that its uncertainty allows. Temperatures are in °C, their differences in K.
struct Figure {
    double value = 0.0;
    int decimals = 0;
    FigureKind kind = FigureKind::Number;
    friend bool operator==(const Figure&, const Figure&) = default;
};

/// "-12 °C", or "10 °F" to who reads Fahrenheit: the unit is part of the figure, not of the pattern.
inline Figure temperatureFigure(Celsius temperature, int decimals)
{
    return {temperature.value, decimals, FigureKind::Temperature};
}

/// How far one temperature is from another: "2.0 K", or "3.6 °F".
inline Figure temperatureDifferenceFigure(KelvinDifference difference, int decimals)
{
    return {difference.value, decimals, FigureKind::TemperatureDifference};
}

/// A pattern with places {0}, {1}, … and what stands in them. A nested sentence is a part that is translated on its own.
struct Sentence {
    using Value = std::variant<std::string, Figure>;

    std::string_view pattern;  // always a literal in the program, never text from a file
    std::vector<Value> values;

    friend bool operator==(const Sentence&, const Sentence&) = default;
};

/// Marks a literal for the translators (lupdate reads it by this name) and makes a sentence of it.
template <class... Values>
Sentence phrase(std::string_view pattern, Values&&... values)
{
    return {pattern, {Sentence::Value(std::forward<Values>(values))...}};
}

/// The sentence in English with a decimal point and in °C, as the command line prints it.
std::string english(const Sentence& sentence);

/// Either what was asked for, or one clear sentence that says where, what, and the way out.
template <class T>
using Result = tl::expected<T, Sentence>;

inline tl::unexpected<Sentence> failure(Sentence sentence) { return tl::unexpected<Sentence>(std::move(sentence)); }

}  // namespace firn
