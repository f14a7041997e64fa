// What core has to say to a person: an English pattern with its values kept apart, so that the window can translate the words and
// write the numbers in the user's locale. Errors are sentences too.
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <variant>
#include <vector>

namespace firn {

/// A number and the decimals that its uncertainty allows.
struct Figure {
    double value = 0.0;
    int decimals = 0;
    friend bool operator==(const Figure&, const Figure&) = default;
};

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

/// The sentence in English with a decimal point, as the command line prints it.
std::string english(const Sentence& sentence);

/// Either what was asked for, or one clear sentence that says where, what, and the way out.
template <class T>
using Result = tl::expected<T, Sentence>;

inline tl::unexpected<Sentence> failure(Sentence sentence) { return tl::unexpected<Sentence>(std::move(sentence)); }

}  // namespace firn
