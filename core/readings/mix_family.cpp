#include "readings/mix_family.h"

#include <array>

namespace firn {

namespace {

/// Lactose is not among them: it stays with the milk.
constexpr std::array addedSugars{Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose, Constituent::Galactose,
    Constituent::Maltose, Constituent::Trehalose};

Mix scaled(const Mix& mix, double factor)
{
    Mix result;
    result.amounts.add(mix.amounts, factor);
    result.milkFat = mix.milkFat * factor;
    result.milkSolidsNotFat = mix.milkSolidsNotFat * factor;
    result.yolkSolids = mix.yolkSolids * factor;
    return result;
}

Mix oneGramOf(Constituent constituent)
{
    Mix mix;
    mix.amounts[constituent] = {1.0};
    return mix;
}

Mix oneGram(const Mix& mix, Constituent otherwise)
{
    return mix.isEmpty() ? oneGramOf(otherwise) : scaled(mix, 1.0 / mix.mass().value);
}

}  // namespace

MixFamily::MixFamily(const Mix& background, Alcohol alcohol)
{
    Mix sugars;
    Mix rest = background;
    for (const Constituent kind : addedSugars) {
        sugars.amounts[kind] = background[kind];
        rest.amounts[kind] = {0.0};
    }
    if (alcohol == Alcohol::InQuestion)
        rest.amounts[Constituent::Ethanol] = {0.0};
    m_sugars = oneGram(sugars, Constituent::Sucrose);
    m_rest = oneGram(rest, Constituent::Water);
    m_lactoseInRest = m_rest[Constituent::Lactose].value;
}

Mix MixFamily::at(MassFraction sugar, MassFraction alcohol) const
{
    // Sugar s that may change and lactose l in each gram of the rest: S = s + l (1 - s - A).
    const double besideAlcohol = 1.0 - alcohol.value;
    const double changing = (sugar.value - m_lactoseInRest * besideAlcohol) / (1.0 - m_lactoseInRest);
    Mix mix = scaled(m_rest, besideAlcohol - changing);
    mix.amounts.add(m_sugars.amounts, changing);
    mix.amounts[Constituent::Ethanol] += Grams{alcohol.value};
    return mix;
}

MassFraction MixFamily::leastSugar(MassFraction alcohol) const { return {m_lactoseInRest * (1.0 - alcohol.value)}; }

MassFraction MixFamily::mostSugar(MassFraction alcohol) const
{
    constexpr double strongest = 0.84;
    const double besideAlcohol = 1.0 - alcohol.value;
    const double water = m_rest[Constituent::Water].value;
    // s = strongest (s + water (1 - A - s)), solved for s.
    const double changing = strongest * water * besideAlcohol / (1.0 - strongest + strongest * water);
    return {changing + m_lactoseInRest * (besideAlcohol - changing)};
}

}  // namespace firn
