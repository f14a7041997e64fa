#include "texture/texture.h"

#include "texture/advising.h"
#include "texture/firmness.h"
#include "texture/serving.h"
#include "texture/spirit.h"
#include "texture/texture_class.h"
#include "texture/trade_bands.h"
#include "units/temperature.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace firn {

namespace {

Figure tenths(double value) { return {value, 1}; }
Figure whole(double value) { return {value, 0}; }

MassFraction ofFatFree(MassFraction ice, const Mix& mix)
{
    const double fatFree = 1.0 - shareOf(mix[Constituent::Fat], mix).value;
    return {fatFree > 0.0 ? ice.value / fatFree : 0.0};
}

Celsius coldestToServe(std::optional<Celsius> withMostIce, Celsius freezerAt, Working* working)
{
    const Celsius coldest = std::max(withMostIce.value_or(coldestOfCurve), freezerAt);
    if (working) {
        const Symbol wanted =
            withMostIce
                ? Symbol{"t", "", withMostIce->value, "°C", phrase("temperature with the most ice at which it is best eaten")}
                : Symbol{"t", "end", coldestOfCurve.value, "°C", phrase("end of the curve, with less ice than that")};
        const Symbol freezer{"t", "freezer", freezerAt.value, "°C", phrase("temperature of the freezer")};
        working->found({"t", "coldest", coldest.value, "°C", phrase("coldest at which it is best eaten")},
            function("max", {wanted, freezer}), Source::ServingWindow);
    }
    return coldest;
}

/// Temperatures at which it is best eaten, no colder than the freezer that it comes from; none if the freezer is too warm for that, or the window
/// too narrow to be met.
std::optional<TemperatureRange> servingWindow(
    const FreezingCurve& curve, TextureClass textureClass, Softening softening, Celsius freezerAt, Workings* workings)
{
    const auto softest = softestToServe(textureClass), hardest = hardestToServe(textureClass);
    if (!softest || !hardest)
        return std::nullopt;
    const auto warmest = curve.temperatureWithIce(iceWhere(*softest, softening));
    if (!warmest)
        return std::nullopt;
    const auto withMostIce = curve.temperatureWithIce(iceWhere(*hardest, softening));
    const Celsius coldest = coldestToServe(withMostIce, freezerAt, nullptr);
    if (*warmest - coldest < leastWindow)
        return std::nullopt;
    if (workings) {
        Working& ofWarmest = workings->of("texture.serving_window_c.warmest");
        curve.temperatureWithIce(iceWhere(*softest, softening, &ofWarmest), &ofWarmest);
        Working& ofColdest = workings->of("texture.serving_window_c.coldest");
        curve.temperatureWithIce(iceWhere(*hardest, softening, &ofColdest), &ofColdest);
        coldestToServe(withMostIce, freezerAt, &ofColdest);
    }
    return TemperatureRange{*warmest, coldest};
}

Sentence processReason(Process process)
{
    // Crystal sizes: churned after Cook and Hartel 2010 (mean 35 µm, 45 from a domestic machine from memory); the others common practice.
    switch (process) {
    case Process::Still:
        return phrase("Frozen without stirring: crystals of several millimetres that grow together.");
    case Process::Scraped:
        return phrase(
            "Scraped while it freezes: loose crystals of about a millimetre. Left to stand, they grow together. Break them up "
            "before serving.");
    case Process::Churned:
        return phrase("Churned: crystals of about 0.04 mm, too small for the tongue to feel.");
    case Process::Folded:
        return phrase("Folded with air and frozen without stirring: small crystals between the bubbles.");
    case Process::Unfrozen:
        break;
    }
    return {};
}

void addReasons(Texture& result, const Mix& mix, const FreezingCurve& curve, const TextureInput& input)
{
    auto& reasons = result.reasons;
    const double water = shareOf(mix[Constituent::Water], mix).value;
    if (result.iceAtServing.value > 0.0)
        reasons.push_back(phrase("{0} % of the mix is ice at {1} ({2} % of its water): {3}.", whole(percent(result.iceAtServing)),
            chosenTemperatureFigure(input.serveAt), whole(100.0 * result.iceAtServing.value / water),
            std::string(afterIs(result.firmness))));
    else if (curve.freezingPoint)
        reasons.push_back(phrase("No ice at {0}. The mix begins to freeze at {1}.", chosenTemperatureFigure(input.serveAt),
            temperatureFigure(curve.freezingPoint->temperature, 1)));
    if (!result.willFreeze)
        return;
    for (Sentence& each : standingInBand(mix, result.textureClass))
        reasons.push_back(std::move(each));
    if (result.textureClass != TextureClass::Ice)
        reasons.push_back(processReason(input.process));
    if (const double fat = percent(shareOf(mix[Constituent::Fat], mix)); fat >= 3.0)
        reasons.push_back(phrase("{0} % fat gives body and slows melting.", tenths(fat)));
    if (input.overrun_percent > 0.0)
        reasons.push_back(phrase("{0} % overrun: {1} % of the volume is air, which makes it lighter and softer.",
            whole(input.overrun_percent), whole(100.0 * input.overrun_percent / (100.0 + input.overrun_percent))));
    if (mix[Constituent::Hydrocolloid].value > 0.0)
        reasons.push_back(phrase("Stabiliser slows the growth of crystals in storage."));
}

/// What is wrong, then what to do about it.
void addFault(Texture& result, Sentence fault, std::vector<Advice> advice)
{
    result.faults.push_back(std::move(fault));
    for (Advice& each : advice) {
        result.faults.push_back(each.sentence);
        result.advice.push_back(std::move(each));
    }
}

void addFreezingFaults(Texture& result, const Mix& mix, const FreezingCurve& curve, const TextureInput& input)
{
    const MassFraction ice = ofFatFree(result.iceInFreezer, mix);
    if (ice >= setsFrom(input.process))
        return;
    const Figure freezer = chosenTemperatureFigure(input.freezerAt);
    if (result.iceInFreezer.value <= 0.0)
        result.faults.push_back(phrase("It will not freeze at {0}. No ice forms.", freezer));
    else if (ice < leastIceToFreeze)
        result.faults.push_back(phrase(
            "It will not freeze at {0}. Only {1} % of the mix turns to ice.", freezer, tenths(percent(result.iceInFreezer))));
    else
        result.faults.push_back(phrase("It stays soft in a freezer at {0}. It cannot be scraped and holds no shape.", freezer));
    result.spiritExcess = spiritExcess(mix, input.freezerAt, setsFrom(input.process));
    if (totalSolids(mix).value > 0.0 || mix[Constituent::Ethanol].value > 0.0)
        addFault(result, causeOfSoftness(mix), adviceToSet(mix, curve, input));
}

Sentence faultOfServing(const Texture& found, Celsius serveAt)
{
    const Figure at = chosenTemperatureFigure(serveAt);
    const bool isTooHard = found.served == Served::TooHard;
    if (iceFormOf(found.process) == IceForm::LooseCrystals)
        return isTooHard ? phrase("At {0} it is drier than it should be.", at)
                         : phrase("At {0} it is wetter than it should be.", at);
    return isTooHard ? phrase("At {0} it is harder than it should be.", at) : phrase("At {0} it is softer than it should be.", at);
}

/// How it is served. A mix in the band of its kind, at the temperature at which its kind is usually served, is what the trade serves: that is
/// better evidence than edges of firmness, most of which are judgement.
Served servedAs(const Texture& found, const Mix& mix, Softening softening, const TextureInput& input)
{
    const auto edges = servingEdges(found.textureClass, softening);
    if (!edges)
        return Served::Unjudged;
    constexpr double settingOfThermostat_k = 0.5;
    const TradeBand* band = tradeBandOf(found.textureClass);
    const bool isAsUsual = std::abs((input.serveAt - usualServing(input.process)).value) <= settingOfThermostat_k;
    if (band && isAsUsual && isIn(*band, mix))
        return Served::Well;
    if (found.iceAtServing < edges->leastServed)
        return Served::TooSoft;
    return found.iceAtServing > edges->mostServed ? Served::TooHard : Served::Well;
}

void addServingFaults(Texture& result, const Mix& mix, const TextureInput& input)
{
    if (input.serveAt < input.freezerAt)
        addFault(result, phrase("The serving temperature is colder than the freezer."), {adviceToChill(input.serveAt)});
    else if (result.served == Served::TooSoft || result.served == Served::TooHard)
        addFault(result, faultOfServing(result, input.serveAt), adviceToServe(mix, result, input));
    if (result.textureClass == TextureClass::Ice && input.process != Process::Scraped)
        result.faults.push_back(phrase("Plain ice sets as a hard block. Sugar, alcohol or salt would keep part of it liquid."));

    // 9.1 to 9.6 g lactose per 100 g water: Hyde and Rothwell 1973 and a rule of thumb on milk solids say the same.
    const double water_g = mix[Constituent::Water].value;
    const double lactose_per100gWater = water_g > 0.0 ? 100.0 * mix[Constituent::Lactose].value / water_g : 0.0;
    if (lactose_per100gWater > 10.0)
        result.faults.push_back(phrase(
            "It may turn sandy within days. It has {0} g of lactose in 100 g of water, and lactose crystallises from about 9 g. "
            "Milk powder and whey bring most of it.",
            tenths(lactose_per100gWater)));
}

}  // namespace

std::optional<Firmness> softestToServe(TextureClass textureClass)
{
    if (textureClass == TextureClass::Granita || textureClass == TextureClass::ScrapedIce)
        return Firmness::Loose;
    if (textureClass == TextureClass::Semifreddo)
        return Firmness::Soft;
    return servingEdges(textureClass, {}) ? std::optional(Firmness::Scoopable) : std::nullopt;
}

std::optional<Firmness> hardestToServe(TextureClass textureClass)
{
    const auto softest = softestToServe(textureClass);
    if (!softest)
        return std::nullopt;
    return *softest == Firmness::Loose ? Firmness::Dry : Firmness::Firm;
}

Texture texture(const Mix& mix, const FreezingCurve& curve, const TextureInput& input, Workings* workings)
{
    Texture result;
    result.mix = mix;
    result.process = input.process;
    const bool isUnfrozen = input.process == Process::Unfrozen;
    const Softening softening = softeningOf(mix, input);
    const IceForm form = iceFormOf(input.process);
    if (!isUnfrozen)
        result.regions = firmnessRegions(curve, softening, form);
    const auto workingOf = [workings](const char* figure) { return workings ? &workings->of(figure) : nullptr; };
    result.iceAtServing = curve.iceAt(input.serveAt, workingOf("texture.ice_percent_at_serving"));
    result.iceInFreezer = curve.iceAt(input.freezerAt, workingOf("texture.ice_percent_in_freezer"));
    if (isUnfrozen) {
        if (!mix.isEmpty())
            result.textureClass = TextureClass::Unfrozen;
        return result;
    }
    if (!curve.freezingPoint) {
        if (!mix.isEmpty())
            result.reasons.push_back(phrase("There is no water to freeze."));
        return result;
    }
    result.firmness = firmnessOf(result.iceAtServing, softening, form);
    const MassFraction ice = ofFatFree(result.iceInFreezer, mix);
    result.willFreeze = ice >= leastIceToFreeze;
    if (result.willFreeze) {
        result.textureClass = classOf(mix, input.process);
        result.servingWindow = servingWindow(curve, result.textureClass, softening, input.freezerAt, workings);
        result.served = servedAs(result, mix, softening, input);
    } else {
        result.textureClass = ice >= leastIceOfSlush ? TextureClass::Slush : TextureClass::WillNotFreeze;
    }
    addReasons(result, mix, curve, input);
    addFreezingFaults(result, mix, curve, input);
    if (result.willFreeze)
        addServingFaults(result, mix, input);
    return result;
}

}  // namespace firn
