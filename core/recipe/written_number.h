// A number at the start of an amount in a recipe, in digits or in words, not yet judged.
#pragma once

#include "recipe/word_reader.h"

#include <string>

namespace firn {

struct WrittenNumber {
    std::string digits;  // as leadingNumber reads them: "1 1/2"
    bool isInWords = false;
};

/// Takes "2", "1 1/2", "1-1/2", "1 and 1/2", "½", "two", "half a", "a"; nothing where none is there. Two marks in one number are taken
/// together, for leadingNumber to refuse.
std::optional<WrittenNumber> takeNumber(WordReader& reader);

/// Takes a hyphen or a dash of any kind.
bool takeDash(WordReader& reader);

}  // namespace firn
