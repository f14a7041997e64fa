// Amounts as they stand in a line of a recipe, beyond one number and its unit: "3-4", "½ cup + 1 tbsp", "2 x 400 g tins", "about 200 g",
// "200 g / 7 oz", "a pinch of", "a handful of".
#pragma once

#include "units/amount.h"

namespace firn {

struct WrittenAmount {
    std::optional<Amount> amount;  // none for what has no weight of its own: "a handful", "1 tin"
    std::string note;              // what the number alone does not say: "mean of 3 and 4", "about", "a handful"
    std::size_t length = 0;        // bytes of the text that it takes, with the blanks after them
    bool isBare = false;           // a number without any measure after it
    bool isInWords = false;        // "a", "two"
};

/// The amount that the text starts with, without blanks before it; nothing if it starts with none. Of a range the mean is taken, of "200 g /
/// 7 oz" the first, and of "1 cup (250 g)" the one in grams or else in millilitres. Fails on what leadingAmount refuses, on a sum or a
/// range of different kinds, and on what can mean two amounts: "2 tins (400 g)".
Result<std::optional<WrittenAmount>> writtenAmountAt(std::string_view text);

/// A whole text that is an amount with its unit, such as what stands in brackets: "about 120 ml", "or 7 oz".
std::optional<Amount> amountInBrackets(std::string_view text);

}  // namespace firn
