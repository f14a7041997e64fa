// Two strengths mixed to a third. Exact by definition: grams of sugar and grams of mix add up.
#pragma once

#include "derivation/working.h"
#include "units/quantity.h"
#include "units/sentence.h"

namespace firn {

/// A Pearson square worked out. The parts are the differences on its diagonals, in percent points.
struct Blend {
    double partsOfFirst = 0.0;
    double partsOfSecond = 0.0;
    Grams first;
    Grams second;
    friend bool operator==(const Blend&, const Blend&) = default;
};

/// What of each makes `total` grams of the strength wanted. The strengths may be of anything that keeps its mass: sugar, fat, alcohol. Fails
/// for a strength outside the two, for two of the same strength, for a strength that is no share, and for a total of nothing.
Result<Blend> pearsonSquare(MassFraction first, MassFraction second, MassFraction wanted, Grams total, Working* working = nullptr);

/// How much of something of strength `added` brings this mass from `now` to `wanted`: water is 0, dry sugar 1. Nothing to add is 0. Fails where
/// `wanted` does not lie between the two, or is `added` itself, which no amount reaches.
Result<Grams> amountToReach(MassFraction wanted, Grams mass, MassFraction now, MassFraction added, Working* working = nullptr);

}  // namespace firn
