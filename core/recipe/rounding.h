// Amounts that a scale, a spoon, a cup or a jug can say.
#pragma once

#include "units/amount.h"
#include "units/quantity.h"

#include <functional>
#include <optional>

namespace firn {

/// What amounts are rounded to.
struct Rounding {
    Grams scaleStep{1.0};    // the kitchen scale's resolution; zero leaves weights as they are
    bool toMeasures = true;  // cups, spoons, jugs and pieces, else these stay as they are
};

/// An amount that is off by more is said to be so wherever it is shown.
inline constexpr double mostRounding_percent = 2.0;

struct RoundedAmount {
    Amount amount;
    double deviation_percent = 0.0;  // by mass where the row has one, otherwise by the amount
    bool isOff() const;              // by more than mostRounding_percent
    friend bool operator==(const RoundedAmount&, const RoundedAmount&) = default;
};

/// What an amount of the row's ingredient weighs; nothing where that is not known.
using MassOf = std::function<std::optional<Grams>(const Amount&)>;

/// The amount in the unit it was written in, if that can say it within mostRounding_percent; otherwise in the next smaller spoon that can, as
/// long as these are few; otherwise in grams. Where nothing can, the nearest of all these. It never becomes zero. Shares of the mix stay.
///
/// Weights go to the scale's step, and to a tenth of a gram below 10 g or where the step is too coarse. Cups go to quarters and thirds,
/// tablespoons to halves, teaspoons to quarters and eighths, pieces to halves, jugs to 5, 1, 0.1 and 0.01 mL.
///
/// `wanted` is the mass that the row should have, `massOf` what its ingredient weighs; without them a volume never becomes grams.
RoundedAmount rounded(const Amount& exact, const Rounding& rounding, std::optional<Grams> wanted = {}, const MassOf& massOf = {});

}  // namespace firn
