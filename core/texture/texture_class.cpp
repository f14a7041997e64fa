#include "texture/texture_class.h"

namespace firn {

std::string_view nameOf(TextureClass textureClass)
{
    switch (textureClass) {
    case TextureClass::Nothing:
        return "nothing to freeze";
    case TextureClass::Ice:
        return "ice";
    case TextureClass::Slush:
        return "slush";
    case TextureClass::Granita:
        return "granita";
    case TextureClass::StillFrozenIce:
        return "still-frozen ice";
    case TextureClass::Sorbet:
        return "sorbet";
    case TextureClass::Sherbet:
        return "sherbet";
    case TextureClass::MilkIce:
        return "milk ice";
    case TextureClass::IceCream:
        return "ice cream";
    case TextureClass::FrozenCustard:
        return "frozen custard";
    case TextureClass::CreamyIce:
        return "creamy ice without milk";
    case TextureClass::Semifreddo:
        return "semifreddo";
    case TextureClass::WillNotFreeze:
        return "will not freeze";
    }
    return {};
}

const std::vector<TradeBand>& tradeBands()
{
    static const std::vector<TradeBand> bands{
        {TextureClass::IceCream, {0.13}, {0.20}, "McGee, On Food and Cooking: 13 to 16 % premium, 15 to 20 % hand-made"},
        {TextureClass::Granita, {0.20}, {0.26}, "common practice, no source"},
        {TextureClass::Semifreddo, {0.15}, {0.25}, "textbook figures, from memory"},
        {TextureClass::Sherbet, {0.26}, {0.35}, "McGee, On Food and Cooking"},
        {TextureClass::Sorbet, {0.30}, {0.36}, "common practice, 35 to 36 %; baking textbooks, 30 to 32.5 °Bx"},
    };
    return bands;
}

TextureClass classOf(const Mix& mix, Process process)
{
    // Edges after 21 CFR 135.110 and 135.140 (sherbet, custard), a UK trade code (ice cream from 5 % fat) and common practice. They name
    // the kind; whether a law lets it be sold under that name is another question.
    const double fat_percent = percent(shareOf(mix[Constituent::Fat], mix));
    const double milkFat_percent = percent(shareOf(mix.milkFat, mix));
    const double milkSolids_percent = milkFat_percent + percent(shareOf(mix.milkSolidsNotFat, mix));
    const double yolk_percent = percent(shareOf(mix.yolkSolids, mix));
    const double solids_percent = percent(shareOf(totalSolids(mix), mix));
    constexpr double custardYolk_percent = 1.4;

    if (process == Process::Folded)
        return TextureClass::Semifreddo;
    if (solids_percent < 2.0 && mix[Constituent::Ethanol].value <= 0.0)
        return TextureClass::Ice;
    if (process == Process::Still)
        return TextureClass::StillFrozenIce;
    if (process == Process::Scraped && fat_percent < 2.0)
        return TextureClass::Granita;
    if (milkSolids_percent < 1.0)
        return fat_percent < 3.0 ? TextureClass::Sorbet : TextureClass::CreamyIce;
    if (milkFat_percent <= 3.0 && milkSolids_percent <= 5.0)
        return TextureClass::Sherbet;
    if (milkFat_percent < 5.0)
        return TextureClass::MilkIce;
    return yolk_percent >= custardYolk_percent ? TextureClass::FrozenCustard : TextureClass::IceCream;
}

}  // namespace firn
