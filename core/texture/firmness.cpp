#include "texture/firmness.h"

#include "freezing/curve_working.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

struct Threshold {
    Firmness firmness;
    double ice;  // share of the mix from which it holds
    std::string_view name;
};

// Only scoopable rests on a source: 65 to 70 % of the water frozen (M. Mullan, teaching article on freezing curves), which in a mix of 35
// to 40 % solids is 38 to 46 % of its mass. The other edges are judgement, +-0.03.
constexpr std::array thresholds{
    Threshold{Firmness::Liquid, 0.00, "liquid"},
    Threshold{Firmness::Slush, 0.15, "slush"},
    Threshold{Firmness::Soft, 0.30, "soft"},
    Threshold{Firmness::Scoopable, 0.38, "scoopable"},
    Threshold{Firmness::Firm, 0.46, "firm"},
    Threshold{Firmness::Hard, 0.55, "hard"},
    Threshold{Firmness::Block, 0.65, "block"},
};

}  // namespace

std::string_view nameOf(Firmness firmness) { return thresholds[static_cast<std::size_t>(firmness)].name; }

std::string_view afterIs(Firmness firmness) { return firmness == Firmness::Block ? "hard as a block" : nameOf(firmness); }

MassFraction iceWhere(Firmness firmness, Softening softening, Working* working)
{
    // Judgement: 50 % of air softens by about half a class, and fat above 10 % fills the mix like something that never freezes.
    constexpr double softeningOfAir = 0.04 / 50.0;
    constexpr double fatOfIceCream = 0.10;
    const double ice = thresholds[static_cast<std::size_t>(firmness)].ice;
    if (ice <= 0.0)
        return {0.0};
    const double fatBeyond = std::max(0.0, softening.fat.value - fatOfIceCream);
    const MassFraction result{(ice + softeningOfAir * softening.overrun_percent) * (1.0 - fatBeyond)};
    if (working) {
        const Symbol edge{"x", "begins", 100.0 * ice, "%",
            phrase("ice at which “{0}” begins, without air or fat", std::string(nameOf(firmness)))};
        const Symbol air{"o", "", softening.overrun_percent, "%", phrase("air that softens, of the mix's volume")};
        const Symbol fat{"w", "fat", percent(softening.fat), "%", phrase("fat"), working->keyOf("percent.fat")};
        const Formula beyond = function("max", {0.0, fat / oneHundredPercent() - fatOfIceCream});
        WorkingStep& step = working->found(iceWantedSymbol(result),
            (Formula(edge) + 100.0 * softeningOfAir * Formula(air)) * (1.0 - beyond), Source::ServingWindow);
        step.uncertainty =
            phrase("Edges of firmness are judgement to 3 points of ice, but for scoopable, and so is what air and fat do.");
    }
    return result;
}

Firmness firmnessOf(MassFraction ice, Softening softening)
{
    Firmness result = Firmness::Liquid;
    for (const Threshold& threshold : thresholds) {
        if (ice >= iceWhere(threshold.firmness, softening))
            result = threshold.firmness;
    }
    return result;
}

std::vector<FirmnessRegion> firmnessRegions(const FreezingCurve& curve, Softening softening)
{
    std::vector<FirmnessRegion> regions;
    Celsius from{0.0};
    Firmness current = Firmness::Liquid;
    for (const Threshold& threshold : thresholds) {
        if (threshold.firmness == Firmness::Liquid)
            continue;
        const auto begins = curve.temperatureWithIce(iceWhere(threshold.firmness, softening));
        if (!begins)
            break;
        if (*begins < from) {
            regions.push_back({{from, *begins}, current});
            from = *begins;
        }
        current = threshold.firmness;
    }
    regions.push_back({{from, coldestOfCurve}, current});
    return regions;
}

}  // namespace firn
