#include "texture/spirit.h"

#include "solution/water_activity.h"

#include <boost/math/tools/roots.hpp>
#include <cstdint>

namespace firn {

std::optional<SpiritExcess> spiritExcess(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree)
{
    const Grams ethanol = mix[Constituent::Ethanol];
    if (ethanol.value <= 0.0)
        return std::nullopt;
    const Liquid liquid(mix);
    const Grams withoutEthanol = mix.mass() - mix[Constituent::Fat] - ethanol;

    // How much warmer the liquid that must be left would freeze than the freezer is: falls as ethanol is added.
    const auto warmerThanFreezer_k = [&](double ethanol_g) {
        const Grams ice = (withoutEthanol + Grams{ethanol_g}) * iceOfFatFree.value;
        const Grams left = liquid.freeWater() - ice;
        if (left.value <= 0.0)
            return -kelvin(freezer);
        return (equilibriumTemperature(liquid.withEthanol({ethanol_g}).with(left).activity) - freezer).value;
    };
    if (warmerThanFreezer_k(ethanol.value) >= 0.0 || warmerThanFreezer_k(0.0) <= 0.0)
        return std::nullopt;
    std::uintmax_t steps = 40;
    const auto [low, high] = boost::math::tools::toms748_solve(
        warmerThanFreezer_k, 0.0, ethanol.value, boost::math::tools::eps_tolerance<double>(16), steps);
    const Grams freezes{(low + high) / 2.0};
    return SpiritExcess{ethanol - freezes, freezes};
}

}  // namespace firn
