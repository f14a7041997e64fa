// The working of what is weighed: rows, and what a component holds before and after its steps.
#pragma once

#include "analysis/preparation.h"
#include "derivation/working.h"

namespace firn {

/// "rows[3].grams": rows are counted through all components.
std::string figureOfRow(const Recipe& recipe, std::size_t component, std::size_t row);

/// "rows[3].share_percent": of the mass of its component
std::string figureOfRowShare(const Recipe& recipe, std::size_t component, std::size_t row);

/// "components[1]."
std::string homeOfComponent(std::size_t component);

/// The variance of a component's sugars, as a figure that only workings have.
inline constexpr std::string_view figureOfSpread = "sugars_variance_g2";

/// A row in % of the mix, in a component whose other rows weigh `weighed`.
void recordShare(Working& working, Grams weighed, double asked_percent, Grams total, const Amount& amount, Grams mass);

/// What a component was weighed out to hold, and the rows that count for nothing. `compositions` are those of its rows.
void recordWeighedOut(Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared,
    const std::vector<const Composition*>& compositions);

/// What share of its component each row is, once that is known.
void recordShares(Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared);

/// What a component holds after so many of its steps.
void recordSteps(
    Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared, std::size_t stepsDone);

/// What the chosen components hold together; `mix` is their sum.
void recordWhole(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Mix& mix);

}  // namespace firn
