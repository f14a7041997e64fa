#include "freezing/textbook.h"

#include "freezing/salts_term.h"
#include "mix/symbols.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

/// The water, or the part of it that is liquid.
Symbol waterSymbol(const TextbookMix& mix, double shareOfWaterFrozen, const Working& working)
{
    if (shareOfWaterFrozen <= 0.0)
        return {"m", "water", mix.water.value, "g", phrase("water in the mix"), working.keyOf("water_g")};
    return {"m", "liquid", mix.water.value * (1.0 - shareOfWaterFrozen), "g", phrase("water that is liquid")};
}

Symbol equivalentsSymbol(Grams mass) { return {"SE", "", mass.value, "g", phrase("sucrose that would freeze alike")}; }

Symbol strengthSymbol(double sucrose_per100gWater)
{
    return {"s", "", sucrose_per100gWater, "g", phrase("sucrose equivalents in 100 g water")};
}

Symbol sugarsDepressionSymbol(KelvinDifference depression)
{
    return {"ΔT", "sugars", depression.value, "K", phrase("depression by all that counts as sucrose")};
}

Symbol saltsDepressionSymbol(KelvinDifference depression)
{
    return {"ΔT", "salts", depression.value, "K", phrase("depression by the salts of milk")};
}

// Goff and Hartel 2013, Table 6.1: freezing-point depression in K of sucrose solutions at 3, 6, 9 … 180 g per 100 g water (after Leighton
// 1927, who took it from Pickering 1891), printed to 0.01 K; the first entry is water.
constexpr double tableStep_g = 3.0;
constexpr std::array depression_k{0.00, 0.18, 0.35, 0.53, 0.72, 0.90, 1.10, 1.29, 1.47, 1.67, 1.86, 2.03, 2.21, 2.40, 2.60, 2.78,
    2.99, 3.20, 3.42, 3.63, 3.85, 4.10, 4.33, 4.54, 4.77, 5.00, 5.26, 5.53, 5.77, 5.99, 6.23, 6.50, 6.80, 7.04, 7.32, 7.56, 7.80,
    8.04, 8.33, 8.62, 8.92, 9.19, 9.45, 9.71, 9.96, 10.22, 10.47, 10.72, 10.97, 11.19, 11.41, 11.63, 11.88, 12.14, 12.40, 12.67,
    12.88, 13.08, 13.28, 13.48, 13.68};

/// The row from which to go on to the next; beyond the table the last but one.
std::size_t rowBelow(double sucrose_per100gWater)
{
    const double position = sucrose_per100gWater / tableStep_g;
    const auto last = depression_k.size() - 2;
    return position < static_cast<double>(last) ? static_cast<std::size_t>(position) : last;
}

/// Linear between the rows, and along the last step beyond them.
double depressionOfSucrose_k(double sucrose_per100gWater, Working* working)
{
    const double position = sucrose_per100gWater / tableStep_g;
    const std::size_t i = rowBelow(sucrose_per100gWater);
    const double result = depression_k[i] + (depression_k[i + 1] - depression_k[i]) * (position - static_cast<double>(i));
    if (working) {
        const double row_g = tableStep_g * static_cast<double>(i);
        const Symbol low{"s", "1", row_g, "g", phrase("row of the table below it"), {}, 0};
        const Symbol high{"s", "2", row_g + tableStep_g, "g", phrase("row of the table above it"), {}, 0};
        const Symbol atLow{"ΔT", "1", depression_k[i], "K", phrase("depression in the lower row"), {}, 2};
        const Symbol atHigh{"ΔT", "2", depression_k[i + 1], "K", phrase("depression in the upper row"), {}, 2};
        const Symbol strength = strengthSymbol(sucrose_per100gWater);
        WorkingStep& step = working->found(sugarsDepressionSymbol({result}),
            atLow + (Formula(atHigh) - atLow) * ((Formula(strength) - low) / (Formula(high) - low)), Source::Textbook);
        step.method = phrase("Looked up between two rows of the table, along a straight line.");
        step.range = phrase("The table ends at {0} g in 100 g water; up to {1} g its last step goes on.",
            Figure{tableStep_g * static_cast<double>(depression_k.size() - 1), 0}, Figure{mostBeyondTable_g, 0});
        step.uncertainty = phrase("Printed to 0.01 K.");
    }
    return result;
}

struct Factor {
    Constituent constituent;
    double sucrosePerGram;
};

// Sucrose equivalents by molar mass, as the book gives them: 1 for disaccharides, 1.9 for monosaccharides and six-carbon sugar alcohols,
// 342/M for smaller things. Chains of glucose syrups by their molar mass too, which makes a DE 42 syrup's solids 0.8 as the book has it.
// Lactose is counted as itself; the book's 0.545 per gram of milk solids-not-fat is their lactose.
constexpr std::array factors{
    Factor{Constituent::Sucrose, 1.0}, Factor{Constituent::Lactose, 1.0}, Factor{Constituent::Maltose, 1.0},
    Factor{Constituent::Trehalose, 1.0}, Factor{Constituent::Maltitol, 1.0}, Factor{Constituent::Glucose, 1.9},
    Factor{Constituent::Fructose, 1.9}, Factor{Constituent::Galactose, 1.9}, Factor{Constituent::Sorbitol, 1.9},
    Factor{Constituent::Oligosaccharides, sucroseOfTextbook_g_mol / 504.4},
    Factor{Constituent::Dextrins, sucroseOfTextbook_g_mol / 4000.0}, Factor{Constituent::Xylitol, sucroseOfTextbook_g_mol / 152.1},
    Factor{Constituent::Erythritol, sucroseOfTextbook_g_mol / 122.1}, Factor{Constituent::Glycerol, sucroseOfTextbook_g_mol / 92.1},
    Factor{Constituent::Acid, sucroseOfTextbook_g_mol / 192.1}, Factor{Constituent::Ethanol, sucroseOfTextbook_g_mol / 46.07},
    Factor{Constituent::Salt, 2.0 * sucroseOfTextbook_g_mol / 58.44},  // two ions
};

void recordStrength(Working& working, const TextbookMix& mix, double shareOfWaterFrozen, double sucrose_per100gWater)
{
    const Symbol water = waterSymbol(mix, shareOfWaterFrozen, working);
    if (shareOfWaterFrozen > 0.0) {
        const Symbol frozen{"f", "", shareOfWaterFrozen, "", phrase("share of the water that is ice already")};
        working.found(water, waterSymbol(mix, 0.0, working) * (1.0 - Formula(frozen)), Source::Textbook);
    }
    working.found(strengthSymbol(sucrose_per100gWater),
        Formula(Number{100.0, "g"}) * (equivalentsSymbol(mix.sucroseEquivalents) / Formula(water)), Source::Textbook);
}

void recordDepression(Working& working, const TextbookMix& mix, double shareOfWaterFrozen, const TextbookFreezing& found)
{
    const Symbol solids{"m", "msnf", mix.milkAndWheySolidsNotFat.value, "g", phrase("solids of milk and whey without fat"),
        working.keyOf(milkSolidsNotFatPart().figure)};
    const Symbol salts = saltsDepressionSymbol(found.depressionOfSalts);
    const Number factor{saltsTerm_k, "K"};
    working.found(salts, Formula(factor) * (solids / Formula(waterSymbol(mix, shareOfWaterFrozen, working))), Source::Textbook);
    const Symbol point{"T", "textbook", found.freezingPoint.value, "°C", phrase("freezing point by sucrose equivalents"),
        working.keyOf("freezing_point_textbook_c")};
    WorkingStep& last = working.found(
        point, Formula(Number{0.0, "°C"}) - sugarsDepressionSymbol(found.depressionOfSugars) - salts, Source::Textbook);
    last.range = phrase(
        "Made for sugars and milk. Alcohol and acid, which the book does not treat, count by their molar mass, salt by that of its "
        "2 ions.");
}

}  // namespace

std::optional<TextbookFreezing> textbookFreezing(const TextbookMix& mix, double shareOfWaterFrozen, Working* working)
{
    const double water_g = mix.water.value * (1.0 - shareOfWaterFrozen);
    TextbookFreezing result;
    result.sucroseEquivalents_per100gWater = 100.0 * mix.sucroseEquivalents.value / water_g;
    if (water_g <= 0.0 || !(result.sucroseEquivalents_per100gWater <= mostBeyondTable_g)) {
        if (working)
            working->giveUp();
        return std::nullopt;
    }
    if (working)
        recordStrength(*working, mix, shareOfWaterFrozen, result.sucroseEquivalents_per100gWater);
    result.depressionOfSugars = {depressionOfSucrose_k(result.sucroseEquivalents_per100gWater, working)};
    result.depressionOfSalts = {saltsTerm_k * mix.milkAndWheySolidsNotFat.value / water_g};
    result.freezingPoint = Celsius{0.0} - result.depressionOfSugars - result.depressionOfSalts;
    result.isBeyondTable = result.sucroseEquivalents_per100gWater > tableStep_g * static_cast<double>(depression_k.size() - 1);
    if (working)
        recordDepression(*working, mix, shareOfWaterFrozen, result);
    return result;
}

std::vector<DepressionRow> depressionRowsAround(double sucrose_per100gWater)
{
    const std::size_t below = rowBelow(sucrose_per100gWater);
    std::vector<DepressionRow> rows;
    for (std::size_t i = below > 0 ? below - 1 : 0; i < std::min(below + 3, depression_k.size()); ++i)
        rows.push_back({tableStep_g * static_cast<double>(i), {depression_k[i]}});
    return rows;
}

double sucroseEquivalentOf(Constituent constituent)
{
    const auto factor = std::ranges::find(factors, constituent, &Factor::constituent);
    return factor == factors.end() ? 0.0 : factor->sucrosePerGram;
}

TextbookMix textbookMix(const Mix& mix, Working* working)
{
    TextbookMix result;
    for (const Factor& factor : factors)
        result.sucroseEquivalents += mix[factor.constituent] * factor.sucrosePerGram;
    result.milkAndWheySolidsNotFat = mix.milkSolidsNotFat;
    result.water = mix[Constituent::Water];
    if (working) {
        std::vector<SeriesTerm> terms;
        for (const Factor& factor : factors) {
            const MixPart& part = partOf(factor.constituent);
            const Symbol mass = massOf(factor.constituent, mix, *working);
            const Symbol perGram{"f", part.subscript, factor.sucrosePerGram, "",
                factor.constituent == Constituent::Salt
                    ? phrase("grams of sucrose that a gram of it counts as: 2 · 342.3/M, since it splits into 2 ions")
                    : phrase("grams of sucrose that a gram of it counts as")};
            if (mass.value > 0.0)
                terms.push_back({part.label, mass * perGram});
        }
        working->found(equivalentsSymbol(result.sucroseEquivalents),
            series("i", generalMass() * Symbol{"f", "i", 0.0, "", phrase("grams of sucrose that a gram of each counts as")},
                std::move(terms)),
            Source::TextbookFactors);
    }
    return result;
}

}  // namespace firn
