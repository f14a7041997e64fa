#include "texture/advising.h"

#include "freezing/textbook.h"
#include "texture/ice_wanted.h"
#include "texture/trade_bands.h"
#include "units/temperature.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace firn {

namespace {

using Promise = Advice::Promise;

/// As a kitchen scale shows it: whole grams, tenths below ten; upwards, so that it does what it is for.
Grams weighedUp(Grams mass)
{
    constexpr double largeFrom_g = 10.0, tenths = 10.0;
    return {mass.value < largeFrom_g ? std::ceil(tenths * mass.value) / tenths : std::ceil(mass.value)};
}

Figure gramsFigure(Grams mass) { return {std::abs(mass.value), mass.value == std::round(mass.value) ? 0 : 1}; }

/// A mix, the kind that it is to stay, and the band that it is not to leave.
class Trial {
public:
    Trial(const Mix& mix, const TextureInput& input)
        : m_mix(mix)
        , m_input(input)
        , m_kind(classOf(mix, input.process))
        , m_band(tradeBandOf(m_kind))
        , m_isInBand(m_band && isIn(*m_band, mix))
    {
    }

    TextureClass kind() const { return m_kind; }
    const TradeBand* band() const { return m_band; }

    bool staysItsKind(const Mix& mix) const
    {
        return classOf(mix, m_input.process) == m_kind && (!m_isInBand || isIn(*m_band, mix));
    }

    bool sets(const Mix& mix, Celsius freezer) const { return hasIce(mix, {freezer, setsAt(), true}); }

    bool servesWell(const Mix& mix, Celsius serveAt) const
    {
        const auto edges = servingEdges(m_kind, softeningOf(mix, m_input));
        const MassFraction ice = iceOnceAt(mix, serveAt);
        return edges && ice >= edges->leastServed && ice <= edges->mostServed;
    }

    /// Ice in its fat-free part.
    MassFraction setsAt() const { return setsFrom(m_input.process); }

    bool keeps(Promise promise, const std::vector<MixChange>& changes) const
    {
        const Mix mix = changed(m_mix, changes);
        if (!staysItsKind(mix))
            return false;
        return promise == Promise::SetsInFreezer ? sets(mix, m_input.freezerAt) : servesWell(mix, m_input.serveAt);
    }

private:
    const Mix& m_mix;
    const TextureInput& m_input;
    TextureClass m_kind;
    const TradeBand* m_band;
    bool m_isInBand;
};

/// What a gram's worth of changes, made so often, comes to on the scale.
std::vector<MixChange> weighedOut(std::vector<MixChange> perGram, Grams amount)
{
    for (MixChange& each : perGram) {
        const Grams mass = weighedUp({std::abs(each.mass.value) * amount.value});
        each.mass = each.mass.value < 0.0 ? Grams{-mass.value} : mass;
    }
    return perGram;
}

// --- Setting in the freezer ---

/// Solutes that a cook knows apart.
struct SoluteGroup {
    std::string_view name;
    std::optional<Stuff> canBeLeftOut;
    std::vector<Constituent> constituents;
};

const std::array<SoluteGroup, 5>& soluteGroups()
{
    using C = Constituent;
    static const std::array<SoluteGroup, 5> groups{
        SoluteGroup{"sugar", Stuff::Sucrose,
            {C::Sucrose, C::Glucose, C::Fructose, C::Galactose, C::Lactose, C::Maltose, C::Trehalose, C::Oligosaccharides,
                C::Dextrins}},
        SoluteGroup{"alcohol", Stuff::Spirit, {C::Ethanol}},
        SoluteGroup{"salt", Stuff::Salt, {C::Salt}},
        SoluteGroup{"acid", Stuff::Acid, {C::Acid}},
        SoluteGroup{"sugar alcohols", {}, {C::Sorbitol, C::Xylitol, C::Erythritol, C::Maltitol, C::Glycerol}},
    };
    return groups;
}

struct Effect {
    const SoluteGroup* group;
    Grams mass;
    double asSucrose_g;
};

/// What counts as most sucrose first.
std::array<Effect, 5> effectsOf(const Mix& mix)
{
    std::array<Effect, 5> effects{};
    std::ranges::transform(soluteGroups(), effects.begin(), [&](const SoluteGroup& group) {
        Effect effect{&group, {}, 0.0};
        for (const Constituent c : group.constituents) {
            // Dextrins soften a mix as well, but nobody calls them sugar.
            if (c != Constituent::Oligosaccharides && c != Constituent::Dextrins)
                effect.mass += mix[c];
            effect.asSucrose_g += mix[c].value * sucroseEquivalentOf(c);
        }
        return effect;
    });
    std::ranges::sort(effects, std::ranges::greater(), &Effect::asSucrose_g);
    return effects;
}

Sentence sentenceToSet(const MixChange& change, Celsius freezer)
{
    const Figure cold = chosenTemperatureFigure(freezer), grams = gramsFigure(change.mass);
    switch (change.stuff) {
    case Stuff::Water:
        return phrase("To make it set at {0}, add {1} g of water.", cold, grams);
    case Stuff::Spirit:
        return phrase("To make it set at {0}, use {1} mL less spirit (40 % vol).", cold,
            gramsFigure({std::round(-change.mass.value / densityOfSpirit.value * 10.0) / 10.0}));
    case Stuff::Salt:
        return phrase("To make it set at {0}, use {1} g less salt.", cold, grams);
    case Stuff::Acid:
        return phrase("To make it set at {0}, use {1} g less acid.", cold, grams);
    case Stuff::Sucrose:
    case Stuff::Dextrose:
        break;
    }
    return phrase("To make it set at {0}, use {1} g less sugar.", cold, grams);
}

/// A spirit is poured, not weighed: whole millilitres, tenths below ten.
MixChange asMeasured(MixChange change)
{
    if (change.stuff == Stuff::Spirit)
        change.mass = {-weighedUp({-change.mass.value / densityOfSpirit.value}).value * densityOfSpirit.value};
    return change;
}

std::optional<Advice> changeToSet(const Trial& trial, const Mix& mix, Celsius freezer, MixChange perGram, Grams most)
{
    const auto amount = amountForIce(mix, {perGram}, most, {freezer, trial.setsAt(), true});
    if (!amount)
        return std::nullopt;
    const MixChange change =
        perGram.stuff == Stuff::Spirit ? asMeasured({perGram.stuff, {-amount->value}}) : weighedOut({perGram}, *amount).front();
    if (std::abs(change.mass.value) > most.value || !trial.keeps(Promise::SetsInFreezer, {change}))
        return std::nullopt;
    return Advice{Promise::SetsInFreezer, sentenceToSet(change, freezer), {}, {}, {change}};
}

std::optional<Advice> colderFreezer(const Trial& trial, const Mix& mix, const FreezingCurve& curve, Celsius freezer)
{
    constexpr Celsius coldestFreezer{-24.0};  // from memory: what a freezer of a household or a small kitchen reaches
    const double fatFree = 1.0 - shareOf(mix[Constituent::Fat], mix).value;
    const auto sets = curve.temperatureWithIce(trial.setsAt() * fatFree);
    if (!sets)
        return std::nullopt;
    const Celsius to{std::floor(sets->value)};
    if (to < coldestFreezer || to >= freezer || !trial.sets(mix, to))
        return std::nullopt;
    return Advice{Promise::SetsInFreezer, phrase("Set the freezer to {0} or colder.", chosenTemperatureFigure(to)), {}, to, {}};
}

// --- Serving ---

/// The window in whole degrees, or in tenths where it is too narrow for them: never wider than it is.
TemperatureRange withinWindow(const TemperatureRange& window)
{
    const auto inward = [&window](double steps) {
        constexpr double slack = 1e-9;
        return TemperatureRange{
            {std::floor(window.warmest.value * steps + slack) / steps}, {std::ceil(window.coldest.value * steps - slack) / steps}};
    };
    const TemperatureRange whole = inward(1.0);
    constexpr KelvinDifference canBeMet{1.0};
    return whole.warmest - whole.coldest >= canBeMet ? whole : inward(10.0);
}

Advice serveInWindow(const TemperatureRange& window, bool isTooHard)
{
    const TemperatureRange range = withinWindow(window);
    const Figure coldest = chosenTemperatureFigure(range.coldest), warmest = chosenTemperatureFigure(range.warmest);
    return {Promise::ServesWell,
        isTooHard ? phrase("Let it warm to between {0} and {1}.", coldest, warmest)
                  : phrase("Serve it between {0} and {1}.", coldest, warmest),
        range, {}, {}};
}

/// How sweet the additions make the mix, as far as they do: above this it is sweeter than its kind. Without a band, that of sorbet.
bool isTooSweet(const Trial& trial, const Mix& mix, const std::vector<MixChange>& changes)
{
    // Dextrose against sucrose: technical memorandum TM 2042, 0.8; 0.6 to 0.8 elsewhere.
    constexpr double sweetnessOfDextrose = 0.8;
    const TradeBand& band = trial.band() ? *trial.band() : *tradeBandOf(TextureClass::Sorbet);
    double sweet_g = countedSugars(mix, band.counts).sugars.value * mix.mass().value;
    double mass_g = mix.mass().value;
    for (const MixChange& each : changes) {
        sweet_g += each.mass.value * (each.stuff == Stuff::Dextrose ? sweetnessOfDextrose : 1.0);
        mass_g += each.mass.value;
    }
    return sweet_g > band.high.value * mass_g;
}

std::optional<Advice> moreSugar(const Trial& trial, const Mix& mix, const TextureInput& input)
{
    const auto edges = servingEdges(trial.kind(), softeningOf(mix, input));
    if (!edges)
        return std::nullopt;
    const Figure at = chosenTemperatureFigure(input.serveAt);
    for (const std::vector<MixChange>& perGram :
        {std::vector<MixChange>{{Stuff::Sucrose, {1.0}}}, {{Stuff::Sucrose, {0.5}}, {Stuff::Dextrose, {0.5}}}}) {
        const auto amount = amountForIce(mix, perGram, mix.mass(), {input.serveAt, edges->mostBest});
        if (!amount)
            continue;
        const std::vector<MixChange> changes = weighedOut(perGram, *amount);
        if (isTooSweet(trial, mix, changes) || !trial.keeps(Promise::ServesWell, changes))
            continue;
        const Figure sucrose = gramsFigure(changes.front().mass);
        return Advice{Promise::ServesWell,
            changes.size() == 1 ? phrase("To serve it at {0}, add {1} g of sugar.", at, sucrose)
                                : phrase("To serve it at {0}, add {1} g of sugar and {2} g of dextrose, which sweetens less.", at,
                                    sucrose, gramsFigure(changes.back().mass)),
            {}, {}, changes};
    }
    return std::nullopt;
}

std::optional<Advice> moreWater(const Trial& trial, const Mix& mix, const TextureInput& input)
{
    const auto edges = servingEdges(trial.kind(), softeningOf(mix, input));
    const auto amount =
        edges ? amountForIce(mix, {{Stuff::Water, {1.0}}}, mix.mass(), {input.serveAt, edges->leastBest}) : std::nullopt;
    if (!amount)
        return std::nullopt;
    const std::vector<MixChange> changes = weighedOut({{Stuff::Water, {1.0}}}, *amount);
    if (changes.front().mass > mix.mass() || !trial.keeps(Promise::ServesWell, changes))
        return std::nullopt;
    return Advice{Promise::ServesWell,
        phrase(
            "To serve it at {0}, add {1} g of water.", chosenTemperatureFigure(input.serveAt), gramsFigure(changes.front().mass)),
        {}, {}, changes};
}

void add(std::vector<Advice>& all, std::optional<Advice> advice)
{
    if (advice)
        all.push_back(std::move(*advice));
}

}  // namespace

Softening softeningOf(const Mix& mix, const TextureInput& input)
{
    // The air of a folded dessert sits in a foam that holds itself; only churned air softens.
    return {shareOf(mix[Constituent::Fat], mix), input.process == Process::Churned ? input.overrun_percent : 0.0};
}

Sentence causeOfSoftness(const Mix& mix)
{
    constexpr double nearlyAsMuch = 0.6;
    const auto effects = effectsOf(mix);
    const auto share = [&mix](const Effect& effect) {
        const double part_percent = percent(shareOf(effect.mass, mix));
        return Figure{part_percent, 1};
    };
    const Effect &first = effects[0], &second = effects[1];
    if (second.asSucrose_g >= nearlyAsMuch * first.asSucrose_g && second.asSucrose_g > 0.0)
        return phrase("The main causes are {0} ({1} % by mass) and {2} ({3} %).", std::string(first.group->name), share(first),
            std::string(second.group->name), share(second));
    return phrase("The main cause is {0}: {1} % by mass.", std::string(first.group->name), share(first));
}

std::vector<Advice> adviceToSet(const Mix& mix, const FreezingCurve& curve, const TextureInput& input)
{
    const Trial trial(mix, input);
    std::vector<Advice> advice;
    if (const auto leftOut = effectsOf(mix).front().group->canBeLeftOut)
        add(advice, changeToSet(trial, mix, input.freezerAt, {*leftOut, {-1.0}}, mostOf(*leftOut, mix)));
    add(advice, changeToSet(trial, mix, input.freezerAt, {Stuff::Water, {1.0}}, mix.mass()));
    add(advice, colderFreezer(trial, mix, curve, input.freezerAt));
    return advice;
}

std::vector<Advice> adviceToServe(const Mix& mix, const Texture& found, const TextureInput& input)
{
    const Trial trial(mix, input);
    std::vector<Advice> advice;
    const bool isTooHard = found.served == Served::TooHard;
    if (found.servingWindow)
        advice.push_back(serveInWindow(*found.servingWindow, isTooHard));
    add(advice, isTooHard ? moreSugar(trial, mix, input) : moreWater(trial, mix, input));
    return advice;
}

Advice adviceToChill(Celsius serveAt)
{
    return {Promise::IsColdEnough, phrase("Set the freezer to {0} or colder.", chosenTemperatureFigure(serveAt)), {}, serveAt, {}};
}

}  // namespace firn
