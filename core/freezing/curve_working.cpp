#include "freezing/curve_working.h"

#include "mix/symbols.h"
#include "solution/water_activity.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace firn {

namespace {

std::string keyOfStep(std::size_t step, std::string_view figure) { return fmt::format("freezing_curve[{}].{}", step, figure); }

Symbol iceOfStep(const FreezingCurve& curve, std::size_t step, const std::string& subscript, const Working& working)
{
    return {"x", subscript, percent(curve.steps[step].ice), "%",
        phrase("ice in the mix at {0} °C", Figure{curve.steps[step].temperature.value, 1}),
        working.keyOf(keyOfStep(step, "ice_percent_of_mass"))};
}

/// Of two neighbours, 1 is the warmer one.
Symbol temperatureOfStep(const FreezingCurve& curve, std::size_t step, const std::string& subscript, const Working& working)
{
    return {"t", subscript, withReciprocal(curve.steps[step].temperature).value, "°C",
        subscript == "1" ? phrase("warmer neighbour on the curve") : phrase("colder neighbour on the curve"),
        working.keyOf(keyOfStep(step, "temperature_c"))};
}

Sentence temperatureWith(MassFraction ice)
{
    return phrase("temperature at which {0} % of the mix is ice", Figure{percent(ice), 0});
}

Symbol iceSymbol(MassFraction ice) { return {"x", "ice", percent(ice), "%", phrase("ice, of the mass of the mix")}; }

/// What the vapour pressures of ice and water say.
Formula iceActivity(const Symbol& temperature)
{
    return function("a_ice", {temperature},
        phrase("water activity that a liquid of that temperature has beside ice: vapour pressure of ice over that of water, Murphy "
               "and "
               "Koop's, so shifted that water freezes at 0 °C"));
}

Sentence betweenReciprocals()
{
    return phrase(
        "Interpolated between two temperatures of the curve in one over the temperature, as ice grows in an ideal solution.");
}

void recordTemperature(Workings& workings, const FreezingCurve& curve, std::size_t step)
{
    Working& working = workings.of(keyOfStep(step, "temperature_c"));
    const double t_c = curve.steps[step].temperature.value;
    const Symbol result{"t", "", t_c, "°C", phrase("temperature of the curve"), keyOfStep(step, "temperature_c")};
    if (step > 0)
        working.found(result, Number{t_c, "°C"}, Source::FreezingCurve).origin =
            phrase("the curve has a point at every half degree");
    else
        working
            .found(result,
                Symbol{"T", "f", curve.freezingPoint->temperature.value, "°C", phrase("freezing point"),
                    working.keyOf("freezing_point_c")},
                Source::FreezingCurve)
            .origin = phrase("the curve begins at the freezing point");
}

void recordConcentration(
    Working& working, const FreezingCurve& curve, std::size_t step, const IceFormed& formed, const CurveKnots& knots)
{
    const double t_c = curve.steps[step].temperature.value;
    const Symbol reached{"t", "", std::max(t_c, curve.glassLimit.value), "°C", phrase("temperature")};
    const Symbol result{concentrationName, "", formed.concentration, "", phrase("how many times stronger the liquid has become")};
    Sentence method = phrase("Pure water: all of it freezes at its freezing point.");
    if (!knots.temperature_c.empty()) {
        const auto colder = std::ranges::lower_bound(knots.temperature_c, reached.value);
        const auto i = std::min(std::size_t(colder - knots.temperature_c.begin()), knots.temperature_c.size() - 1);
        const std::size_t below = i > 0 ? i - 1 : i;
        method = phrase("Water is taken away as ice in {0} steps, and the liquid's freezing point calculated at each; between y = "
                        "{1} at {2} °C "
                        "and y = {3} at {4} °C a monotone cubic is followed.",
            Figure{double(knots.temperature_c.size() - 1), 0}, Figure{knots.concentration[i], 4}, Figure{knots.temperature_c[i], 3},
            Figure{knots.concentration[below], 4}, Figure{knots.temperature_c[below], 3});
    }
    WorkingStep& solved = working.solved(result, ln(iceActivity(reached)),
        ln(function("a_w", {freeWaterSymbol(formed.freeWater) / result, reached},
            phrase("water activity of the liquid with so much water left in it, at that temperature, by the steps to the freezing "
                   "point"))),
        Source::FreezingCurve, std::move(method));
    if (t_c < curve.glassLimit.value)
        solved.range = phrase("Colder than the glass limit: the ice of {0} °C stays as it is.", Figure{curve.glassLimit.value, 1});
    else if (curve.steps[step].isExtrapolated)
        solved.range = phrase("The liquid is stronger here than any solution that was measured.");
}

}  // namespace

Celsius withReciprocal(Celsius temperature)
{
    constexpr double nearlyZero_c = -1e-6;
    return {std::min(temperature.value, nearlyZero_c)};
}

void recordFreezingPoint(Working& working, const LnActivity& activity, const FreezingPoint& found)
{
    const Symbol result{"T", "f", found.temperature.value, "°C", phrase("temperature at which the first ice forms"),
        working.keyOf("freezing_point_c")};
    if (found.temperature <= coldestEquilibrium) {
        working.found(result, Number{coldestEquilibrium.value, "°C"}, Source::IceEquilibrium).range =
            phrase("It would be colder than what the vapour pressures are used for: this is their end.");
        return;
    }
    WorkingStep& step = working.solved(result, ln(iceActivity(result)), lnActivityAt(activity, result), Source::IceEquilibrium,
        phrase("Solved for T_f between {0} and 0 °C by Newton's method: the temperature at which both sides are the same.",
            Figure{coldestEquilibrium.value, 0}));
    step.range = found.isExtrapolated ? phrase("A solute is stronger here than any solution that was measured: extrapolated.")
                                      : phrase("Within the strengths that were measured.");
    step.uncertainty = phrase("0.05 K for sugars and salt, 0.01 K for alcohol at the rows of its table, as the tables print them; "
                              "fruit, by its variety, 0.6 K.");
}

void recordWaterActivity(Working& working, const LnActivity& activity, const FreezingPoint& found)
{
    const Symbol point{"T", "f", found.temperature.value, "°C", phrase("freezing point"), working.keyOf("freezing_point_c")};
    working.found(
        {"a", "w", std::exp(activity.at(found.temperature)), "", phrase("water activity of the mix at its freezing point"), {}, 4},
        function("exp", {lnActivityAt(activity, point)}), Source::WaterActivity);
}

void recordCurveStep(
    Workings& workings, const FreezingCurve& curve, const Mix& mix, const IceFormed& formed, const CurveKnots& knots)
{
    const std::size_t step = curve.steps.size() - 1;
    recordTemperature(workings, curve, step);
    const auto record = [&](const char* figure, Symbol result, const auto& wholeOf) {
        Working& working = workings.of(keyOfStep(step, figure));
        result.figure = keyOfStep(step, figure);
        recordConcentration(working, curve, step, formed, knots);
        const Symbol ice{"m", "ice", formed.ice.value, "g", phrase("mass of the ice")};
        const Symbol strength{
            concentrationName, "", formed.concentration, "", phrase("how many times stronger the liquid has become")};
        working.found(ice, freeWaterSymbol(formed.freeWater) * (1.0 - 1.0 / Formula(strength)), Source::Definition);
        working.found(std::move(result), oneHundredPercent() * (ice / wholeOf(working)), Source::Definition);
    };
    record(
        "ice_percent_of_mass", iceSymbol(curve.steps[step].ice), [&](const Working& working) { return massOfMix(mix, working); });
    record("water_frozen_percent",
        {"x", "frozen", percent(curve.steps[step].waterFrozen), "%",
            phrase("ice, of all the water, at {0} °C", Figure{curve.steps[step].temperature.value, 1})},
        [&](const Working& working) { return massOf(Constituent::Water, mix, working); });
}

void recordNoIce(Working& working, const FreezingCurve& curve, Celsius temperature)
{
    WorkingStep& step = working.found(iceSymbol({0.0}), Number{0.0, "%"}, Source::FreezingCurve);
    if (curve.freezingPoint)
        step.range = phrase("No ice at {0} °C: the mix begins to freeze at {1} °C.", Figure{temperature.value, 1},
            Figure{curve.freezingPoint->temperature.value, 1});
}

void recordColdestIce(Working& working, const FreezingCurve& curve, Celsius temperature)
{
    WorkingStep& step = working.found(
        iceSymbol(curve.steps.back().ice), iceOfStep(curve, curve.steps.size() - 1, "1", working), Source::FreezingCurve);
    if (temperature < curve.steps.back().temperature)
        step.range = phrase("The curve ends at {0} °C: what is ice there is taken for colder ones too.",
            Figure{curve.steps.back().temperature.value, 0});
}

void recordIceBetween(Working& working, const FreezingCurve& curve, std::size_t colder, Celsius temperature, MassFraction ice)
{
    const Symbol x1 = iceOfStep(curve, colder - 1, "1", working);
    const Symbol result = iceSymbol(ice);
    if (temperature == curve.steps[colder - 1].temperature) {
        working.found(result, x1, Source::FreezingCurve).origin = phrase("the curve has a point at this temperature");
        return;
    }
    const Symbol x2 = iceOfStep(curve, colder, "2", working);
    const Symbol t1 = temperatureOfStep(curve, colder - 1, "1", working);
    const Symbol t2 = temperatureOfStep(curve, colder, "2", working);
    const Symbol t = temperatureSymbol(temperature);
    working
        .found(result, x1 + (Formula(x2) - x1) * ((1.0 / Formula(t) - 1.0 / Formula(t1)) / (1.0 / Formula(t2) - 1.0 / Formula(t1))),
            Source::FreezingCurve)
        .method = betweenReciprocals();
}

void recordTemperatureAtStart(Working& working, const FreezingCurve& curve)
{
    working.found({"t", "", curve.steps.front().temperature.value, "°C", temperatureWith({0.0})},
        Symbol{"T", "f", curve.steps.front().temperature.value, "°C", phrase("freezing point"), working.keyOf("freezing_point_c")},
        Source::FreezingCurve);
}

void recordTemperatureBetween(
    Working& working, const FreezingCurve& curve, std::size_t colder, MassFraction ice, Celsius temperature)
{
    const Symbol x1 = iceOfStep(curve, colder - 1, "1", working);
    const Symbol x2 = iceOfStep(curve, colder, "2", working);
    const Formula t1 = temperatureOfStep(curve, colder - 1, "1", working);
    const Formula t2 = temperatureOfStep(curve, colder, "2", working);
    const Formula along = (Formula(iceWantedSymbol(ice)) - x1) / (Formula(x2) - x1);
    working
        .found({"t", "", temperature.value, "°C", temperatureWith(ice)}, 1.0 / (1.0 / t1 + (1.0 / t2 - 1.0 / t1) * along),
            Source::FreezingCurve)
        .method = betweenReciprocals();
}

Symbol iceWantedSymbol(MassFraction ice) { return {"x", "wanted", percent(ice), "%", phrase("ice that is asked for")}; }

}  // namespace firn
