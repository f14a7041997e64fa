#include "mix/mix.h"

#include <algorithm>

namespace firn {

namespace {

Grams sumOf(const Amounts& amounts, RibbonPart part)
{
    Grams sum;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        if (const auto c = static_cast<Constituent>(i); ribbonPartOf(c) == part)
            sum += amounts[c];
    }
    return sum;
}

}  // namespace

RibbonPart ribbonPartOf(Constituent constituent)
{
    using C = Constituent;
    switch (constituent) {
    case C::Water:
        return RibbonPart::Water;
    case C::Sucrose:
    case C::Glucose:
    case C::Fructose:
    case C::Galactose:
    case C::Lactose:
    case C::Maltose:
    case C::Trehalose:
        return RibbonPart::Sugars;
    case C::Fat:
        return RibbonPart::Fat;
    case C::Protein:
        return RibbonPart::Protein;
    case C::Ethanol:
        return RibbonPart::Alcohol;
    case C::Salt:
    case C::Acid:
    case C::Minerals:
        return RibbonPart::SaltAndAcid;
    case C::Oligosaccharides:
    case C::Dextrins:
    case C::Sorbitol:
    case C::Xylitol:
    case C::Erythritol:
    case C::Maltitol:
    case C::Glycerol:
    case C::Starch:
    case C::Fibre:
    case C::Hydrocolloid:
    case C::Other:
        break;
    }
    return RibbonPart::FibreAndOther;
}

void Mix::add(const Composition& composition, Grams mass)
{
    const double total_g = composition.per100g.total().value;
    if (total_g <= 0.0)
        return;
    const double factor = mass.value / total_g;
    amounts.add(composition.per100g, factor);
    milkFat += composition.milkFat * factor;
    milkSolidsNotFat += composition.milkSolidsNotFat * factor;
    yolkSolids += composition.yolkSolids * factor;
}

void Mix::add(const Mix& other)
{
    amounts.add(other.amounts, 1.0);
    milkFat += other.milkFat;
    milkSolidsNotFat += other.milkSolidsNotFat;
    yolkSolids += other.yolkSolids;
}

Grams sugars(const Mix& mix) { return sumOf(mix.amounts, RibbonPart::Sugars); }

Grams totalSolids(const Mix& mix) { return mix.mass() - mix[Constituent::Water] - mix[Constituent::Ethanol]; }

MassFraction shareOf(Grams part, const Mix& mix) { return {mix.isEmpty() ? 0.0 : part / mix.mass()}; }

Ribbon ribbonOf(const Amounts& amounts)
{
    Ribbon ribbon{};
    const Grams total = amounts.total();
    if (total.value <= 0.0)
        return ribbon;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        const auto c = static_cast<Constituent>(i);
        ribbon[static_cast<std::size_t>(ribbonPartOf(c))] += MassFraction{amounts[c] / total};
    }
    return ribbon;
}

}  // namespace firn
