// What did it: how much of a difference between two recipes each change makes.
//
// The changes are made one at a time, from the first recipe to the other. What a change does depends on those that were made before it, so
// that its part is the mean over the orders in which all can be made: L. S. Shapley, "A value for n-person games", in Contributions to the
// Theory of Games II (1953) 307. In every order the parts add up to the whole difference, and so do their means. Up to six changes all orders
// are gone through, beyond that a sample that is the same each time, each order with its reverse. An order that passes through a mix without
// water, or one stronger than anything that was measured, says little about its ends and is left out as long as another is left.
#pragma once

#include "compare/between.h"
#include "ingredients/catalogue.h"

#include <optional>

namespace firn {

struct AttributedFigure {
    std::optional<double> from;
    std::optional<double> to;
    std::vector<double> parts;        // of each change; they add up to `to` less `from`
    std::optional<Sentence> whyNone;  // why there are no parts
};

struct Attribution {
    std::vector<Change> changes;
    AttributedFigure freezingPoint_c;
    AttributedFigure sweetness_percentSucrose;
    AttributedFigure iceAtServing_percent;
    std::size_t orders = 0;
    bool isSample = false;
};

/// With more changes than this the orders are a sample.
inline constexpr std::size_t mostChangesInAllOrders = 6;

/// From the first recipe to another one. `names` are those of both, for sentences.
Attribution attributed(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t other,
    double batchFactor, const Catalogue& catalogue, const std::string& nameOfFirst, const std::string& nameOfOther);

}  // namespace firn
