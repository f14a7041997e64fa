// Amounts as people write them: "250 g", "1 1/2 cups", "1½", "0,5 l", "12 %".
//
// Either mark is a decimal mark, so that "0.5" and "0,5" mean the same everywhere. One case is left in which that could go wrong by a
// thousand: one mark and exactly three digits after it. "1.015 g" is a kilogram to a German and a gram to an English cook, "1,015 g" the
// other way round, and the locale of the computer says nothing about whose recipe it is. There Firn asks. It asks
// - in grams, milligrams, millilitres and pieces, whose thousands are usual (a batch in a kitchen's sheet) and whose thousandths are not (no
//   kitchen scale shows them): either reading can be meant, and a number without a unit, which counts as grams or pieces, is one of these;
// - not in kilograms, litres, pounds, ounces, cups and spoons, where three decimals are the usual way to write (1.015 kg) and thousands are
//   a factory's; nor in centilitres, decilitres and per cent;
// - not behind a leading zero ("0.125 g") or after more than three digits ("1250.125 g"), for no thousands are written so.
// Firn itself never writes an amount that it would ask about: 1.015 g is shown as "1.0150".
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

/// The two amounts that "1.015 g" can mean: 1015 g and 1.015 g.
struct AmountReadings {
    Amount thousands;
    Amount decimals;
    friend bool operator==(const AmountReadings&, const AmountReadings&) = default;
};

/// Why a text is not an amount. Where it is one of two, both are there to choose from.
struct AmountFault {
    Sentence sentence;
    std::optional<AmountReadings> readings = std::nullopt;
    std::string number = {};  // the one with two readings, as it is written: "1.015"
};

inline tl::unexpected<Sentence> failure(const AmountFault& fault) { return failure(fault.sentence); }

/// The amount that `text` starts with, after blanks. Fails as leadingNumber does, and on a number that may be one of two (see above).
tl::expected<LeadingAmount, AmountFault> leadingAmount(std::string_view text);

/// A whole text that is an amount, with its unit or, lacking one, in `fallback`. Fails on anything left over.
tl::expected<Amount, AmountFault> parseAmount(std::string_view text, Unit fallback = Unit::Gram);

/// Says that no unit is called so, and which there are.
Sentence unknownUnit(std::string_view word);

/// "1 1/2" for kitchen measures where a simple fraction (1/8, 1/3, 1/4 …) says it exactly, otherwise up to six decimals without
/// trailing zeros, with a point. Read back in the amount's unit it is the same, without a question.
std::string amountNumber(const Amount& amount);

/// The unit's word in the right number: "cup" up to one, "cups" beyond.
std::string_view unitWord(const Amount& amount);

/// The shortest decimal, with a point, that reads back as this very amount in its unit.
std::string exactAmountNumber(const Amount& amount);

/// "1 1/2 cups", "250 g", "12 %": the number and its unit in the right number.
std::string amountText(const Amount& amount);

}  // namespace firn
