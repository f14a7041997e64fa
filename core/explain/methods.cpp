#include "explain/methods.h"

#include "solution/water_activity.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr double worthSaying_k = 0.02;

/// How far the curve's freezing point lies above the textbook's; none where either has none.
std::optional<KelvinDifference> differenceIn(const Mix& mix)
{
    const auto curve = freezingCurve(mix).freezingPoint;
    const auto textbook = textbookFreezing(textbookMix(mix));
    return curve && textbook ? std::optional(curve->temperature - textbook->freezingPoint) : std::nullopt;
}

Mix without(Mix mix, std::initializer_list<Constituent> constituents)
{
    for (const Constituent c : constituents)
        mix.amounts[c] = {};
    return mix;
}

Mix withoutMilkSalts(Mix mix)
{
    mix = without(mix, {Constituent::Minerals});
    mix.milkSolidsNotFat = {};
    return mix;
}

Figure kelvins(double value) { return {value, 2}; }

/// Grams of sucrose that the textbook counts a gram as.
double equivalentsOf(Constituent c)
{
    Mix gram;
    gram.amounts[c] = {1.0};
    return textbookMix(gram).sucroseEquivalents.value;
}

Sentence reasonOfAlcohol(const Mix& mix, double difference_k)
{
    const double inWater_percent =
        100.0 * mix[Constituent::Ethanol].value / (mix[Constituent::Ethanol] + mix[Constituent::Water]).value;
    return phrase(
        "Alcohol ({0} % of alcohol and water): {1} K. The textbook counts a gram of it as {2} g of sucrose by its molar mass, "
        "however strong it is; the curve follows measured freezing points of alcohol and water.",
        Figure{inWater_percent, 1}, kelvins(difference_k), Figure{equivalentsOf(Constituent::Ethanol), 1});
}

Sentence reasonOfSalt(const Mix& mix, double difference_k)
{
    return phrase(
        "Salt ({0} g in 100 g water): {1} K. The textbook counts both of its ions in full; in the water they hold each other "
        "back a little.",
        Figure{100.0 * (mix[Constituent::Salt] / mix[Constituent::Water]), 2}, kelvins(difference_k));
}

Sentence reasonOfAcid(const Mix& mix, double difference_k)
{
    return phrase("Acid ({0} g in 100 g water): {1} K. The textbook counts its molar mass alone; part of it falls into ions.",
        Figure{100.0 * (mix[Constituent::Acid] / mix[Constituent::Water]), 2}, kelvins(difference_k));
}

Sentence reasonOfHeldWater(const Mix& mix, double difference_k)
{
    return phrase(
        "Water that protein and gums hold ({0} g of {1} g): {2} K. To the textbook all water is free; to the curve that part "
        "dissolves nothing, and the rest is stronger.",
        Figure{unfreezableWater(mix).value, 1}, Figure{mix[Constituent::Water].value, 0}, kelvins(difference_k));
}

Sentence reasonOfMilkSalts(const Mix& mix, double difference_k)
{
    return phrase(
        "Salts of milk and minerals of fruit ({0} g minerals, {1} g milk solids-not-fat): {2} K. The textbook takes 2.37 K times "
        "these solids over the water; the curve counts the minerals themselves, those of fruit too.",
        Figure{mix[Constituent::Minerals].value, 1}, Figure{mix.milkSolidsNotFat.value, 1}, kelvins(difference_k));
}

Sentence reasonOfSugars(const Mix& mix, double difference_k)
{
    const auto textbook = textbookFreezing(textbookMix(mix));
    const double strength = textbook ? textbook->sucroseEquivalents_per100gWater : 0.0;
    return textbook && textbook->isBeyondTable ? phrase(
               "Sugars and polyols ({0} g sucrose equivalents in 100 g water): {1} K. That is stronger than the textbook's table, "
               "whose last step goes on straight, while the real line bends down.",
               Figure{strength, 0}, kelvins(difference_k))
                                               : phrase("Sugars and polyols ({0} g sucrose equivalents in 100 g water): {1} K. The "
                                                        "textbook's table was measured on sucrose "
                                                        "in 1891 and counts a single sugar as 1.9 of it at any strength; the curve "
                                                        "has each sugar's own measurements.",
                                                   Figure{strength, 0}, kelvins(difference_k));
}

/// Takes one thing after another out of the mix: what the difference of the methods changes by is what that thing accounts for. What is left
/// are the sugars.
std::vector<Parting> partingsOf(const Mix& mix, KelvinDifference whole)
{
    using C = Constituent;
    using Reason = Sentence (*)(const Mix&, double);
    std::vector<Parting> partings;
    Mix left = mix;
    KelvinDifference difference = whole;
    const auto takeOut = [&](const Mix& next, Reason reason) {
        const auto after = differenceIn(next);
        if (!after || next == left)
            return;
        const KelvinDifference part = difference - *after;
        partings.push_back({part, reason(left, part.value)});
        difference = *after;
        left = next;
    };
    takeOut(without(left, {C::Ethanol}), reasonOfAlcohol);
    takeOut(without(left, {C::Salt}), reasonOfSalt);
    takeOut(without(left, {C::Acid}), reasonOfAcid);
    takeOut(without(left, {C::Protein, C::Hydrocolloid}), reasonOfHeldWater);
    takeOut(withoutMilkSalts(left), reasonOfMilkSalts);
    partings.push_back({difference, reasonOfSugars(left, difference.value)});
    std::ranges::sort(
        partings, [](const Parting& a, const Parting& b) { return std::abs(a.difference.value) > std::abs(b.difference.value); });
    return partings;
}

std::vector<Sentence> summaryOf(const Analysis& analysis, const MethodComparison& found)
{
    std::vector<Sentence> summary;
    // As the gauges round them: with the digits of the difference, rounding could make them another hundredth apart.
    const Figure curve{analysis.freezing.freezingPoint->temperature.value, 1};
    const Figure textbook{analysis.textbook->freezingPoint.value, 1};
    summary.push_back(std::abs(found.difference.value) < worthSaying_k
                          ? phrase("Both methods say {0} °C.", curve)
                          : phrase("By water activity it freezes at {0} °C, by sucrose equivalents at {1} °C: {2} K apart.", curve,
                              textbook, kelvins(std::abs(found.difference.value))));
    for (const Parting& parting : found.partings) {
        if (std::abs(parting.difference.value) >= worthSaying_k)
            summary.push_back(parting.reason);
    }
    if (analysis.freezing.freezingPoint->isExtrapolated)
        summary.push_back(phrase("Both go beyond what was measured here: trust neither to better than a kelvin."));
    else if (analysis.mix[Constituent::Ethanol].value > 0.0)
        summary.push_back(
            phrase("With alcohol in it the curve is the one to trust: the textbook's method was made for sugars and milk."));
    return summary;
}

}  // namespace

Result<MethodComparison> compareMethods(const ExplainedAnalysis& explained)
{
    auto textbook = explain("freezing_point_textbook_c", explained.workings);
    auto waterActivity = explain("freezing_point_c", explained.workings);
    const auto difference = differenceIn(explained.analysis.mix);
    if (!textbook || !waterActivity || !difference)
        return failure(phrase("There is no water to freeze: add some, and both methods have a freezing point."));
    MethodComparison result{
        std::move(*textbook), std::move(*waterActivity), *difference, partingsOf(explained.analysis.mix, *difference), {}};
    result.summary = summaryOf(explained.analysis, result);
    return result;
}

}  // namespace firn
