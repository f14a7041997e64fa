// Every component of a recipe weighed out and worked through its steps, those first that others are made of.
#pragma once

#include "analysis/analysis.h"
#include "analysis/steps.h"

namespace firn {

struct PreparedRow {
    RowAnalysis analysis;
    const Ingredient* ingredient = nullptr;  // none for an unknown name and for another component
};

struct PreparedComponent {
    std::vector<PreparedRow> rows;
    Mix weighedOut;
    std::vector<StepOutcome> steps;
    double sugarsVariance_g2 = 0.0;  // of the rows' sugars, which stray independently; a measured row does not
    bool isPartOfAnother = false;

    const Mix& mix() const { return steps.empty() ? weighedOut : steps.back().after; }
};

/// In the order of the recipe. A row may name another component, of which its mix after the last step is taken; a component that would be
/// part of itself is left out of the row that closes the circle, and the row says so with the whole chain.
std::vector<PreparedComponent> prepared(const Recipe& recipe, const Catalogue& catalogue);

}  // namespace firn
