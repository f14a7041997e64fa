// The derivation of any figure of a report, from the very evaluation that makes the figure.
#pragma once

#include "analysis/analysis.h"

namespace firn {

/// The steps to one figure, in order; the last one's result is the figure, to the last bit.
struct Derivation {
    std::string figure;  // its key in the report: "freezing_point_c", "rows[2].grams"
    std::vector<WorkingStep> steps;

    const Symbol& result() const { return steps.back().result; }
};

/// An analysis, and with it the working of every figure that it has.
struct ExplainedAnalysis {
    Analysis analysis;
    Workings workings;
};

ExplainedAnalysis analyseWithWorkings(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions,
    std::optional<std::size_t> component = {}, std::optional<std::size_t> stepsDone = {});

/// Why a class cannot reckon with the recipe: nothing is known about one of its rows. None where all are known.
std::optional<Sentence> reasonNotToTeach(const Analysis& analysis);

/// The derivation of a figure. Beside the figures of the report there are those that steps refer to, such as "constituents_g.protein" and
/// "components[1].water_g". Fails on a key that is none, naming those near to it, and on a figure that this recipe does not have.
Result<Derivation> explain(const std::string& figure, const Workings& workings);
Result<Derivation> explain(const std::string& figure, const Recipe& recipe, const Catalogue& catalogue,
    const Conditions& conditions, std::optional<std::size_t> component = {});

}  // namespace firn
