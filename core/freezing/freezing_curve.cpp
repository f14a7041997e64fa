#include "freezing/freezing_curve.h"

#include "freezing/curve_working.h"
#include "freezing/glass.h"
#include "solution/water_activity.h"

#include <algorithm>
#include <math.h>  // pchip.hpp of Boost 1.74 takes isnan from the global namespace and does not include it

#include <boost/math/interpolators/pchip.hpp>
#include <cmath>
#include <limits>

namespace firn {

namespace {

constexpr double gridStep_k = 0.5;
constexpr std::size_t fewestToInterpolate = 4;

/// The liquid's concentration (free water at the start over liquid water left) against temperature, coldest first.
struct Concentration {
    std::vector<double> temperature_c;
    std::vector<double> concentration;
    double extrapolatedFrom_c = -1e9;  // the warmest temperature at which a solute is stronger than any measurement
};

/// Takes water away as ice until the liquid is colder than the curve's end. No temperature is searched for: each step concentrates the
/// liquid and reads the temperature at which it is in equilibrium.
Concentration concentrated(const Liquid& liquid, Celsius freezingPoint, bool isExtrapolatedAtStart)
{
    // Short steps where the curve begins, because the interpolation has a neighbour on one side only there.
    const auto stepAimedAt_k = [freezingPoint](double t_c) { return std::min(0.5, 0.03 + 0.4 * (freezingPoint.value - t_c)); };
    constexpr double strongest = 1e4;  // a mix that is nearly all water is still liquid in its last ten-thousandth
    Concentration result;
    result.temperature_c.reserve(64);
    result.concentration.reserve(64);
    result.temperature_c.push_back(freezingPoint.value);
    result.concentration.push_back(1.0);
    if (isExtrapolatedAtStart)
        result.extrapolatedFrom_c = freezingPoint.value;

    double concentration = 1.0;
    double last_c = freezingPoint.value;
    double growth = std::min(1.0, stepAimedAt_k(last_c) / std::max(0.03, -last_c));
    while ((last_c > coldestOfCurve.value || result.concentration.size() < fewestToInterpolate) && concentration < strongest) {
        concentration *= 1.0 + growth;
        const auto [activity, isExtrapolated] = liquid.with(liquid.freeWater() / concentration);
        const double t_c = equilibriumTemperature(activity).value;
        if (t_c >= last_c)
            break;  // at the coldest equilibrium
        if (isExtrapolated && result.extrapolatedFrom_c < -1e8)
            result.extrapolatedFrom_c = last_c;
        result.temperature_c.push_back(t_c);
        result.concentration.push_back(concentration);
        growth *= std::clamp(stepAimedAt_k(t_c) / (last_c - t_c), 0.3, 3.0);
        last_c = t_c;
    }
    std::reverse(result.temperature_c.begin(), result.temperature_c.end());
    std::reverse(result.concentration.begin(), result.concentration.end());
    return result;
}

/// Temperatures of the curve: the freezing point, then every half degree.
std::vector<double> grid(Celsius freezingPoint)
{
    std::vector<double> temperatures_c{freezingPoint.value};
    const double first = std::ceil(-freezingPoint.value / gridStep_k + 1e-9);
    for (double i = first; i * gridStep_k <= -coldestOfCurve.value; i += 1.0)
        temperatures_c.push_back(-i * gridStep_k);
    return temperatures_c;
}

/// Ice grows in proportion to 1 - t0/t in an ideal solution, so that steps are interpolated in the reciprocal of the temperature.
double reciprocal(const FreezingStep& step) { return 1.0 / withReciprocal(step.temperature).value; }

}  // namespace

FreezingCurve freezingCurve(const Mix& mix, Workings* workings)
{
    FreezingCurve curve;
    Working* const ofPoint = workings ? &workings->of("freezing_point_c") : nullptr;
    const Liquid liquid(mix, ofPoint);
    const bool hasFreeWater = liquid.freeWater().value > 0.0;
    curve.glassLimit = glassLimit(mix, workings && hasFreeWater ? &workings->of("glass_limit_c") : nullptr);
    if (!hasFreeWater) {
        if (ofPoint)
            ofPoint->giveUp();
        return curve;
    }

    const auto [activity, isExtrapolated] = liquid.with(liquid.freeWater(), ofPoint);
    const Celsius freezingPoint = equilibriumTemperature(activity);
    curve.freezingPoint = {freezingPoint, isExtrapolated};
    if (ofPoint) {
        Working& ofActivity = workings->of("water_activity");
        ofActivity.add(ofPoint->steps());
        recordWaterActivity(ofActivity, activity, *curve.freezingPoint);
        recordFreezingPoint(*ofPoint, activity, *curve.freezingPoint);
    }
    if (freezingPoint <= coldestOfCurve)
        return curve;

    const double freeWater_g = liquid.freeWater().value;
    const double water_g = mix[Constituent::Water].value;
    const double mass_g = mix.mass().value;
    CurveKnots knots;
    const auto step = [&](double t_c, double concentration, bool beyondMeasurement) {
        const double ice_g = freeWater_g * (1.0 - 1.0 / concentration);
        curve.steps.push_back({{t_c}, {ice_g / mass_g}, {ice_g / water_g}, beyondMeasurement});
        if (workings)
            recordCurveStep(*workings, curve, mix, {liquid.freeWater(), concentration, {ice_g}}, knots);
    };

    const std::vector<double> temperatures_c = grid(freezingPoint);
    curve.steps.reserve(temperatures_c.size());
    constexpr double asGoodAsWater_c = -1e-4;
    if (freezingPoint.value > asGoodAsWater_c) {  // all of it freezes at once
        step(freezingPoint.value, 1.0, isExtrapolated);
        for (std::size_t i = 1; i < temperatures_c.size(); ++i)
            step(temperatures_c[i], std::numeric_limits<double>::infinity(), isExtrapolated);
        return curve;
    }
    Concentration liquidLeft = concentrated(liquid, freezingPoint, isExtrapolated);
    if (liquidLeft.concentration.size() < fewestToInterpolate)
        return curve;  // so strong that a little ice takes it beyond any temperature that is reckoned with
    const double coldest_c = liquidLeft.temperature_c.front();
    const double extrapolatedFrom_c = liquidLeft.extrapolatedFrom_c;
    if (workings)
        knots = {liquidLeft.temperature_c, liquidLeft.concentration};
    const boost::math::interpolators::pchip<std::vector<double>> concentrationAt(
        std::move(liquidLeft.temperature_c), std::move(liquidLeft.concentration));
    for (const double t_c : temperatures_c) {
        const double reached_c = std::max({t_c, curve.glassLimit.value, coldest_c});
        step(t_c, concentrationAt(std::min(reached_c, freezingPoint.value)), t_c < extrapolatedFrom_c);
    }
    return curve;
}

MassFraction FreezingCurve::iceAt(Celsius temperature, Working* working) const
{
    if (steps.empty() || temperature > steps.front().temperature) {
        if (working)
            recordNoIce(*working, *this, temperature);
        return {0.0};
    }
    if (temperature <= steps.back().temperature) {
        if (working)
            recordColdestIce(*working, *this, temperature);
        return steps.back().ice;
    }
    const auto colder = std::partition_point(
        steps.begin(), steps.end(), [temperature](const FreezingStep& s) { return s.temperature >= temperature; });
    const FreezingStep& a = *(colder - 1);
    const FreezingStep& b = *colder;
    const double along = (1.0 / withReciprocal(temperature).value - reciprocal(a)) / (reciprocal(b) - reciprocal(a));
    const MassFraction ice = a.ice + (b.ice - a.ice) * std::clamp(along, 0.0, 1.0);
    if (working)
        recordIceBetween(*working, *this, std::size_t(colder - steps.begin()), temperature, ice);
    return ice;
}

std::optional<Celsius> FreezingCurve::temperatureWithIce(MassFraction ice, Working* working) const
{
    if (steps.empty() || ice > steps.back().ice)
        return std::nullopt;
    const auto colder = std::partition_point(steps.begin(), steps.end(), [ice](const FreezingStep& s) { return s.ice < ice; });
    if (colder == steps.begin()) {
        if (working)
            recordTemperatureAtStart(*working, *this);
        return steps.front().temperature;
    }
    const FreezingStep& a = *(colder - 1);
    const FreezingStep& b = *colder;
    const double along = b.ice > a.ice ? (ice - a.ice) / (b.ice - a.ice) : 0.0;
    const Celsius temperature{1.0 / (reciprocal(a) + (reciprocal(b) - reciprocal(a)) * along)};
    if (working)
        recordTemperatureBetween(*working, *this, std::size_t(colder - steps.begin()), ice, temperature);
    return temperature;
}

}  // namespace firn
