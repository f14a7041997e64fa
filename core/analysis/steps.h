// What the steps make of a mix. Every gram is accounted for: before a step = after it + what it took away.
#pragma once

#include "ingredients/catalogue.h"
#include "mix/mix.h"
#include "recipe/recipe.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

/// A row of the component, as the steps need to know it.
struct WeighedRow {
    std::string_view text;  // the ingredient as the row names it
    const Composition* composition;
    Grams mass;
};

/// The numbers that a step's losses were reckoned with.
struct LossShares {
    double insoluble = 0.0;  // of what no water dissolves, that a strainer holds back
    double liquid = 0.0;     // of the liquid, that clings or is soaked up
    double waterLeft = 1.0;  // of the water, when boiling is done
    Amounts spent = {};      // what steeped matter takes away of itself
};

/// What no water dissolves: fibre, starch and unidentified solids.
bool isInsoluble(Constituent constituent);

/// Ethanol in much water, against water (Rayleigh; from memory).
inline constexpr double ethanolVolatility = 10.0;

struct StepOutcome {
    Mix after;
    Mix lost;
    std::optional<Sentence> problem;  // why the step could not take away what it says
    LossShares shares = {};
};

/// The row that is most likely steeped: the one with the most that does not dissolve. None where all of it does.
std::optional<std::size_t> likelySteepedRow(const Component& component, const Catalogue& catalogue);

/// The mix after each step, in order.
///
/// A strainer holds back all fibre, starch and unidentified solids that its weighed mass has room for, and for the rest liquid as it is.
/// Steeped solids leave with what was not extracted of their soluble matter, all of their insoluble matter, and the liquid they soak up, in
/// the liquid's own proportions. Boiling takes water and alcohol; the alcohol left is E0 (W/W0)^10 for the water W of W0 left (Rayleigh, with
/// a relative volatility of 10 for ethanol in much water, from memory). These are assumptions; what is weighed is exact.
std::vector<StepOutcome> outcomesOf(const std::vector<Step>& steps, const Mix& start, const std::vector<WeighedRow>& rows);

}  // namespace firn
