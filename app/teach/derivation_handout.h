// A derivation on paper: all of it unfolded, with symbols, sources, ranges and uncertainties.
#pragma once

#include "explain/explain.h"
#include "print/block.h"

namespace firn::app {

/// The steps under each other, numbered from 1.
std::vector<Block> blocksOf(const std::vector<WorkingStep>& steps);

/// `recipe` is what the recipe is called, `title` what the figure means.
Handout handoutOf(const Derivation& derivation, const QString& title, const QString& recipe);

}  // namespace firn::app
