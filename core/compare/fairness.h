// What makes a comparison unfair, and what its differences are worth. Common practice, no source, but where a figure says otherwise.
#pragma once

#include "compare/comparison.h"

namespace firn {

/// Sentences for a comparison whose other parts are there, the gravest first.
std::vector<Sentence> fairnessOf(const Comparison& comparison);

}  // namespace firn
