// Strengths of syrups and drinks as people type them.
#pragma once

#include "units/sentence.h"

#include <string_view>

namespace firn::app {

struct TypedAlcohol {
    double number;
    bool isByVolume;  // % vol, otherwise grams in 100 g
};

/// A whole text that is an amount of alcohol: "24", "24 g", "29 % vol", "29% ABV". A plain number is in grams, or in % vol where `isByVolume`.
/// Fails on "29 %", which could be of the weight or of the volume, and outside 0 to 100.
Result<TypedAlcohol> alcoholFromText(std::string_view text, bool isByVolume);

/// A whole text that is the strength of a syrup: "60", "60,5 °Bx". Fails on anything else, and outside 0 to 100.
Result<double> syrupStrengthFromText(std::string_view text);

}  // namespace firn::app
