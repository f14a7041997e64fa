#include "texture/sugar_ice_curve.h"

#include "texture/advice.h"
#include "texture/advising.h"
#include "texture/firmness.h"
#include "units/temperature.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace firn {

namespace {

constexpr double step = 0.01;
constexpr double mostSugars = 0.50;

/// The mix with so much of the sugars that a band counts, as a share of it; its water makes room.
Mix withSugars(const Mix& mix, SugarCount counts, MassFraction wanted)
{
    const MassFraction now = countedSugars(mix, counts).sugars;
    const Grams more = mix.mass() * (wanted - now).value;
    Mix result = mix;
    if (now.value <= 0.0) {
        result.amounts[Constituent::Sucrose] += more;
    } else {
        // What is left out of the count is milk sugar: lactose and galactose stay.
        const bool isOfMilk = counts == SugarCount::WithoutMilkSugar;
        Grams changing;
        const auto changes = [&](Constituent c) { return !isOfMilk || (c != Constituent::Lactose && c != Constituent::Galactose); };
        for (const Constituent c : sugarKinds) {
            if (changes(c))
                changing += mix[c];
        }
        for (const Constituent c : sugarKinds) {
            if (changes(c) && changing.value > 0.0)
                result.amounts[c] += more * (mix[c] / changing);
        }
        if (changing.value <= 0.0)
            result.amounts[Constituent::Sucrose] += more;
    }
    result.amounts[Constituent::Water] += more * -1.0;
    return result;
}

/// A frozen custard is an ice cream with yolk, which McGee's table calls French: it has that band.
TextureClass kindWithBand(TextureClass own) { return own == TextureClass::FrozenCustard ? TextureClass::IceCream : own; }

std::vector<TextureClass> kindsBeside(TextureClass own)
{
    if (own == TextureClass::Granita || own == TextureClass::Sorbet || !tradeBandOf(own))
        return {TextureClass::Granita, TextureClass::Sorbet};
    return {own};
}

}  // namespace

SugarIceCurve sugarIceCurve(const Mix& mix, TextureClass textureClass, Celsius serveAt)
{
    SugarIceCurve curve;
    curve.serveAt = serveAt;
    const TextureClass ownKind = kindWithBand(textureClass);
    const TradeBand* own = tradeBandOf(ownKind);
    curve.counts = own ? own->counts : SugarCount::AllSugars;
    if (mix[Constituent::Water].value <= 0.0)
        return curve;
    const CountedSugars counted = countedSugars(mix, curve.counts);
    const MassFraction ofAlcohol = counted.asSoftAsSugar;
    curve.hasAlcohol = ofAlcohol.value > 0.0;
    curve.mix = {counted.total(), iceOnceAt(mix, serveAt)};
    const auto iceWith = [&](MassFraction total) { return iceOnceAt(withSugars(mix, curve.counts, total - ofAlcohol), serveAt); };
    const MassFraction mostThatFits = counted.total() + shareOf(mix[Constituent::Water], mix) * 0.99;
    for (double total = std::ceil(ofAlcohol.value / step) * step; total <= std::min(mostSugars, mostThatFits.value) + 1e-9;
         total += step)
        curve.points.push_back({{total}, iceWith({total})});

    for (const TextureClass kind : kindsBeside(ownKind)) {
        const TradeBand& band = *tradeBandOf(kind);
        const auto edges = servingEdges(kind, {shareOf(mix[Constituent::Fat], mix), 0.0});
        const auto best = softestToServe(kind);
        if (!edges || !best || curve.points.empty() || band.low < ofAlcohol || band.high > curve.points.back().sugars)
            continue;
        curve.bands.push_back({&band, iceWith(band.low), iceWith(band.high), edges->leastBest, edges->mostBest, *best});
        std::ranges::copy_if(bandsOfSources(), std::back_inserter(curve.ofSources),
            [kind](const BandOfSource& each) { return each.textureClass == kind; });
    }
    return curve;
}

std::vector<Sentence> saidBy(const SugarIceCurve& curve)
{
    const auto whole = [](MassFraction share) { return Figure{percent(share), 0}; };
    const auto tenths = [](MassFraction share) { return Figure{percent(share), 1}; };
    std::vector<Sentence> sentences;
    if (curve.points.empty())
        return sentences;
    sentences.push_back(curve.hasAlcohol ? phrase("This mix: {0} % sugars with its alcohol, {1} % ice at {2}.",
                            tenths(curve.mix.sugars), whole(curve.mix.ice), chosenTemperatureFigure(curve.serveAt))
                                         : phrase("This mix: {0} % sugars, {1} % ice at {2}.", tenths(curve.mix.sugars),
                                             whole(curve.mix.ice), chosenTemperatureFigure(curve.serveAt)));
    for (const BandOnCurve& each : curve.bands)
        sentences.push_back(phrase("Usual for {0}: {1} to {2} % ({3}). That leaves {4} to {5} % ice; best is {6} to {7} %.",
            std::string(nameOf(each.band->textureClass)), whole(each.band->low), whole(each.band->high),
            std::string(each.band->source), whole(each.iceAtHigh), whole(each.iceAtLow), whole(each.leastBest),
            whole(each.mostBest)));
    for (const BandOfSource& each : curve.ofSources)
        sentences.push_back(each.low.value > 0.0
                                ? phrase("{0}: {1} to {2} %.", std::string(each.source), tenths(each.low), tenths(each.high))
                                : phrase("{0}: up to {1} %.", std::string(each.source), tenths(each.high)));
    if (curve.hasAlcohol)
        sentences.push_back(phrase("Alcohol is counted as the sugar that would leave the same ice."));
    if (curve.counts == SugarCount::WithoutMilkSugar)
        sentences.push_back(phrase("Milk sugar is not counted, as the band leaves it out."));
    return sentences;
}

}  // namespace firn
