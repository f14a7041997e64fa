// The strength that a mix should have, and what it takes of something to reach it.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "units/sentence.h"

#include <functional>
#include <optional>
#include <variant>

namespace firn {

struct SugarsTarget {
    MassFraction sugars;  // mono- and disaccharides, of the whole mix
    friend bool operator==(const SugarsTarget&, const SugarsTarget&) = default;
};

/// What a refractometer should read at 20 °C.
struct BrixTarget {
    double brix = 0.0;
    friend bool operator==(const BrixTarget&, const BrixTarget&) = default;
};

using StrengthTarget = std::variant<SugarsTarget, BrixTarget>;

/// How far the mix is above the target: a share of sugars, or a refractive index. Zero at the target. A mix without liquid counts as far
/// above any reading.
double excessOver(const StrengthTarget& target, const Mix& mix);

/// The mix with its own sugars, in their own proportions, brought to the target in place of water. Fails where no share of sugars does that.
Result<Mix> broughtTo(const StrengthTarget& target, const Mix& mix);

/// The least mass of something, of which `gram` is one gram, that brings the mix to the target; none up to `most`. Exact for sugars; a reading is
/// found by a bracketing search, for it need not move evenly where alcohol is added.
std::optional<Grams> amountReaching(
    const StrengthTarget& target, const Mix& mix, const Mix& gram, Grams most, Working* working = nullptr);

/// The same where an addition goes through steps, and only the finished mix tells: by a bracketing search.
std::optional<Grams> amountReaching(const StrengthTarget& target, const std::function<Mix(Grams)>& mixWith, Grams most);

/// The mix with this much of something, of which `gram` is one gram.
Mix withAdded(Mix mix, const Mix& gram, Grams amount);

}  // namespace firn
