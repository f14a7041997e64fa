#include "explain/parting.h"

#include "freezing/salts_term.h"
#include "freezing/textbook.h"
#include "solution/solute_activity.h"
#include "solution/water_activity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace firn {

namespace {

using C = Constituent;

constexpr std::array besideSugars{C::Salt, C::Acid, C::Ethanol};
constexpr std::array binders{C::Protein, C::Hydrocolloid};
constexpr std::array simpleSugars{C::Glucose, C::Fructose, C::Galactose, C::Sorbitol};
constexpr double worthAReason_k = 0.005;  // less is shown as 0.00

Mix without(Mix mix, std::span<const Constituent> constituents)
{
    for (const Constituent c : constituents)
        mix.amounts[c] = {};
    return mix;
}

Mix waterWith(const Mix& mix, Constituent c)
{
    Mix result;
    result.amounts[C::Water] = mix[C::Water];
    result.amounts[c] = mix[c];
    return result;
}

/// What lies below the ice line's last point goes on along its tangent: the textbook's straight lines end nowhere.
struct IceLine {
    static double slopeAt(Celsius t)
    {
        constexpr double near_k = 0.01;
        return (lnWaterActivityOverIce(t + KelvinDifference{near_k}) - lnWaterActivityOverIce(t)) / near_k;
    }
    static double lnActivityAt(Celsius t)
    {
        const Celsius inside = std::max(t, coldestEquilibrium);
        return lnWaterActivityOverIce(inside) + slopeAt(inside) * (t - inside).value;
    }
    /// Kelvins for one unit of the logarithm, between two temperatures.
    static double meanSlope(Celsius a, Celsius b)
    {
        constexpr double tooNear_k = 1e-3;
        const KelvinDifference apart = a - b;
        return std::abs(apart.value) < tooNear_k ? 1.0 / slopeAt(std::max(a, coldestEquilibrium))
                                                 : apart.value / (lnActivityAt(a) - lnActivityAt(b));
    }
};

/// ln a_w of the liquid before any ice, at the temperature at which the mix begins to freeze.
double lnActivityOf(const Mix& mix, Celsius t)
{
    const Liquid liquid(mix);
    return liquid.with(liquid.freeWater()).activity.at(t);
}

double depressionInTable_k(Grams equivalents, Grams water)
{
    const auto found = textbookFreezing({equivalents, {}, water});
    return found ? found->depressionOfSugars.value : 0.0;
}

double lnActivityInTable(Grams equivalents, Grams water)
{
    return IceLine::lnActivityAt(Celsius{0.0} - KelvinDifference{depressionInTable_k(equivalents, water)});
}

/// ln a_w that as many free particles as the textbook counts would have: Raoult's law for little of them.
double lnActivityOfParticles(Grams equivalents, Grams water)
{
    return -(equivalents.value / sucroseOfTextbook_g_mol) / (water.value / water_g_mol);
}

Grams equivalentsOf(const Mix& mix) { return textbookMix(mix).sucroseEquivalents; }

/// What the sugars count as, and all that is dissolved.
struct Equivalents {
    Grams sugars, all;
};

Equivalents equivalents(const Mix& mix) { return {equivalentsOf(without(mix, besideSugars)), equivalentsOf(mix)}; }

/// How a cause moves the logarithm of the water activity from the textbook's to the curve's.
struct Move {
    PartingCause cause;
    double lnActivity;
};

PartingCause causeOf(Constituent c)
{
    return c == C::Salt ? PartingCause::Salt : c == C::Acid ? PartingCause::Acid : PartingCause::Alcohol;
}

/// In the order of PartingCause. Together they lead from the textbook's freezing point to the curve's.
std::vector<Move> movesOf(const Mix& mix, Celsius t, Celsius byTextbook)
{
    const Grams water = mix[C::Water];
    const Mix allFree = without(mix, binders);
    const Mix sugarsAndMinerals = without(allFree, besideSugars);
    const Mix sugarsOnly = without(sugarsAndMinerals, std::array{C::Minerals});
    const auto [ofSugars, ofAll] = equivalents(mix);
    const double table = lnActivityInTable(ofAll, water), tableOfSugars = lnActivityInTable(ofSugars, water);

    std::vector<Move> moves{{PartingCause::Steepness, tableOfSugars + lnActivityOfParticles(ofAll - ofSugars, water) - table}};
    for (const Constituent c : besideSugars) {
        const Mix alone = waterWith(mix, c);
        if (mix[c].value > 0.0)
            moves.push_back({causeOf(c), lnActivityOf(alone, t) - lnActivityOfParticles(equivalentsOf(alone), water)});
    }
    moves.push_back({PartingCause::MilkSalts,
        lnActivityOf(sugarsAndMinerals, t) - lnActivityOf(sugarsOnly, t) - (IceLine::lnActivityAt(byTextbook) - table)});
    moves.push_back({PartingCause::Sugars, lnActivityOf(sugarsOnly, t) - tableOfSugars});
    moves.push_back({PartingCause::HeldWater, lnActivityOf(mix, t) - lnActivityOf(allFree, t)});
    return moves;
}

bool isIn(const Mix& mix, PartingCause cause)
{
    switch (cause) {
    case PartingCause::MilkSalts:
        return mix[C::Minerals].value > 0.0 || mix.milkSolidsNotFat.value > 0.0;
    case PartingCause::Steepness:
        return std::ranges::any_of(besideSugars, [&](Constituent c) { return mix[c].value > 0.0; });
    case PartingCause::Sugars:
        return equivalents(mix).sugars.value > 0.0;
    case PartingCause::HeldWater:
        return unfreezableWater(mix).value > 0.0;
    case PartingCause::Salt:
    case PartingCause::Acid:
    case PartingCause::Alcohol:
    case PartingCause::ColdestEquilibrium:
        break;
    }
    return true;
}

Figure per100gWater(Grams mass, const Mix& mix, int decimals) { return {100.0 * (mass / mix[C::Water]), decimals}; }

Sentence reasonOfSteepness(const Mix& mix, bool isWarmer)
{
    const Grams water = mix[C::Water];
    const auto [ofSugars, ofAll] = equivalents(mix);
    const double added_per100g = 100.0 * ((ofAll - ofSugars) / water);
    const double start_k = depressionInTable_k(ofSugars, water);
    const double byTable_k = depressionInTable_k(ofAll, water) - start_k;
    const Celsius start = Celsius{0.0} - KelvinDifference{start_k};
    const double byParticles_k =
        -lnActivityOfParticles(ofAll - ofSugars, water) * IceLine::meanSlope(start, start - KelvinDifference{byTable_k});
    const Figure from = per100gWater(ofSugars, mix, 0), to = per100gWater(ofAll, mix, 0);
    const Figure table = temperatureDifferenceFigure({byTable_k / added_per100g}, 4);
    const Figure particles = temperatureDifferenceFigure({byParticles_k / added_per100g}, 4);
    return isWarmer
               ? phrase("Steepness of the sucrose table: what is not sugar is looked up in it on top of the sugars, from {0} to "
                        "{1} g in 100 g water. There a gram lowers the freezing point by {2}; that many free particles "
                        "would lower it by {3}. The curve is warmer.",
                   from, to, table, particles)
               : phrase("Steepness of the sucrose table: what is not sugar is looked up in it on top of the sugars, from {0} to "
                        "{1} g in 100 g water. There a gram lowers the freezing point by {2}; that many free particles "
                        "would lower it by {3}. The curve is colder.",
                   from, to, table, particles);
}

Sentence reasonOfMinerals(const Mix& mix, bool isWarmer)
{
    const Figure minerals{mix[C::Minerals].value, 1}, solids{mix.milkSolidsNotFat.value, 1};
    const Figure term = temperatureDifferenceFigure({saltsTerm_k}, 2);
    if (mix.milkSolidsNotFat.value <= 0.0)
        return isWarmer
                   ? phrase("Minerals ({0} g): the textbook counts only those of milk, and there is no milk in this mix. "
                            "The curve is warmer.",
                       minerals)
                   : phrase("Minerals ({0} g): the textbook counts only those of milk, and there is no milk in this mix. To the "
                            "curve they are dissolved like sugar. The curve is colder.",
                       minerals);
    return isWarmer
               ? phrase("Minerals ({0} g, with {1} g milk solids-not-fat): for the salts of milk the textbook takes off {2} times "
                        "these solids over the water; the minerals themselves lower it less. The curve is warmer.",
                   minerals, solids, term)
               : phrase("Minerals ({0} g, with {1} g milk solids-not-fat): for the salts of milk the textbook takes off {2} times "
                        "these solids over the water; all the minerals of the mix together lower it more. The curve is colder.",
                   minerals, solids, term);
}

bool hasSimpleSugars(const Mix& mix)
{
    return std::ranges::any_of(simpleSugars, [&](Constituent c) { return mix[c].value > 0.0; });
}

Sentence reasonOfSugars(const Mix& mix, bool isWarmer)
{
    const Grams ofSugars = equivalents(mix).sugars;
    const Figure strength = per100gWater(ofSugars, mix, 0);
    const auto found = textbookFreezing({ofSugars, {}, mix[C::Water]});
    if (found && found->isBeyondTable)
        return isWarmer
                   ? phrase("Sugars and polyols ({0} g sucrose equivalents in 100 g water) are stronger than the textbook's table, "
                            "whose last step goes on straight. The curve is warmer.",
                       strength)
                   : phrase("Sugars and polyols ({0} g sucrose equivalents in 100 g water) are stronger than the textbook's table, "
                            "whose last step goes on straight, while the real line bends down. The curve is colder.",
                       strength);
    if (!hasSimpleSugars(mix))
        return isWarmer ? phrase("Sugars and polyols ({0} g sucrose equivalents in 100 g water): the textbook's table was measured "
                                 "on sucrose in 1891. By newer measurements they lower it less here. The curve is warmer.",
                   strength)
                        : phrase("Sugars and polyols ({0} g sucrose equivalents in 100 g water): the textbook's table was measured "
                                 "on sucrose in 1891. By newer measurements they lower it more here. The curve is colder.",
                            strength);
    return isWarmer
               ? phrase(
                   "Sugars and polyols ({0} g sucrose equivalents in 100 g water): the textbook's table was measured on sucrose "
                   "in 1891 and counts simple sugars as 1.9 of it at any strength. By their own measurements they lower "
                   "it less here. The curve is warmer.",
                   strength)
               : phrase(
                   "Sugars and polyols ({0} g sucrose equivalents in 100 g water): the textbook's table was measured on sucrose "
                   "in 1891 and counts simple sugars as 1.9 of it at any strength. By their own measurements they lower "
                   "it more here. The curve is colder.",
                   strength);
}

}  // namespace

namespace {

/// Of what is shown as 0.00, no sign is worth a reason.
Sentence reasonForNothing(PartingCause cause)
{
    const Figure least = temperatureDifferenceFigure({2.0 * worthAReason_k}, 2);
    switch (cause) {
    case PartingCause::Steepness:
        return phrase("Steepness of the sucrose table: less than {0} here.", least);
    case PartingCause::Salt:
        return phrase("Salt: less than {0} here.", least);
    case PartingCause::Acid:
        return phrase("Acid: less than {0} here.", least);
    case PartingCause::Alcohol:
        return phrase("Alcohol: less than {0} here.", least);
    case PartingCause::MilkSalts:
        return phrase("Minerals: less than {0} here.", least);
    case PartingCause::Sugars:
        return phrase("Sugars and polyols: less than {0} here.", least);
    case PartingCause::HeldWater:
        return phrase("Water held by protein and gums: less than {0} here.", least);
    case PartingCause::ColdestEquilibrium:
        break;
    }
    return phrase("The end of the curve: less than {0} here.", least);
}

}  // namespace

Sentence reasonFor(PartingCause cause, const Mix& mix, KelvinDifference difference)
{
    if (std::abs(difference.value) < worthAReason_k)
        return reasonForNothing(cause);
    const bool isWarmer = difference.value >= 0.0;
    switch (cause) {
    case PartingCause::Steepness:
        return reasonOfSteepness(mix, isWarmer);
    case PartingCause::Salt: {
        const Figure strength = per100gWater(mix[C::Salt], mix, 2);
        return isWarmer
                   ? phrase(
                       "Salt ({0} g in 100 g water): the textbook counts both of its ions in full; in the water they hold each "
                       "other back and lower it less. The curve is warmer.",
                       strength)
                   : phrase("Salt ({0} g in 100 g water): the textbook counts both of its ions in full; in so strong a brine they "
                            "bind water and lower it more. The curve is colder.",
                       strength);
    }
    case PartingCause::Acid: {
        const Figure strength = per100gWater(mix[C::Acid], mix, 2);
        return isWarmer
                   ? phrase("Acid ({0} g in 100 g water): the textbook counts its molar mass alone; measured solutions of this "
                            "strength lower it less. The curve is warmer.",
                       strength)
                   : phrase("Acid ({0} g in 100 g water): the textbook counts its molar mass alone; part of it falls into ions, so "
                            "that it lowers it more. The curve is colder.",
                       strength);
    }
    case PartingCause::Alcohol: {
        const Figure strength{100.0 * (mix[C::Ethanol] / (mix[C::Ethanol] + mix[C::Water])), 1};
        return isWarmer
                   ? phrase("Alcohol ({0} % of alcohol and water): the textbook counts its molar mass alone; measured mixtures of "
                            "alcohol and water freeze at a higher temperature. The curve is warmer.",
                       strength)
                   : phrase("Alcohol ({0} % of alcohol and water): the textbook counts its molar mass alone; measured mixtures of "
                            "alcohol and water freeze at a lower temperature. The curve is colder.",
                       strength);
    }
    case PartingCause::MilkSalts:
        return reasonOfMinerals(mix, isWarmer);
    case PartingCause::Sugars:
        return reasonOfSugars(mix, isWarmer);
    case PartingCause::HeldWater:
        return phrase(
            "Protein and gums hold {0} g of {1} g water. To the textbook all of it is free; to the curve that part dissolves "
            "nothing, and the rest is stronger. The curve is colder.",
            Figure{unfreezableWater(mix).value, 1}, Figure{mix[C::Water].value, 0});
    case PartingCause::ColdestEquilibrium:
        break;
    }
    return phrase(
        "The curve answers with nothing colder than {0} °C, the end of what its vapour pressures are used for. The curve is "
        "warmer.",
        Figure{coldestEquilibrium.value, 0});
}

std::vector<Parting> partingsOf(const Mix& mix, Celsius byWaterActivity, Celsius byTextbook)
{
    const std::vector<Move> moves = movesOf(mix, byWaterActivity, byTextbook);
    // Where the liquid would freeze colder than the ice line is used for, the tangent says how much colder.
    const bool isAtEnd = byWaterActivity <= coldestEquilibrium;
    const double beyond = isAtEnd ? lnActivityOf(mix, byWaterActivity) - IceLine::lnActivityAt(byWaterActivity) : 0.0;
    const KelvinDifference beyondEnd{isAtEnd ? beyond / IceLine::slopeAt(coldestEquilibrium) : 0.0};
    const Celsius reached = byWaterActivity + beyondEnd;
    const double slope = IceLine::meanSlope(reached, byTextbook);

    std::vector<Parting> partings;
    for (const Move& move : moves) {
        if (isIn(mix, move.cause))
            partings.push_back({move.cause, {slope * move.lnActivity}, {}});
    }
    if (isAtEnd)
        partings.push_back({PartingCause::ColdestEquilibrium, byWaterActivity - reached, {}});
    if (partings.empty())
        return partings;
    // The freezing point is solved for to 1e-5 K: the largest part takes that up.
    KelvinDifference left = byWaterActivity - byTextbook;
    for (const Parting& parting : partings)
        left = left - parting.difference;
    auto& largest = *std::ranges::max_element(partings, {}, [](const Parting& p) { return std::abs(p.difference.value); });
    largest.difference = largest.difference + left;
    for (Parting& parting : partings)
        parting.reason = reasonFor(parting.cause, mix, parting.difference);
    return partings;
}

}  // namespace firn
