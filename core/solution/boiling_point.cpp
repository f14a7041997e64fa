#include "solution/boiling_point.h"

#include "solution/volume.h"
#include "solution/water_activity.h"

#include <algorithm>
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

Symbol halfGapSymbol(KelvinDifference halfGap)
{
    return {"δ", "", halfGap.value, "K", phrase("half of what the two tables of boiling points differ by"), {}, 3};
}

KelvinDifference halfGapOf(const Strength& strength, Working* working)
{
    const double w = percent(strength.dissolvedSolids);
    const auto after =
        std::min(std::ranges::lower_bound(gaps.begin() + 1, gaps.end(), w, {}, &Gap::solids_percent), gaps.end() - 1);
    const Gap& before = *(after - 1);
    const double way = std::min(1.0, (w - before.solids_percent) / (after->solids_percent - before.solids_percent));
    const KelvinDifference half{std::lerp(before.half_k, after->half_k, way)};
    if (working) [[unlikely]] {
        const Formula ofWay =
            function("min", {1.0, (oneHundredPercent() * solidsStrengthSymbol(strength) - Number{before.solids_percent, "%"})
                                      / Number{after->solids_percent - before.solids_percent, "%"}});
        WorkingStep& step = working->found(halfGapSymbol(half),
            Formula(Number{before.half_k, "K"}) + (Formula(Number{after->half_k, "K"}) - Number{before.half_k, "K"}) * ofWay,
            Source::BoilingPoint);
        step.method = phrase("Interpolated between {0} and {1} % of dissolved solids in the water.",
            Figure{before.solids_percent, 0}, Figure{after->solids_percent, 0});
        step.range = phrase("To 80 %; below 20 % it goes down to nothing with the strength.");
    }
    return half;
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

constexpr double critical_k = 647.096;
constexpr double critical_hPa = 220640.0;

/// A coefficient of Wagner and Pruss with the power of 1 - T/T_c that it stands before.
struct PressureTerm {
    double coefficient;
    double power;
};
constexpr std::array pressureTerms{PressureTerm{-7.85951783, 1.0}, PressureTerm{1.84408259, 1.5}, PressureTerm{-11.7866497, 3.0},
    PressureTerm{22.6807411, 3.5}, PressureTerm{-15.9618719, 4.0}, PressureTerm{1.80122502, 7.5}};

/// What saturationPressure() reckons, after the temperature was found with it.
void recordPressure(Working& working, const Symbol& temperature, const Symbol& saturation)
{
    const Symbol critical{"T", "c", critical_k, "K", phrase("critical temperature of water"), {}, 3};
    const Formula kelvins = Formula(temperature) + zeroCelsius();
    const Symbol theta{
        "θ", "", 1.0 - kelvin({temperature.value}) / critical_k, "", phrase("how far below the critical temperature"), {}, 5};
    working.found(theta, 1.0 - kelvins / critical, Source::VapourPressure);
    std::vector<Formula> terms;
    terms.reserve(pressureTerms.size());
    for (const PressureTerm& term : pressureTerms)
        terms.push_back(term.coefficient * (term.power == 1.0 ? Formula(theta) : power(theta, term.power)));
    working.solved(saturation, ln(saturation / Formula(Number{critical_hPa, "hPa"})),
        critical / kelvins * Operation{Operator::Sum, std::move(terms)}, Source::VapourPressure,
        phrase("The pressure of steam over boiling water of that temperature, solved together with the next step."));
}

void recordBoiling(
    Working& working, const LnActivity& activity, Hectopascals pressure, Celsius byActivity, Celsius boils, KelvinDifference half)
{
    const Symbol byActivitySymbol{"t", "activity", byActivity.value, "°C", phrase("boiling point by water activity alone"), {}, 3};
    const Symbol steam{"p", "steam", saturationPressure(byActivity).value, "hPa", phrase("vapour pressure of pure water there")};
    const Symbol air{"p", "air", pressure.value, "hPa", phrase("pressure of the air")};
    recordPressure(working, byActivitySymbol, steam);
    working.solved(byActivitySymbol, ln(steam / Formula(air)) + lnActivityAt(activity, byActivitySymbol), 0.0,
        Source::VapourPressure,
        phrase("Solved for the temperature between 1 and 250 °C: the mix boils when its vapour pressure is that of the air."));
    WorkingStep& step = working.found({"t", "boils", boils.value, "°C", phrase("boiling point of the mix"), {}, 2},
        byActivitySymbol + Formula(halfGapSymbol(half)), Source::BoilingPoint);
    step.range = phrase("Without alcohol, to 80 % of dissolved solids in the water.");
    step.uncertainty = phrase("Half of the gap between the two tables, {0} K.", Figure{half.value, 2});
}

}  // namespace

Hectopascals saturationPressure(Celsius temperature)
{
    const double t_k = kelvin(temperature);
    const double x = 1.0 - t_k / critical_k;
    const double root = std::sqrt(x);
    const double x3 = x * x * x;
    const auto& a = pressureTerms;
    const double sum = x * (a[0].coefficient + a[1].coefficient * root) + x3 * (a[2].coefficient + a[3].coefficient * root)
                       + x3 * x * (a[4].coefficient + a[5].coefficient * x3 * root);
    return {critical_hPa * std::exp(critical_k / t_k * sum)};
}

Hectopascals pressureAtAltitude(double altitude_m)
{
    return {standardPressure.value * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588)};
}

Result<BoilingPoint> boilingPointOf(const Mix& mix, Hectopascals pressure, Working* working)
{
    if (shareOf(mix[Constituent::Ethanol], mix) > traceOfAlcohol)
        return failure(phrase("A boiling point says nothing about a mix with alcohol, which leaves with the steam. Use a "
                              "refractometer and a hydrometer."));
    const Liquid liquid(mix, working);
    if (liquid.freeWater().value <= 0.0)
        return failure(phrase("There is no water that could boil."));
    const Strength strength = strengthOf(mix, working);
    constexpr double rounding = 1e-9;
    if (strength.dissolvedSolids.value > strongestBoiled.value + rounding)
        return failure(phrase(
            "More than {0} % of sugar in the water is beyond the tables of boiling points.", Figure{percent(strongestBoiled), 0}));
    const KelvinDifference half = halfGapOf(strength, working);
    const Celsius water = boilingTemperature({}, pressure);
    const LnActivity activity = liquid.with(liquid.freeWater(), working).activity;
    const Celsius byActivity = boilingTemperature(activity, pressure);
    const Celsius boils = byActivity + half;
    if (working) [[unlikely]]
        recordBoiling(*working, activity, pressure, byActivity, boils, half);
    return BoilingPoint{boils, boils - water, half};
}

}  // namespace firn
