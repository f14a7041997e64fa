#include "texture/spirit.h"

#include "solution/water_activity.h"

#include <boost/math/tools/roots.hpp>
#include <cstdint>

namespace firn {

namespace {

// A spirit of 40 % vol: OIML R 22.
constexpr double ethanolOfSpirit = 0.3330;  // by mass
constexpr GramsPerMillilitre densityOfSpirit{0.94805};

Mix withoutSpirit(Mix mix, double spirit_g)
{
    mix.amounts[Constituent::Ethanol] += Grams{-spirit_g * ethanolOfSpirit};
    mix.amounts[Constituent::Water] += Grams{-spirit_g * (1.0 - ethanolOfSpirit)};
    return mix;
}

Mix withWater(Mix mix, double water_g)
{
    mix.amounts[Constituent::Water] += Grams{water_g};
    return mix;
}

/// How much warmer than the freezer the liquid would freeze that is left beside this share of ice: negative where it stays liquid.
double warmerThanFreezer_k(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree)
{
    const Liquid liquid(mix);
    const Grams left = liquid.freeWater() - (mix.mass() - mix[Constituent::Fat]) * iceOfFatFree.value;
    if (left.value <= 0.0)
        return -kelvin(freezer);
    return (equilibriumTemperature(liquid.with(left).activity) - freezer).value;
}

/// The amount from 0 to `most` at which a mix changed by it just freezes so far; none if it does not even with the most.
template <class Change>
std::optional<double> amountThatFreezes(Change changed, double most, Celsius freezer, MassFraction iceOfFatFree)
{
    const auto warmer_k = [&](double amount) { return warmerThanFreezer_k(changed(amount), freezer, iceOfFatFree); };
    if (warmer_k(most) <= 0.0)
        return std::nullopt;
    std::uintmax_t steps = 60;
    const auto [low, high] =
        boost::math::tools::toms748_solve(warmer_k, 0.0, most, boost::math::tools::eps_tolerance<double>(16), steps);
    return high;
}

}  // namespace

std::optional<SpiritExcess> spiritExcess(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree)
{
    const Grams ethanol = mix[Constituent::Ethanol];
    if (ethanol.value <= 0.0 || warmerThanFreezer_k(mix, freezer, iceOfFatFree) >= 0.0)
        return std::nullopt;

    SpiritExcess result;
    constexpr double nearlyAll = 0.999;
    const double mostSpirit_g =
        nearlyAll * std::min(ethanol.value / ethanolOfSpirit, mix[Constituent::Water].value / (1.0 - ethanolOfSpirit));
    if (const auto spirit_g =
            amountThatFreezes([&](double g) { return withoutSpirit(mix, g); }, mostSpirit_g, freezer, iceOfFatFree))
        result.spiritToRemove = Millilitres{*spirit_g / densityOfSpirit.value};
    const double mostWater_g = 100.0 * mix.mass().value;
    result.waterToAdd = {
        amountThatFreezes([&](double g) { return withWater(mix, g); }, mostWater_g, freezer, iceOfFatFree).value_or(mostWater_g)};
    return result;
}

}  // namespace firn
