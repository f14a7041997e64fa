#include "texture/texture_class.h"

#include <string>

namespace firn {

namespace {

constexpr double plainIceSolids_percent = 2.0;   // judgement: what tap water, tea or a squeeze of lemon brings
constexpr double withoutMilk_percent = 1.0;      // 21 CFR 135.140: sherbet has at least 1 % milk solids-not-fat
constexpr double waterIceFat_percent = 3.0;      // German guidelines for ices: water ice has less than 3 % fat
constexpr double granitaFat_percent = 2.0;       // judgement: a granita is a water ice
constexpr double iceCreamFat_percent = 5.0;      // UK trade code: ice cream from 5 % fat
constexpr double iceCreamMilk_percent = 6.0;     // the same: 2.5 % milk protein, which 6 to 7 % milk solids-not-fat have
constexpr double milkIceFat_percent = 2.5;       // UK trade code: milk ice
constexpr double milkIceMilk_percent = 6.0;      // the same
constexpr double sherbetMilkFat_percent = 3.0;   // McGee, On Food and Cooking: 1 to 3 %; 21 CFR 135.140: 1 to 2 %
constexpr double sherbetMilk_percent = 5.0;      // 21 CFR 135.140: 2 to 5 % milk solids in all
constexpr double sherbetAcidity_percent = 0.35;  // 21 CFR 135.140: of a fruit sherbet, as lactic acid
constexpr double custardYolk_percent = 1.4;      // 21 CFR 135.110

/// Compares a figure with an edge, and notes both.
class Comparing {
public:
    explicit Comparing(std::vector<Sentence>* reasons)
        : m_reasons(reasons)
    {
    }

    /// `above` and `below` have places for the figure and the edge.
    bool isFrom(double figure_percent, double edge_percent, std::string_view above, std::string_view below) const
    {
        const bool isAbove = figure_percent >= edge_percent;
        if (m_reasons)
            m_reasons->push_back({isAbove ? above : below, {decimals(figure_percent), decimals(edge_percent)}});
        return isAbove;
    }

    void note(Sentence reason) const
    {
        if (m_reasons)
            m_reasons->push_back(std::move(reason));
    }

private:
    /// Two decimals below one per cent, where a hundredth decides.
    static Figure decimals(double percent) { return {percent, percent < 1.0 && percent > 0.0 ? 2 : 1}; }

    std::vector<Sentence>* m_reasons;
};

/// What US law says beside: the kind stays, the name on a label may not.
void addSherbetLaw(std::vector<Sentence>& reasons, double milkFat_percent, double milkSolids_percent)
{
    const bool fits =
        milkFat_percent >= 1.0 && milkFat_percent <= 2.0 && milkSolids_percent >= 2.0 && milkSolids_percent <= sherbetMilk_percent;
    reasons.push_back(
        fits ? phrase("{0} % milk fat and {1} % milk solids lie within the 1 to 2 % and 2 to 5 % of US law for sherbet "
                      "(21 CFR 135.140).",
            Figure{milkFat_percent, 1}, Figure{milkSolids_percent, 1})
             : phrase("{0} % milk fat and {1} % milk solids: US law has 1 to 2 % and 2 to 5 % for what is sold as "
                      "sherbet (21 CFR 135.140).",
                 Figure{milkFat_percent, 1}, Figure{milkSolids_percent, 1}));
}

TextureClass classOfChurned(const Mix& mix, const Comparing& test, std::vector<Sentence>* reasons)
{
    const double fat_percent = percent(shareOf(mix[Constituent::Fat], mix));
    const double milkFat_percent = percent(shareOf(mix.milkFat, mix));
    const double milk_percent = percent(shareOf(mix.milkSolidsNotFat, mix));
    const double milkSolids_percent = milkFat_percent + milk_percent;

    if (!test.isFrom(milkSolids_percent, withoutMilk_percent, phrase("{0} % milk solids: {1} % or more (21 CFR 135.140).").pattern,
            phrase("{0} % milk solids: less than {1} %, which counts as without milk (21 CFR 135.140).").pattern))
        return test.isFrom(fat_percent, waterIceFat_percent,
                   phrase("{0} % fat: {1} % or more, too much for a water ice (German guidelines for ices).").pattern,
                   phrase("{0} % fat: less than {1} %, as a water ice has (German guidelines for ices).").pattern)
                   ? TextureClass::CreamyIce
                   : TextureClass::Sorbet;

    if (test.isFrom(fat_percent, iceCreamFat_percent, phrase("{0} % fat: {1} % or more, as ice cream has (UK trade code).").pattern,
            phrase("{0} % fat: less than the {1} % of ice cream (UK trade code).").pattern)) {
        const bool isOfMilk = milkFat_percent >= iceCreamFat_percent
                              || test.isFrom(milk_percent, iceCreamMilk_percent,
                                  phrase("{0} % milk solids-not-fat: {1} % or more, for the 2.5 % milk protein of ice cream (UK "
                                         "trade code).")
                                      .pattern,
                                  phrase("{0} % milk solids-not-fat: less than {1} %, and the fat is not milk fat (UK "
                                         "trade code).")
                                      .pattern);
        if (!isOfMilk)
            return TextureClass::CreamyIce;
        return test.isFrom(percent(shareOf(mix.yolkSolids, mix)), custardYolk_percent,
                   phrase("{0} % yolk solids: {1} % or more, as frozen custard has (21 CFR 135.110).").pattern,
                   phrase("{0} % yolk solids: less than the {1} % of frozen custard (21 CFR 135.110).").pattern)
                   ? TextureClass::FrozenCustard
                   : TextureClass::IceCream;
    }

    const bool hasFatOfMilkIce = test.isFrom(milkFat_percent, milkIceFat_percent,
        phrase("{0} % milk fat: {1} % or more, as milk ice has (UK trade code).").pattern,
        phrase("{0} % milk fat: less than the {1} % of milk ice (UK trade code).").pattern);
    if (hasFatOfMilkIce
        && test.isFrom(milk_percent, milkIceMilk_percent,
            phrase("{0} % milk solids-not-fat: {1} % or more, as milk ice has (UK trade code).").pattern,
            phrase("{0} % milk solids-not-fat: less than the {1} % of milk ice (UK trade code).").pattern))
        return TextureClass::MilkIce;
    if (milkFat_percent > sherbetMilkFat_percent) {
        test.note(phrase("{0} % milk fat: more than the {1} % of sherbet (McGee, On Food and Cooking).", Figure{milkFat_percent, 1},
            Figure{sherbetMilkFat_percent, 0}));
        return TextureClass::MilkIce;
    }
    const bool hasLittleMilk = milkSolids_percent <= sherbetMilk_percent;
    if (hasLittleMilk)
        test.note(phrase("{0} % milk solids: within the {1} % of sherbet (21 CFR 135.140).", Figure{milkSolids_percent, 1},
            Figure{sherbetMilk_percent, 0}));
    else if (!test.isFrom(percent(acidityAsLactic(mix)), sherbetAcidity_percent,
                 phrase("Acid fruit or sour milk: {0} % acidity as lactic acid, {1} % or more, as a fruit sherbet has (21 CFR "
                        "135.140).")
                     .pattern,
                 phrase("{0} % acidity as lactic acid: less than the {1} % of a fruit sherbet, and more milk than a sherbet has "
                        "(21 CFR 135.140).")
                     .pattern))
        return TextureClass::MilkIce;
    if (reasons)
        addSherbetLaw(*reasons, milkFat_percent, milkSolids_percent);
    return TextureClass::Sherbet;
}

}  // namespace

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
    case TextureClass::ScrapedIce:
        return "scraped ice";
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
        return "creamy non-dairy ice";
    case TextureClass::Semifreddo:
        return "semifreddo";
    case TextureClass::WillNotFreeze:
        return "will not freeze";
    case TextureClass::Unfrozen:
        return "not frozen";
    }
    return {};
}

MassFraction acidityAsLactic(const Mix& mix)
{
    // By what a gram neutralises: citric acid 192.12 g/mol with three acid groups, lactic acid 90.08 g/mol with one.
    constexpr double lacticPerCitric = 90.08 / (192.12 / 3.0);
    return shareOf(mix[Constituent::Acid], mix) * lacticPerCitric;
}

TextureClass classOf(const Mix& mix, Process process, std::vector<Sentence>* reasons)
{
    const Comparing test(reasons);
    if (process == Process::Unfrozen) {
        test.note(phrase("The recipe says that this part is not frozen."));
        return TextureClass::Unfrozen;
    }
    if (process == Process::Folded) {
        test.note(phrase("Folded with air and frozen without stirring: a semifreddo (common practice)."));
        return TextureClass::Semifreddo;
    }
    const double solids_percent = percent(shareOf(totalSolids(mix), mix));
    if (mix[Constituent::Ethanol].value <= 0.0
        && !test.isFrom(solids_percent, plainIceSolids_percent, phrase("{0} % solids: {1} % or more, so not plain ice.").pattern,
            phrase("{0} % solids: less than {1} %, so plain ice.").pattern))
        return TextureClass::Ice;
    if (process == Process::Still) {
        test.note(phrase("Frozen without stirring: it sets in one piece."));
        return TextureClass::StillFrozenIce;
    }
    if (process == Process::Churned) {
        test.note(phrase("Churned: its composition decides the name."));
        return classOfChurned(mix, test, reasons);
    }
    test.note(phrase("Scraped as it freezes: loose crystals."));
    return test.isFrom(percent(shareOf(mix[Constituent::Fat], mix)), granitaFat_percent,
               phrase("{0} % fat: {1} % or more, so no longer a granita.").pattern,
               phrase("{0} % fat: less than {1} %, so a granita.").pattern)
               ? TextureClass::ScrapedIce
               : TextureClass::Granita;
}

std::vector<Sentence> reasonsForClass(const Texture& texture)
{
    std::vector<Sentence> reasons;
    if (texture.textureClass == TextureClass::Nothing)
        return reasons;
    if (texture.willFreeze || texture.process == Process::Unfrozen) {
        classOf(texture.mix, texture.process, &reasons);
        return reasons;
    }
    const double fatFree = 1.0 - shareOf(texture.mix[Constituent::Fat], texture.mix).value;
    reasons.push_back(phrase(
        "In the freezer, {0} % of the fat-free part is ice. From {1} % it counts as frozen, from {2} % as slush (estimates, ± 5 "
        "percentage points).",
        Figure{100.0 * texture.iceInFreezer.value / fatFree, 0}, Figure{percent(leastIceToFreeze), 0},
        Figure{percent(leastIceOfSlush), 0}));
    return reasons;
}

}  // namespace firn
