// Two to four recipes, or versions of one, beside each other: what differs, what it does, and whether the comparison is a fair one.
#pragma once

#include "compare/attribution.h"
#include "compare/basis.h"
#include "compare/candidate.h"
#include "compare/compared_figures.h"
#include "compare/compared_rows.h"
#include "compare/header_differences.h"

namespace firn {

/// What a person wants instead of what the recipes say.
struct ComparingWishes {
    Basis basis = {};
    std::optional<Celsius> serveAt = {};
    std::optional<Celsius> freezerAt = {};
    Celsius readAt{20.0};
    Instruments instruments = {};
};

struct ComparedSide {
    std::string name;
    Recipe recipe;
    Analysis analysis;
    double perBasis = 1.0;     // what masses are multiplied by
    double batchFactor = 1.0;  // how many times the first recipe's amounts it is made in
    std::vector<BesideReading> readings = {};
    std::vector<Tasting> tastings = {};
};

struct Comparison {
    Basis basis;
    std::vector<ComparedSide> sides;
    std::vector<Sentence> fairness;  // what a fair comparison would do otherwise, and what the differences are worth
    std::vector<HeaderDifference> differences;
    std::vector<ComparedComponent> components;
    std::vector<ComparedFigure> figures;
    std::vector<Attribution> attributions;  // of each side after the first, from the first
};

/// All of each recipe as one mix. A recipe that says nothing about how it is served, kept or frozen is taken as the first one that does; where two
/// say different things, each is taken as it says, and the comparison says so. Fails for fewer than two or more than four candidates, and
/// for a portion that is no mass.
Result<Comparison> compare(
    const std::vector<Candidate>& candidates, const Catalogue& catalogue, const ComparingWishes& wishes = {});

}  // namespace firn
