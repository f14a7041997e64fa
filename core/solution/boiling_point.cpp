#include "solution/boiling_point.h"

#include "solution/volume.h"
#include "solution/water_activity.h"

#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

namespace firn {

namespace {

constexpr MassFraction traceOfAlcohol{0.001};  // raises the vapour pressure by less than a thermometer shows

struct Gap {
    double solids_percent;
    double half_k;
};

/// Half of Browne's elevation less that from water activity at normal pressure; below 20 % smaller, down to nothing (see the header).
constexpr std::array gaps{Gap{0, 0.0}, Gap{10, 0.058}, Gap{20, 0.105}, Gap{32, 0.16}, Gap{40, 0.175}, Gap{50, 0.09}, Gap{62, 0.075},
    Gap{66, 0.40}, Gap{70, 0.755}, Gap{74, 1.035}, Gap{78, 1.19}, Gap{80, 1.27}};

double halfGap_k(MassFraction solids)
{
    const double w = percent(solids);
    for (std::size_t i = 1; i < gaps.size(); ++i) {
        const Gap& before = gaps[i - 1];
        const Gap& after = gaps[i];
        if (w <= after.solids_percent)
            return std::lerp(
                before.half_k, after.half_k, (w - before.solids_percent) / (after.solids_percent - before.solids_percent));
    }
    return gaps.back().half_k;
}

/// Where a liquid of this activity has this vapour pressure.
Celsius boilingTemperature(const LnActivity& activity, Hectopascals pressure)
{
    const double lnPressure = std::log(pressure.value);
    const auto tooHigh = [&](double t_c) { return std::log(saturationPressure({t_c}).value) + activity.at({t_c}) - lnPressure; };
    std::uintmax_t steps = 60;
    const auto [low, high] =
        boost::math::tools::toms748_solve(tooHigh, 1.0, 250.0, boost::math::tools::eps_tolerance<double>(40), steps);
    return {(low + high) / 2.0};
}

}  // namespace

Hectopascals saturationPressure(Celsius temperature)
{
    constexpr double critical_k = 647.096;
    constexpr double critical_hPa = 220640.0;
    const double t_k = kelvin(temperature);
    const double x = 1.0 - t_k / critical_k;
    const double root = std::sqrt(x);
    const double x3 = x * x * x;
    const double sum = x * (-7.85951783 + 1.84408259 * root) + x3 * (-11.7866497 + 22.6807411 * root)
                       + x3 * x * (-15.9618719 + 1.80122502 * x3 * root);
    return {critical_hPa * std::exp(critical_k / t_k * sum)};
}

Hectopascals pressureAtAltitude(double altitude_m)
{
    return {standardPressure.value * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588)};
}

Result<BoilingPoint> boilingPointOf(const Mix& mix, Hectopascals pressure)
{
    if (shareOf(mix[Constituent::Ethanol], mix) > traceOfAlcohol)
        return failure(phrase("A boiling point says nothing about a mix with alcohol, which leaves with the steam: use a "
                              "refractometer and a hydrometer."));
    const Liquid liquid(mix);
    if (liquid.freeWater().value <= 0.0)
        return failure(phrase("There is no water that could boil."));
    const MassFraction solids = strengthOf(mix).dissolvedSolids;
    constexpr double rounding = 1e-9;
    if (solids.value > strongestBoiled.value + rounding)
        return failure(phrase(
            "More than {0} % of sugar in the water is beyond the tables of boiling points.", Figure{percent(strongestBoiled), 0}));
    const KelvinDifference half{halfGap_k(solids)};
    const Celsius water = boilingTemperature({}, pressure);
    const Celsius boils = boilingTemperature(liquid.with(liquid.freeWater()).activity, pressure) + half;
    return BoilingPoint{boils, boils - water, half};
}

}  // namespace firn
