#include "freezing/textbook.h"

#include <array>

namespace firn {

namespace {

// Goff and Hartel 2013, Table 6.1: freezing-point depression in K of sucrose solutions at 3, 6, 9 … 180 g per 100 g water (after Leighton
// 1927, who took it from Pickering 1891), printed to 0.01 K; the first entry is water.
constexpr double tableStep_g = 3.0;
constexpr std::array depression_k{0.00, 0.18, 0.35, 0.53, 0.72, 0.90, 1.10, 1.29, 1.47, 1.67, 1.86, 2.03, 2.21, 2.40, 2.60, 2.78,
    2.99, 3.20, 3.42, 3.63, 3.85, 4.10, 4.33, 4.54, 4.77, 5.00, 5.26, 5.53, 5.77, 5.99, 6.23, 6.50, 6.80, 7.04, 7.32, 7.56, 7.80,
    8.04, 8.33, 8.62, 8.92, 9.19, 9.45, 9.71, 9.96, 10.22, 10.47, 10.72, 10.97, 11.19, 11.41, 11.63, 11.88, 12.14, 12.40, 12.67,
    12.88, 13.08, 13.28, 13.48, 13.68};

/// Linear between the rows, and along the last step beyond them.
double depressionOfSucrose_k(double sucrose_per100gWater)
{
    const double position = sucrose_per100gWater / tableStep_g;
    const auto last = depression_k.size() - 2;
    const auto i = position < static_cast<double>(last) ? static_cast<std::size_t>(position) : last;
    return depression_k[i] + (depression_k[i + 1] - depression_k[i]) * (position - static_cast<double>(i));
}

struct Factor {
    Constituent constituent;
    double sucrosePerGram;
};

// Sucrose equivalents by molar mass, as the book gives them: 1 for disaccharides, 1.9 for monosaccharides and six-carbon sugar alcohols,
// 342/M for smaller things. Chains of glucose syrups by their molar mass too, which makes a DE 42 syrup's solids 0.8 as the book has it.
// Lactose is counted as itself; the book's 0.545 per gram of milk solids-not-fat is their lactose.
constexpr double sucrose_g_mol = 342.3;
constexpr std::array factors{
    Factor{Constituent::Sucrose, 1.0}, Factor{Constituent::Lactose, 1.0}, Factor{Constituent::Maltose, 1.0},
    Factor{Constituent::Trehalose, 1.0}, Factor{Constituent::Maltitol, 1.0}, Factor{Constituent::Glucose, 1.9},
    Factor{Constituent::Fructose, 1.9}, Factor{Constituent::Galactose, 1.9}, Factor{Constituent::Sorbitol, 1.9},
    Factor{Constituent::Oligosaccharides, sucrose_g_mol / 504.4}, Factor{Constituent::Dextrins, sucrose_g_mol / 4000.0},
    Factor{Constituent::Xylitol, sucrose_g_mol / 152.1}, Factor{Constituent::Erythritol, sucrose_g_mol / 122.1},
    Factor{Constituent::Glycerol, sucrose_g_mol / 92.1}, Factor{Constituent::Acid, sucrose_g_mol / 192.1},
    Factor{Constituent::Ethanol, sucrose_g_mol / 46.07}, Factor{Constituent::Salt, 2.0 * sucrose_g_mol / 58.44},  // two ions
};

constexpr double saltsTerm_k = 2.37;  // K for milk solids-not-fat and whey solids equal to the water

}  // namespace

std::optional<TextbookFreezing> textbookFreezing(const TextbookMix& mix, double shareOfWaterFrozen)
{
    const double water_g = mix.water.value * (1.0 - shareOfWaterFrozen);
    if (water_g <= 0.0)
        return std::nullopt;
    TextbookFreezing result;
    result.sucroseEquivalents_per100gWater = 100.0 * mix.sucroseEquivalents.value / water_g;
    result.depressionOfSugars = {depressionOfSucrose_k(result.sucroseEquivalents_per100gWater)};
    result.depressionOfSalts = {saltsTerm_k * mix.milkAndWheySolidsNotFat.value / water_g};
    result.freezingPoint = Celsius{0.0} - result.depressionOfSugars - result.depressionOfSalts;
    result.isBeyondTable = result.sucroseEquivalents_per100gWater > tableStep_g * static_cast<double>(depression_k.size() - 1);
    return result;
}

TextbookMix textbookMix(const Mix& mix)
{
    TextbookMix result;
    for (const Factor& factor : factors)
        result.sucroseEquivalents += mix[factor.constituent] * factor.sucrosePerGram;
    result.milkAndWheySolidsNotFat = mix.milkSolidsNotFat;
    result.water = mix[Constituent::Water];
    return result;
}

}  // namespace firn
