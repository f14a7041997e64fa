#include "texture/texture.h"

#include "freezing/curve_working.h"
#include "texture/firmness.h"
#include "texture/spirit.h"
#include "texture/texture_class.h"

#include <algorithm>
#include <string>

namespace firn {

namespace {

// Ice in the fat-free part when it is as cold as the freezer. 0.40 follows from the scoopable window; 0.15 and 0.30 are judgement, +-0.05.
constexpr MassFraction setsFirmly{0.40};
constexpr MassFraction holds{0.30};
constexpr MassFraction isSlush{0.15};

Figure tenths(double value) { return {value, 1}; }
Figure whole(double value) { return {value, 0}; }

/// Temperatures as people set them: whole degrees without decimals.
Figure temperature(Celsius t) { return {t.value, t.value == static_cast<int>(t.value) ? 0 : 1}; }

std::string nameText(TextureClass c) { return std::string(nameOf(c)); }

MassFraction ofFatFree(MassFraction ice, const Mix& mix)
{
    const double fatFree = 1.0 - shareOf(mix[Constituent::Fat], mix).value;
    return {fatFree > 0.0 ? ice.value / fatFree : 0.0};
}

bool isEatenCoarse(TextureClass c)
{
    return c == TextureClass::Granita || c == TextureClass::StillFrozenIce || c == TextureClass::Ice;
}

MassFraction given(MassFraction ice, Working* working)
{
    if (working)
        working->found(iceWantedSymbol(ice), Number{percent(ice), "%"}, Source::ServingWindow).uncertainty =
            phrase("Coarse ices are eaten drier than a scoop: judgement to 3 points of ice.");
    return ice;
}

MassFraction leastIce(TextureClass textureClass, Softening softening, Working* working)
{
    // Coarse ices are eaten drier than a scoop, and folded ones softer: judgement.
    const auto softest = softestToServe(textureClass);
    return softest ? iceWhere(*softest, softening, working) : given({0.48}, working);
}

MassFraction mostIce(TextureClass textureClass, Softening softening, Working* working)
{
    return isEatenCoarse(textureClass) ? given({0.62}, working) : iceWhere(Firmness::Firm, softening, working);
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

/// Temperatures at which it is best eaten, no colder than the freezer that it comes from; none if the freezer is too warm for that.
std::optional<TemperatureRange> servingWindow(
    const FreezingCurve& curve, TextureClass textureClass, Softening softening, Celsius freezerAt, Workings* workings)
{
    Working ofWarmest;
    const auto warmest = curve.temperatureWithIce(
        leastIce(textureClass, softening, workings ? &ofWarmest : nullptr), workings ? &ofWarmest : nullptr);
    if (!warmest || *warmest < freezerAt)
        return std::nullopt;
    Working* const ofColdest = workings ? &workings->of("texture.serving_window_c.coldest") : nullptr;
    const auto withMostIce = curve.temperatureWithIce(mostIce(textureClass, softening, ofColdest), ofColdest);
    if (workings)
        workings->of("texture.serving_window_c.warmest").add(ofWarmest.steps());
    return TemperatureRange{*warmest, coldestToServe(withMostIce, freezerAt, ofColdest)};
}

Sentence processReason(Process process)
{
    // Crystal sizes: churned after Cook and Hartel 2010 (mean 35 µm, 45 from a domestic machine from memory); the others common practice.
    switch (process) {
    case Process::Still:
        return phrase("Frozen without stirring: crystals of several millimetres that grow together.");
    case Process::Scraped:
        return phrase("Scraped while it freezes: loose crystals of about a millimetre, coarse and dry.");
    case Process::Churned:
        return phrase("Churned: crystals of about 0.04 mm, too small for the tongue to feel.");
    case Process::Folded:
        return phrase("Folded with air and frozen still: small crystals between bubbles.");
    }
    return {};
}

void addReasons(Texture& result, const Mix& mix, const FreezingCurve& curve, const TextureInput& input)
{
    auto& reasons = result.reasons;
    const double water = shareOf(mix[Constituent::Water], mix).value;
    if (result.iceAtServing.value > 0.0)
        reasons.push_back(phrase("{0} % of the mix is ice at {1} °C ({2} % of its water): {3}.",
            whole(percent(result.iceAtServing)), temperature(input.serveAt), whole(100.0 * result.iceAtServing.value / water),
            std::string(afterIs(result.firmness))));
    else if (curve.freezingPoint)
        reasons.push_back(phrase("No ice at {0} °C: the mix begins to freeze at {1} °C.", temperature(input.serveAt),
            tenths(curve.freezingPoint->temperature.value)));
    if (!result.willFreeze)
        return;
    if (result.textureClass != TextureClass::Ice)
        reasons.push_back(processReason(input.process));

    const double sugars_percent = percent(shareOf(sugars(mix), mix));
    for (const TradeBand& band : tradeBands()) {
        if (band.textureClass == result.textureClass)
            reasons.push_back(phrase("{0} % sugars; {1} usually has {2} to {3} % ({4}).", tenths(sugars_percent),
                nameText(band.textureClass), whole(percent(band.low)), whole(percent(band.high)), std::string(band.source)));
    }
    if (const double fat = percent(shareOf(mix[Constituent::Fat], mix)); fat >= 3.0)
        reasons.push_back(phrase("{0} % fat rounds the mix and slows melting.", tenths(fat)));
    if (input.overrun_percent > 0.0)
        reasons.push_back(phrase("{0} % of air makes it lighter and softer.", whole(input.overrun_percent)));
    if (mix[Constituent::Hydrocolloid].value > 0.0)
        reasons.push_back(phrase("Stabiliser slows the growth of crystals in store."));
}

Sentence spiritFault(const SpiritExcess& excess, Celsius freezer)
{
    if (excess.spiritToRemove)
        return phrase("Too much alcohol to set at {0} °C: take out {1} mL of a spirit of 40 % vol, or add {2} g of water.",
            temperature(freezer), whole(excess.spiritToRemove->value), whole(excess.waterToAdd.value));
    return phrase("Too strong to set at {0} °C: add {1} g of water, or leave out part of the alcohol and the sugar.",
        temperature(freezer), whole(excess.waterToAdd.value));
}

void addFreezingFaults(Texture& result, const Mix& mix, const TextureInput& input)
{
    const MassFraction ice = ofFatFree(result.iceInFreezer, mix);
    if (ice >= setsFirmly)
        return;
    if (result.iceInFreezer.value <= 0.0)
        result.faults.push_back(phrase("Will not freeze at {0} °C: no ice forms.", temperature(input.freezerAt)));
    else if (ice < holds)
        result.faults.push_back(phrase("Will not freeze at {0} °C: only {1} % of the mix turns to ice.",
            temperature(input.freezerAt), tenths(percent(result.iceInFreezer))));
    else
        result.faults.push_back(
            phrase("Stays soft in a freezer at {0} °C: it will not scrape or hold a shape.", temperature(input.freezerAt)));
    result.spiritExcess = spiritExcess(mix, input.freezerAt, setsFirmly);
    if (result.spiritExcess)
        result.faults.push_back(spiritFault(*result.spiritExcess, input.freezerAt));
    else
        result.faults.push_back(phrase("Less sugar or more water makes it freeze harder, and so does a colder freezer."));
}

void addServingFaults(Texture& result, const Mix& mix, const TextureInput& input)
{
    if (input.serveAt < input.freezerAt)
        result.faults.push_back(
            phrase("Served colder than the freezer is: set the freezer to {0} °C or colder.", temperature(input.serveAt)));
    if (const auto& window = result.servingWindow) {
        // Temperatures are set to half degrees at best; that near the window is in it.
        constexpr KelvinDifference slack{0.5};
        if (input.serveAt > window->warmest + slack)
            result.faults.push_back(phrase("At {0} °C it is softer than it should be: serve it at {1} to {2} °C.",
                temperature(input.serveAt), whole(window->coldest.value), whole(window->warmest.value)));
        else if (input.serveAt < window->coldest - slack && input.serveAt >= input.freezerAt)
            result.faults.push_back(
                phrase("At {0} °C it is harder than it should be: let it warm to {1} to {2} °C, or give it more sugar.",
                    temperature(input.serveAt), whole(window->coldest.value), whole(window->warmest.value)));
    }
    if (result.textureClass == TextureClass::Ice)
        result.faults.push_back(phrase("Plain ice sets as a hard block: sugar, alcohol or salt keep part of it liquid."));

    // 9.1 to 9.6 g lactose per 100 g water: Hyde and Rothwell 1973 and a rule of thumb on milk solids say the same.
    const double water_g = mix[Constituent::Water].value;
    const double lactose_per100gWater = water_g > 0.0 ? 100.0 * mix[Constituent::Lactose].value / water_g : 0.0;
    if (lactose_per100gWater > 10.0)
        result.faults.push_back(
            phrase("Sandy if stored for days: {0} g lactose in 100 g water, where crystals form from about 9. Use less milk "
                   "powder.",
                tenths(lactose_per100gWater)));
    if (result.textureClass == TextureClass::StillFrozenIce)
        result.faults.push_back(phrase("Hard to bite: scrape it as it freezes for a granita, or churn it."));
}

}  // namespace

std::optional<Firmness> softestToServe(TextureClass textureClass)
{
    if (isEatenCoarse(textureClass))
        return std::nullopt;
    return textureClass == TextureClass::Semifreddo ? Firmness::Soft : Firmness::Scoopable;
}

Texture texture(const Mix& mix, const FreezingCurve& curve, const TextureInput& input, Workings* workings)
{
    Texture result;
    result.process = input.process;
    // The air of a folded dessert sits in a foam that holds itself; only churned air softens.
    const double softeningAir_percent = input.process == Process::Churned ? input.overrun_percent : 0.0;
    const Softening softening{shareOf(mix[Constituent::Fat], mix), softeningAir_percent};
    result.regions = firmnessRegions(curve, softening);
    const auto workingOf = [workings](const char* figure) { return workings ? &workings->of(figure) : nullptr; };
    result.iceAtServing = curve.iceAt(input.serveAt, workingOf("texture.ice_percent_at_serving"));
    result.iceInFreezer = curve.iceAt(input.freezerAt, workingOf("texture.ice_percent_in_freezer"));
    if (!curve.freezingPoint) {
        if (!mix.isEmpty())
            result.reasons.push_back(phrase("There is no water to freeze."));
        return result;
    }
    result.firmness = firmnessOf(result.iceAtServing, softening);
    const MassFraction ice = ofFatFree(result.iceInFreezer, mix);
    result.willFreeze = ice >= holds;
    if (result.willFreeze) {
        result.textureClass = classOf(mix, input.process);
        if (result.textureClass != TextureClass::Ice && result.textureClass != TextureClass::StillFrozenIce)
            result.servingWindow = servingWindow(curve, result.textureClass, softening, input.freezerAt, workings);
    } else {
        result.textureClass = ice >= isSlush ? TextureClass::Slush : TextureClass::WillNotFreeze;
    }
    addReasons(result, mix, curve, input);
    addFreezingFaults(result, mix, input);
    if (result.willFreeze)
        addServingFaults(result, mix, input);
    return result;
}

}  // namespace firn
