#include "explain/methods.h"

#include "derivation/one_form.h"
#include "explain/parting.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr double worthSaying_k = 0.02;

Sentence summaryOf(const Analysis& analysis, KelvinDifference difference)
{
    // As the gauges round them: with the digits of the difference, rounding could make them another hundredth apart.
    const Figure curve{analysis.freezing.freezingPoint->temperature.value, 1};
    const Figure textbook{analysis.textbook->freezingPoint.value, 1};
    if (std::abs(difference.value) < worthSaying_k)
        return phrase("Both methods say {0} °C.", curve);
    return phrase("By water activity it freezes at {0} °C, by sucrose equivalents at {1} °C: {2} apart.", curve, textbook,
        temperatureDifferenceFigure({std::abs(difference.value)}, 2));
}

std::optional<Sentence> adviceOn(const Analysis& analysis)
{
    if (analysis.freezing.freezingPoint->isExtrapolated)
        return phrase("The curve goes beyond what was measured here: trust neither method to better than {0}.",
            temperatureDifferenceFigure({1.0}, 0));
    if (analysis.texture.mix[Constituent::Ethanol].value > 0.0)
        return phrase("With alcohol in it the curve is the one to trust: the textbook's method was made for sugars and milk.");
    return std::nullopt;
}

/// Both stand beside each other: what both write of a symbol has one form.
void showInOneForm(Derivation& a, Derivation& b)
{
    std::vector<WorkingStep> both = a.steps;
    both.insert(both.end(), b.steps.begin(), b.steps.end());
    both = inDigitsThatCompute(std::move(both));
    std::ranges::copy_n(both.begin(), std::ptrdiff_t(a.steps.size()), a.steps.begin());
    std::ranges::copy(both.begin() + std::ptrdiff_t(a.steps.size()), both.end(), b.steps.begin());
}

}  // namespace

Result<MethodComparison> compareMethods(const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    auto textbook = explain("freezing_point_textbook_c", explained.workings);
    auto waterActivity = explain("freezing_point_c", explained.workings);
    if (analysis.texture.process == Process::Unfrozen)
        return failure(phrase("This part is not frozen. Choose a frozen part to compare the methods."));
    if (analysis.freezing.freezingPoint && !analysis.textbook)
        return failure(
            phrase("The mix is too strong for the textbook's table. Add water, and both methods have a freezing point."));
    if (!textbook || !waterActivity || !analysis.freezing.freezingPoint || !analysis.textbook)
        return failure(phrase("There is no water to freeze. Add some, and both methods have a freezing point."));
    showInOneForm(*textbook, *waterActivity);
    const Celsius byCurve = analysis.freezing.freezingPoint->temperature, byTextbook = analysis.textbook->freezingPoint;
    const KelvinDifference difference = byCurve - byTextbook;
    std::vector<Parting> partings = partingsOf(analysis.texture.mix, byCurve, byTextbook);
    std::ranges::stable_sort(
        partings, std::ranges::greater{}, [](const Parting& parting) { return std::abs(parting.difference.value); });
    return MethodComparison{std::move(*textbook), std::move(*waterActivity), difference, std::move(partings),
        summaryOf(analysis, difference), adviceOn(analysis)};
}

}  // namespace firn
