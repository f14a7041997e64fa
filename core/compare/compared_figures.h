// The figures of several recipes side by side.
#pragma once

#include "analysis/analysis.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace firn {

struct ComparedFigure {
    std::string_view key;    // as the report has it
    std::string_view label;  // "Freezing point"
    std::string_view unit;
    int decimals = 1;
    bool isOfBatch = false;                     // grows with the batch: its values are those in the mass that is compared
    std::vector<std::optional<double>> values;  // of each recipe; none where it does not exist
    std::vector<std::optional<double>>
        changes;                        // from the first recipe's; none for the first, and where it would say nothing of the mix
    std::vector<double> uncertainties;  // one standard deviation of each, 0 where none is known
    std::vector<bool> isFreezers = {};  // whether each is a limit that the freezer sets rather than the mix
};

/// Whether every recipe has it and it is zero in the digits shown: not worth a line.
bool isNothing(const ComparedFigure& figure);

/// The change as a reader finds it in the figures shown; `changes` has it to the last bit.
std::optional<double> shownChange(const ComparedFigure& figure, std::size_t side);

/// The uncertainty in the digits shown, which is never less than one unit of the last; none of what is exact.
std::optional<double> shownUncertainty(const ComparedFigure& figure, std::size_t side);

/// The figures of the report, to the last bit. `perBasis` is what masses and volumes of each recipe are multiplied by.
std::vector<ComparedFigure> comparedFigures(std::span<const Analysis* const> analyses, std::span<const double> perBasis);

/// The one with this key; nullptr if there is none.
const ComparedFigure* figureIn(const std::vector<ComparedFigure>& figures, std::string_view key);

}  // namespace firn
