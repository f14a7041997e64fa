#include "texture/firmness.h"

#include "freezing/curve_working.h"

#include <algorithm>
#include <array>
#include <span>

namespace firn {

namespace {

struct Threshold {
    Firmness firmness;
    double ice;  // share of the mix from which it holds
    std::string_view name;
};

// In the order of the enumeration. Only scoopable rests on a source: 65 to 70 % of the water frozen (M. Mullan, teaching article on freezing
// curves), which in a mix of 35 to 40 % solids is 38 to 46 % of its mass. The other edges are judgement, +-0.03. Those of loose crystals come
// from how grains pack and how liquid fills the gaps between them: docs/models.md.
constexpr std::array thresholds{
    Threshold{Firmness::Liquid, 0.00, "liquid"},
    Threshold{Firmness::Slush, 0.15, "slush"},
    Threshold{Firmness::Soft, 0.30, "soft"},
    Threshold{Firmness::Scoopable, 0.38, "scoopable"},
    Threshold{Firmness::Firm, 0.46, "firm"},
    Threshold{Firmness::Hard, 0.55, "hard"},
    Threshold{Firmness::Block, 0.65, "block"},
    Threshold{Firmness::Wet, 0.30, "wet"},
    Threshold{Firmness::Loose, 0.48, "loose"},
    Threshold{Firmness::Dry, 0.75, "dry"},
};

constexpr std::array ofOnePiece{
    Firmness::Liquid, Firmness::Slush, Firmness::Soft, Firmness::Scoopable, Firmness::Firm, Firmness::Hard, Firmness::Block};
constexpr std::array ofLooseCrystals{Firmness::Liquid, Firmness::Slush, Firmness::Wet, Firmness::Loose, Firmness::Dry};

std::span<const Firmness> scaleOf(IceForm form)
{
    return form == IceForm::OnePiece ? std::span<const Firmness>(ofOnePiece) : std::span<const Firmness>(ofLooseCrystals);
}

bool isOfLooseCrystals(Firmness firmness) { return firmness >= Firmness::Wet; }

const Threshold& thresholdOf(Firmness firmness) { return thresholds[static_cast<std::size_t>(firmness)]; }

}  // namespace

std::string_view nameOf(Firmness firmness) { return thresholdOf(firmness).name; }

std::string_view afterIs(Firmness firmness) { return firmness == Firmness::Block ? "hard as a block" : nameOf(firmness); }

IceForm iceFormOf(Process process) { return process == Process::Scraped ? IceForm::LooseCrystals : IceForm::OnePiece; }

MassFraction iceWhere(Firmness firmness, Softening softening, Working* working)
{
    // Judgement: 50 % of air softens by about half a class, and fat above 10 % fills the mix like something that never freezes.
    constexpr double softeningOfAir = 0.04 / 50.0;
    constexpr double fatOfIceCream = 0.10;
    const double ice = thresholdOf(firmness).ice;
    if (ice <= 0.0)
        return {0.0};
    if (isOfLooseCrystals(firmness)) {
        if (working)
            working->found(iceWantedSymbol({ice}), Number{100.0 * ice, "%"}, Source::ServingWindow).uncertainty =
                phrase("Edges of loose crystals follow from how grains pack: 5 percentage points of ice.");
        return {ice};
    }
    const double fatBeyond = std::max(0.0, softening.fat.value - fatOfIceCream);
    const MassFraction result{(ice + softeningOfAir * softening.overrun_percent) * (1.0 - fatBeyond)};
    if (working) {
        const Symbol edge{"x", "begins", 100.0 * ice, "%",
            phrase("ice at which “{0}” begins, without air or fat", std::string(nameOf(firmness)))};
        const Symbol air{"o", "", softening.overrun_percent, "%", phrase("overrun that softens: volume of air on volume of mix")};
        const Symbol fat{"w", "fat", percent(softening.fat), "%", phrase("fat"), working->keyOf("percent.fat")};
        const Formula beyond = function("max", {0.0, fat / oneHundredPercent() - fatOfIceCream});
        WorkingStep& step = working->found(iceWantedSymbol(result),
            (Formula(edge) + 100.0 * softeningOfAir * Formula(air)) * (1.0 - beyond), Source::ServingWindow);
        step.uncertainty =
            phrase("Firmness limits and the effect of air and fat are estimates (± 3 percentage points of ice); only "
                   "“scoopable” is published.");
    }
    return result;
}

Firmness firmnessOf(MassFraction ice, Softening softening, IceForm form)
{
    Firmness result = Firmness::Liquid;
    for (const Firmness firmness : scaleOf(form)) {
        if (ice >= iceWhere(firmness, softening))
            result = firmness;
    }
    return result;
}

std::vector<FirmnessRegion> firmnessRegions(const FreezingCurve& curve, Softening softening, IceForm form)
{
    std::vector<FirmnessRegion> regions;
    Celsius from{0.0};
    Firmness current = Firmness::Liquid;
    for (const Firmness firmness : scaleOf(form)) {
        if (firmness == Firmness::Liquid)
            continue;
        const auto begins = curve.temperatureWithIce(iceWhere(firmness, softening));
        if (!begins)
            break;
        if (*begins < from) {
            regions.push_back({{from, *begins}, current});
            from = *begins;
        }
        current = firmness;
    }
    regions.push_back({{from, coldestOfCurve}, current});
    return regions;
}

std::optional<ServingEdges> servingEdges(TextureClass textureClass, Softening softening)
{
    const auto at = [softening](Firmness firmness) { return iceWhere(firmness, softening); };
    // A class to either side of the best is still served (judgement): drawn soft, or left to stand a minute.
    switch (textureClass) {
    case TextureClass::Granita:
    case TextureClass::ScrapedIce: {
        constexpr MassFraction edgesAreGoodTo{0.05};
        const MassFraction loose = at(Firmness::Loose), dry = at(Firmness::Dry);
        return ServingEdges{loose, dry, loose - edgesAreGoodTo, dry + edgesAreGoodTo};
    }
    case TextureClass::Semifreddo:
        return ServingEdges{at(Firmness::Soft), at(Firmness::Firm), at(Firmness::Slush), at(Firmness::Hard)};
    case TextureClass::Sorbet:
    case TextureClass::Sherbet:
    case TextureClass::MilkIce:
    case TextureClass::IceCream:
    case TextureClass::FrozenCustard:
    case TextureClass::CreamyIce:
        return ServingEdges{at(Firmness::Scoopable), at(Firmness::Firm), at(Firmness::Soft), at(Firmness::Hard)};
    case TextureClass::Nothing:
    case TextureClass::Ice:
    case TextureClass::Slush:
    case TextureClass::StillFrozenIce:
    case TextureClass::WillNotFreeze:
    case TextureClass::Unfrozen:
        break;
    }
    return std::nullopt;
}

}  // namespace firn
