// The words of an ingredient's name: one form for each, and what each does in the name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace firn {

using Words = std::vector<std::string>;

/// The words of a text in one form each: folded, singular, and in one spelling ("Yoghurts" as "yogurt"). A form need not be a word
/// itself: "molasses" becomes "molass", always. A figure and what is glued to it ("42DE") are two words.
Words plainWords(std::string_view text);

/// Whether the word says only how the ingredient is prepared, bought or measured ("fresh", "large", "of"), not what it is.
bool isFiller(std::string_view word);

/// Without fillers, and without the words that go with a figure ("fat", "vol") where there is one.
Words withoutFillers(const Words& words);

/// Whether the word tells a kind or a form ("dried", "white", "juice") and may stand anywhere in a name. Other words keep their order:
/// milk chocolate is not chocolate milk.
bool isQualifier(std::string_view word);

/// Whether the word is a food or kitchen word of its own, however near it is to one of the catalogue: "bitter" is not a slip for "butter".
bool isNeverASlip(std::string_view word);

bool hasDigit(std::string_view word);

/// With one blank between two words.
std::string joined(const Words& words, std::string_view between = " ");

}  // namespace firn
