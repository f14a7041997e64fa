// A comparison on paper.
#pragma once

#include "compare/comparison.h"
#include "print/block.h"

namespace firn::app {

/// Fairness, the tables, and what did it; across the paper where there are more than two sides.
Handout handoutOf(const Comparison& comparison, const QString& title);

}  // namespace firn::app
