// The two methods for the freezing point side by side: sucrose equivalents after the textbook, and water activity.
#pragma once

#include "explain/explain.h"

namespace firn {

/// One reason why the methods part, and how much of the difference it accounts for.
struct Parting {
    KelvinDifference difference;  // by water activity less by sucrose equivalents
    Sentence reason;              // with its figures
};

struct MethodComparison {
    Derivation textbook;
    Derivation waterActivity;
    KelvinDifference difference;    // by water activity less by sucrose equivalents
    std::vector<Parting> partings;  // the largest first; together they are the difference
    std::vector<Sentence> summary;  // what both say, where they part, and which to trust
};

/// Fails where the mix has no water to freeze.
Result<MethodComparison> compareMethods(const ExplainedAnalysis& explained);

}  // namespace firn
