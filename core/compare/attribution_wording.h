// An attribution in words: which figures it is about, and the change that makes most of each.
#pragma once

#include "compare/attribution.h"

#include <array>
#include <string_view>

namespace firn {

struct AttributedKind {
    std::string_view key;        // in the comparison's JSON
    std::string_view label;      // "Freezing point"
    std::string_view unit;       // of the parts
    std::string_view figureKey;  // of the figure, in the report
    int decimals;
    AttributedFigure Attribution::*figure;

    // Of the names of both recipes, how much, the change that makes most of it, and what it makes.
    std::string_view rises;
    std::string_view falls;
    std::string_view stays;  // of the names alone
};

const std::array<AttributedKind, 3>& attributedKinds();

/// The whole difference as a reader finds it in the figures shown. There must be parts.
double shownWhole(const AttributedFigure& figure, int decimals);

/// The parts in the digits that are shown: each within a unit or two of the last digit, and together the whole difference in these digits.
std::vector<double> roundedParts(const AttributedFigure& figure, int decimals);

/// What changed most, or that nothing did, or why there are no parts.
Sentence inASentence(const Attribution& attribution, const AttributedKind& kind, const std::string& from, const std::string& to);

}  // namespace firn
