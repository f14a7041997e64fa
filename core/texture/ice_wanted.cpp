#include "texture/ice_wanted.h"

#include "freezing/glass.h"
#include "solution/water_activity.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cstdint>

namespace firn {

namespace {

struct Part {
    Constituent constituent;
    double share;
};

/// Two constituents at the most.
std::array<Part, 2> partsOf(Stuff stuff)
{
    constexpr double ethanolOfSpirit = 0.3330;            // by mass, OIML R 22
    constexpr double waterOfDextrose = 18.015 / 198.171;  // of the monohydrate
    switch (stuff) {
    case Stuff::Sucrose:
        return {{{Constituent::Sucrose, 1.0}, {Constituent::Water, 0.0}}};
    case Stuff::Dextrose:
        return {{{Constituent::Glucose, 1.0 - waterOfDextrose}, {Constituent::Water, waterOfDextrose}}};
    case Stuff::Water:
        return {{{Constituent::Water, 1.0}, {Constituent::Water, 0.0}}};
    case Stuff::Spirit:
        return {{{Constituent::Ethanol, ethanolOfSpirit}, {Constituent::Water, 1.0 - ethanolOfSpirit}}};
    case Stuff::Salt:
        return {{{Constituent::Salt, 1.0}, {Constituent::Water, 0.0}}};
    case Stuff::Acid:
        return {{{Constituent::Acid, 1.0}, {Constituent::Water, 0.0}}};
    }
    return {};
}

void change(Mix& mix, Stuff stuff, double mass_g)
{
    for (const Part& part : partsOf(stuff))
        mix.amounts[part.constituent] += Grams{mass_g * part.share};
}

Mix changedBy(Mix mix, const std::vector<MixChange>& perGram, double amount)
{
    for (const MixChange& each : perGram)
        change(mix, each.stuff, each.mass.value * amount);
    return mix;
}

/// Below the glass limit no more ice forms.
Celsius reached(const Mix& mix, Celsius temperature) { return std::max(temperature, glassLimit(mix)); }

/// ln a_w of the liquid beside this much ice, above that of ice: positive where still more ice would form.
double excess(const Liquid& liquid, Grams liquidWater, Celsius temperature)
{
    return liquid.with(liquidWater).activity.at(temperature) - lnWaterActivityOverIce(temperature);
}

double excessBeside(const Mix& mix, const IceWanted& wanted)
{
    const Liquid liquid(mix);
    const Grams whole = wanted.isOfFatFree ? mix.mass() - mix[Constituent::Fat] : mix.mass();
    const Grams left = liquid.freeWater() - whole * wanted.share.value;
    constexpr double fallsFarShort = -10.0;
    return left.value <= 0.0 ? fallsFarShort : excess(liquid, left, reached(mix, wanted.temperature));
}

template <class Of>
double rootBetween(Of of, double low, double high)
{
    std::uintmax_t steps = 60;
    const auto [below, above] =
        boost::math::tools::toms748_solve(of, low, high, boost::math::tools::eps_tolerance<double>(20), steps);
    return 0.5 * (below + above);
}

}  // namespace

Mix changed(Mix mix, const std::vector<MixChange>& changes)
{
    for (const MixChange& each : changes)
        change(mix, each.stuff, each.mass.value);
    return mix;
}

Grams mostOf(Stuff stuff, const Mix& mix)
{
    constexpr double nearlyAll = 0.999;
    double most_g = mix.mass().value;
    for (const Part& part : partsOf(stuff)) {
        if (part.share > 0.0)
            most_g = std::min(most_g, mix[part.constituent].value / part.share);
    }
    return {nearlyAll * most_g};
}

MassFraction iceOnceAt(const Mix& mix, Celsius temperature)
{
    const Liquid liquid(mix);
    const Grams water = liquid.freeWater();
    const Celsius at = reached(mix, temperature);
    if (water.value <= 0.0 || excess(liquid, water, at) <= 0.0)
        return {0.0};
    constexpr double leastLeft = 1e-4;
    const auto excessWith = [&](double share) { return excess(liquid, water * share, at); };
    const double left = excessWith(leastLeft) >= 0.0 ? leastLeft : rootBetween(excessWith, leastLeft, 1.0);
    return shareOf(water * (1.0 - left), mix);
}

bool hasIce(const Mix& mix, const IceWanted& wanted) { return excessBeside(mix, wanted) >= 0.0; }

std::optional<Grams> amountForIce(const Mix& mix, const std::vector<MixChange>& perGram, Grams most, const IceWanted& wanted)
{
    const auto excessWith = [&](double amount_g) { return excessBeside(changedBy(mix, perGram, amount_g), wanted); };
    if (most.value <= 0.0 || (excessWith(0.0) < 0.0) == (excessWith(most.value) < 0.0))
        return std::nullopt;
    return Grams{rootBetween(excessWith, 0.0, most.value)};
}

}  // namespace firn
