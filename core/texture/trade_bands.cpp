#include "texture/trade_bands.h"

#include <algorithm>
#include <array>
#include <string>

namespace firn {

namespace {

Figure tenths(MassFraction share) { return {percent(share), 1}; }
Figure whole(MassFraction share) { return {percent(share), 0}; }

std::string nameText(TextureClass c) { return std::string(nameOf(c)); }

/// Lactose, and the galactose that souring makes of it, as far as there are milk solids for it to be part of.
Grams milkSugar(const Mix& mix) { return std::min(mix[Constituent::Lactose] + mix[Constituent::Galactose], mix.milkSolidsNotFat); }

Sentence countOf(const TradeBand& band, const CountedSugars& counted)
{
    const std::string kind = nameText(band.textureClass), source(band.source);
    const bool leavesOutMilkSugar = band.counts == SugarCount::WithoutMilkSugar && counted.milkSugar.value > 0.0;
    if (counted.asSoftAsSugar.value > 0.0 && leavesOutMilkSugar)
        return phrase("{0} % added sugars, not counting {1} % milk sugar, and alcohol that softens like {2} % more: {3} % in all. "
                      "Usual for {4}: {5} to {6} % ({7}).",
            tenths(counted.sugars), tenths(counted.milkSugar), tenths(counted.asSoftAsSugar), tenths(counted.total()), kind,
            whole(band.low), whole(band.high), source);
    if (counted.asSoftAsSugar.value > 0.0)
        return phrase("{0} % sugars, and alcohol that softens like {1} % more: {2} % in all. Usual for {3}: {4} to {5} % ({6}).",
            tenths(counted.sugars), tenths(counted.asSoftAsSugar), tenths(counted.total()), kind, whole(band.low), whole(band.high),
            source);
    if (leavesOutMilkSugar)
        return phrase("{0} % added sugars, not counting {1} % milk sugar. Usual for {2}: {3} to {4} % ({5}).",
            tenths(counted.sugars), tenths(counted.milkSugar), kind, whole(band.low), whole(band.high), source);
    return phrase("{0} % sugars. Usual for {1}: {2} to {3} % ({4}).", tenths(counted.sugars), kind, whole(band.low),
        whole(band.high), source);
}

/// Granita and sorbet are the same mix in two strengths; between their bands lies what is neither.
Sentence beyondOwnBand(const TradeBand& band, MassFraction counted)
{
    const TradeBand& granita = *tradeBandOf(TextureClass::Granita);
    const TradeBand& sorbet = *tradeBandOf(TextureClass::Sorbet);
    if (&band != &granita && &band != &sorbet)
        return counted < band.low ? phrase("This mix is {0} percentage points below that.", tenths(band.low - counted))
                                  : phrase("This mix is {0} percentage points above that.", tenths(counted - band.high));
    if (counted > granita.high && counted < sorbet.low)
        return phrase(
            "This mix is between granita ({0} to {1} %) and sorbet ({2} to {3} %): softer than a granita, firmer than a sorbet.",
            whole(granita.low), whole(granita.high), whole(sorbet.low), whole(sorbet.high));
    const TradeBand& other = &band == &granita ? sorbet : granita;
    if (other.low <= counted && counted <= other.high)
        return phrase("That is usual for {0} ({1} to {2} %).", nameText(other.textureClass), whole(other.low), whole(other.high));
    for (const BandOfSource& each : bandsOfSources()) {
        if (each.textureClass == band.textureClass && each.low.value > 0.0 && each.low <= counted && counted <= each.high)
            return phrase("That agrees with {0}: {1} to {2} %.", std::string(each.source), tenths(each.low), tenths(each.high));
    }
    return counted < band.low ? phrase("This mix is {0} percentage points below that.", tenths(band.low - counted))
                              : phrase("This mix is {0} percentage points above that.", tenths(counted - band.high));
}

}  // namespace

const std::vector<TradeBand>& tradeBands()
{
    using Count = SugarCount;
    static const std::vector<TradeBand> bands{
        {TextureClass::IceCream, Count::WithoutMilkSugar, {0.13}, {0.20},
            "McGee, On Food and Cooking: 13 to 16 % premium, 15 to 20 % hand-made"},
        {TextureClass::Granita, Count::AllSugars, {0.20}, {0.26}, "unverified"},
        {TextureClass::Semifreddo, Count::WithoutMilkSugar, {0.15}, {0.25}, "unverified"},
        {TextureClass::Sherbet, Count::WithoutMilkSugar, {0.26}, {0.35}, "McGee, On Food and Cooking"},
        {TextureClass::Sorbet, Count::AllSugars, {0.30}, {0.36}, "unverified"},
    };
    return bands;
}

const TradeBand* tradeBandOf(TextureClass textureClass)
{
    const auto band = std::ranges::find(tradeBands(), textureClass, &TradeBand::textureClass);
    return band == tradeBands().end() ? nullptr : &*band;
}

std::span<const BandOfSource> bandsOfSources()
{
    // °Bé on the scale of modulus 145, brought to % by mass (NBS Circular 440): 8 °Bé 14.4 %, 12 °Bé 21.6 %, 14 °Bé 25.3 %, 16 °Bé 28.9 %, 18 °Bé 32.6 %.
    static constexpr std::array bands{
        BandOfSource{TextureClass::Granita, {0.0}, {0.253}, "Escoffier, no. 4913: at most 14 °Bé"},
        BandOfSource{TextureClass::Granita, {0.144}, {0.216}, "a baking school's text: 8 to 12 °Bé"},
        BandOfSource{TextureClass::Sorbet, {0.30}, {0.325}, "a professional baking text: 30 to 32.5 °Bx"},
        BandOfSource{TextureClass::Sorbet, {0.289}, {0.326}, "that text, by density: 16 to 18 °Bé"},
    };
    return bands;
}

CountedSugars countedSugars(const Mix& mix, SugarCount counts)
{
    // A gram of alcohol costs about as much ice as 2.3 g of sugar: derived from the product of the activities of sucrose and ethanol between
    // 10 and 36 % sugar at -18 °C, ±0.3 g. Below half a per cent of alcohol it is not worth a word.
    constexpr double sugarForAlcohol = 2.3;
    constexpr MassFraction alcoholThatMatters{0.005};
    CountedSugars counted;
    counted.sugars = shareOf(sugars(mix), mix);
    if (counts == SugarCount::WithoutMilkSugar) {
        counted.milkSugar = shareOf(milkSugar(mix), mix);
        counted.sugars = counted.sugars - counted.milkSugar;
    }
    if (const MassFraction alcohol = shareOf(mix[Constituent::Ethanol], mix); alcohol >= alcoholThatMatters)
        counted.asSoftAsSugar = alcohol * sugarForAlcohol;
    return counted;
}

bool isIn(const TradeBand& band, const Mix& mix)
{
    // Sums of masses carry rounding errors, and a mix of 26 % is in a band to 26 %.
    constexpr MassFraction rounding{1e-9};
    const MassFraction counted = countedSugars(mix, band.counts).total();
    return counted + rounding >= band.low && counted <= band.high + rounding;
}

std::vector<Sentence> standingInBand(const Mix& mix, TextureClass textureClass)
{
    const TradeBand* band = tradeBandOf(textureClass);
    if (!band)
        return {};
    const CountedSugars counted = countedSugars(mix, band->counts);
    std::vector<Sentence> sentences{countOf(*band, counted)};
    if (!isIn(*band, mix))
        sentences.push_back(beyondOwnBand(*band, counted.total()));
    return sentences;
}

}  // namespace firn
