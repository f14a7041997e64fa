// A food's composition, line by line, in the order of the ribbon.
#pragma once

#include "mix/mix.h"

#include <optional>
#include <string_view>
#include <vector>

namespace firn {

struct CompositionLine {
    std::string_view label;
    Grams grams;                     // in 100 g
    std::optional<RibbonPart> part;  // the colour that it has in the ribbon; none for what cuts across several
    bool isPart = false;             // counted already in a line above it
};

/// The constituents that are there. Several sugars stand under their sum, and milk fat under the fat.
std::vector<CompositionLine> compositionLines(const Composition& composition);

}  // namespace firn
