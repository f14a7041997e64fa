// The two methods for the freezing point side by side: sucrose equivalents after the textbook, and water activity.
#pragma once

#include "explain/explain.h"

namespace firn {

/// What the methods treat each in its own way.
enum class PartingCause {
    Steepness,  // the textbook reads salt, acid and alcohol off a table for sucrose, on top of the sugars
    Salt,
    Acid,
    Alcohol,
    MilkSalts,
    Sugars,
    HeldWater,
    ColdestEquilibrium  // the curve answers with no temperature below this one
};

/// One cause why the methods differ, and its part of the difference.
struct Parting {
    PartingCause cause;
    KelvinDifference difference;  // by water activity minus by sucrose equivalents: above zero where the curve is warmer
    Sentence reason;              // with its figures; says whether the curve is warmer or colder for it
};

struct MethodComparison {
    Derivation textbook;
    Derivation waterActivity;
    KelvinDifference difference;     // by water activity minus by sucrose equivalents
    std::vector<Parting> partings;   // the largest first; together they are the difference
    Sentence summary;                // what both say
    std::optional<Sentence> advice;  // which of them to trust, where that is known
};

/// Compares the methods cause by cause. Both freezing points are taken as logarithms of a water activity, on which what each cause does adds
/// up: the difference between a solute's own law and its ideal one (as many free particles as its molar mass says), the difference between
/// those free particles and the steeper table for sucrose, and so on. Each is then converted to kelvins by the mean slope of the ice line
/// between both freezing points, so that each part has the sign of its cause. Fails where the mix has no water to freeze.
Result<MethodComparison> compareMethods(const ExplainedAnalysis& explained);

}  // namespace firn
