// How the figures of a comparison come about. Nobody asks for most of them, so that each side is analysed again when somebody does.
#pragma once

#include "compare/attribution_wording.h"
#include "compare/comparison.h"

namespace firn {

/// The key under which workingsOfSide() has a figure of the report, or "compared." and that key for a mass or volume that is shown in
/// another mass than the batch.
std::string figureOfSide(const ComparedFigure& figure, const ComparedSide& side);
/// The same of the mass of a row that the side has.
std::string figureOfSide(const ComparedCell& cell, const ComparedSide& side);

/// The keys under which workingsOfDifferences() has them: "change.percent.sugars", "attribution.freezing_point_k".
std::string figureOfChange(const ComparedFigure& figure);
std::string figureOfAttribution(const AttributedKind& kind);

/// The workings of all figures of a side, from the evaluation that made the comparison. The side must be one of the comparison's.
Workings workingsOfSide(const Comparison& comparison, std::size_t side, const Catalogue& catalogue);

/// How a side's figures are what they are less those of the first side, and what did it; `first` and `other` are the workings of both. Symbols
/// lead to figures by keys such as "sides[0].percent.sugars", where 0 is the first one and 1 the other.
Workings workingsOfDifferences(const Comparison& comparison, std::size_t side, const Workings& first, const Workings& other);

}  // namespace firn
