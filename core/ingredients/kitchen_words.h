// The words of an ingredient's name: one form for each, and what each does in the name.
#pragma once

#include <span>
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

/// Whether words behind a comma say only what the cook does with the ingredient before it: "pecans, toasted", "pineapple, core removed".
bool sayHowPrepared(std::span<const std::string> words);

/// How many words stand before one that opens an aside: "plus extra to serve", "for dusting", "to taste", "if needed", "preferably organic", and
/// behind the comma, after so many words, "or margarine" and "crushed with a fork".
std::size_t wordsBeforeAnAside(const Words& words, std::size_t turnsAt);

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
