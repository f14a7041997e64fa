// A derivation on paper: all of it unfolded, with symbols, sources, ranges and uncertainties.
#pragma once

#include "explain/explain.h"
#include "print/block.h"
#include "teach/figure_wording.h"

namespace firn::app {

/// The steps under each other, numbered from 1.
std::vector<Block> blocksOf(const std::vector<WorkingStep>& steps);

/// `recipe` is what the recipe is called.
Handout handoutOf(const Derivation& derivation, const FigureHead& head, const QString& recipe);

}  // namespace firn::app
