// Which row of one recipe is which row of another.
#pragma once

#include "analysis/analysis.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace firn {

/// One line of the comparison: the row of each recipe that stands in it, none where the recipe lacks it.
struct MatchedLine {
    std::vector<std::optional<std::size_t>> rows;
};

struct MatchedComponent {
    std::vector<std::optional<std::size_t>> components;  // of each recipe
    std::vector<MatchedLine> lines;
};

struct WeighedRecipe {
    const Recipe* recipe;
    const Analysis* analysis;
};

/// Components by their name, then those that share an ingredient; rows within them by the ingredient's id, or its name where it is unknown,
/// repeated ones in their order. A row that has no partner stands where the recipe has it, after the lines that its own recipe lacks there: a
/// replaced ingredient and what replaces it stand one under the other.
std::vector<MatchedComponent> matched(std::span<const WeighedRecipe> recipes);

}  // namespace firn
