// The size of a batch as people type it.
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

#include <string_view>
#include <variant>

namespace firn::app {

// Each reads a whole text, with either decimal mark, and fails with a sentence on anything else.

/// A plain number: "12", "1 1/2".
Result<double> countFromText(std::string_view text);

/// "2", "× 1,5".
Result<double> factorFromText(std::string_view text);

/// "740", "1.2 kg", "8 oz"; a plain number is in grams.
Result<Grams> massFromText(std::string_view text);

/// "1500", "1,5 l", "2 pints"; a plain number is in millilitres.
Result<Millilitres> volumeFromText(std::string_view text);

/// A mass or a volume; a plain number is in grams.
Result<std::variant<Grams, Millilitres>> portionFromText(std::string_view text);

/// "53", "530 mm"; a plain number is in centimetres.
Result<Millimetres> lengthFromText(std::string_view text);

}  // namespace firn::app
