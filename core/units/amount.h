// Amounts as people write them: "250 g", "1 1/2 cups", "1½", "0,5 l", "12 %".
#pragma once

#include "units/number.h"
#include "units/sentence.h"
#include "units/unit.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

struct Amount {
    double value = 0.0;
    Unit unit = Unit::Gram;
    friend bool operator==(const Amount&, const Amount&) = default;
};

/// A number and the unit after it, if there is one. "cl" and "dl" are read as millilitres.
struct LeadingAmount {
    double value;
    std::optional<Unit> unit;
    std::size_t length;  // bytes of the text that both take
};

/// The amount that `text` starts with, after blanks. Fails as leadingNumber does, and on a comma before three digits that could part
/// thousands ("1,500 g").
Result<LeadingAmount> leadingAmount(std::string_view text);

/// A whole text that is an amount, with its unit or, lacking one, in `fallback`. Fails on anything left over.
Result<Amount> parseAmount(std::string_view text, Unit fallback = Unit::Gram);

/// Says that no unit is called so, and which there are.
Sentence unknownUnit(std::string_view word);

/// "1 1/2" for kitchen measures where a simple fraction (1/8, 1/3, 1/4 …) says it exactly, otherwise up to six decimals without
/// trailing zeros, with a point.
std::string amountNumber(const Amount& amount);

/// The unit's word in the right number: "cup" up to one, "cups" beyond.
std::string_view unitWord(const Amount& amount);

/// "1 1/2 cups", "250 g", "12 %": the number and its unit in the right number.
std::string amountText(const Amount& amount);

}  // namespace firn
