// Every component of a recipe weighed out and worked through its steps, those first that others are made of.
#pragma once

#include "analysis/analysis.h"
#include "analysis/steps.h"
#include "derivation/working.h"

#include <algorithm>

namespace firn {

struct PreparedRow {
    RowAnalysis analysis;
    const Ingredient* ingredient = nullptr;  // none for an unknown name, another component and a linked recipe
};

struct PreparedComponent {
    std::vector<PreparedRow> rows;
    Mix weighedOut;
    std::vector<StepOutcome> steps;
    double sugarsVariance_g2 = 0.0;  // of the rows' sugars, which stray independently; a measured row does not
    bool isPartOfAnother = false;

    const Mix& mix() const { return mixAfter(steps.size()); }
    /// After so many steps, or all where there are fewer.
    const Mix& mixAfter(std::size_t stepsDone) const
    {
        const std::size_t done = std::min(stepsDone, steps.size());
        return done == 0 ? weighedOut : steps[done - 1].after;
    }
};

struct Preparation {
    std::vector<PreparedComponent> components;   // in the order of the recipe
    std::vector<const Ingredient*> ingredients;  // all that are named, with or without a weight, those of linked recipes too, each once
};

/// A row may name another component, of which its mix after the last step is taken; a component that would be part of itself is left out of
/// the row that closes the circle, and the row says so with the whole chain. A row may also name a linked recipe, whose components are taken
/// together. Names stand for the recipe's own ingredients before the catalogue's; a component's name comes before an ingredient that is only taken
/// by default or for a slip. A name without an amount that is a line of text which cannot be read ("-250 g sugar") is not looked up: the row says
/// why.
///
/// `workings`, if given, take the weighing of each row ("rows[0].grams", counted through all components) and what each component was
/// weighed out to hold ("components[0].water_g").
Preparation prepared(const Recipe& recipe, const Catalogue& catalogue, Workings* workings = nullptr);

}  // namespace firn
