#include "readings/sugar_by_boiling.h"

#include "readings/measurement_working.h"
#include "readings/mix_family.h"
#include "readings/roots.h"
#include "readings/target.h"
#include "solution/volume.h"

#include <cmath>

namespace firn {

std::vector<ErrorPart> errorsOf(const BoilingReading& reading, KelvinDifference halfGap)
{
    // Water's boiling point at this pressure and one sd above it.
    const auto boils = [](Hectopascals pressure) {
        Mix water;
        water.amounts[Constituent::Water] = {1.0};
        return boilingPointOf(water, pressure)->temperature;
    };
    const KelvinDifference weather = boils(reading.pressure + reading.pressure_sd) - boils(reading.pressure);
    return {{phrase("the thermometer"), reading.thermometer_sd.value}, {phrase("the pressure of the air"), weather.value},
        {phrase("the tables of boiling points disagree"), halfGap.value}};
}

namespace {

/// Where the mix that was found boils, and that this is what the thermometer showed.
void record(Workings& workings, const BoilingReading& reading, const MixEstimate& found, MassFraction least, MassFraction most)
{
    recordKnown(workings, Unknown::Alcohol, found, KnownFrom::Recipe);
    Working& working = workings.of("measured.sugars_percent");
    Working ofMix = Working::apart();
    [[maybe_unused]] const auto boils = boilingPointOf(found.mix, reading.pressure, &ofMix);
    std::vector<WorkingStep> steps = ofMix.steps();
    steps.front().origin = phrase("for 1 g of the mix so found");
    working.add(steps);
    const Symbol sugars = symbolOf(Unknown::Sugars, found);
    const Symbol shown{"t", "read", reading.boilsAt.value, "°C", phrase("what the thermometer showed in the boiling mix"), {}, 1};
    WorkingStep& step = working.solved(sugars,
        function("t_boils", {sugars, Number{reading.pressure.value, "hPa", true}},
            phrase("boiling point of a mix with so much sugar, under that pressure")),
        shown, Source::BoilingPoint,
        phrase("Solved for the share of sugars between {0} and {1} %. The steps above are those of 1 g of the mix so found, which "
               "boils at what was read.",
            Figure{percent(least), 0}, Figure{percent(most), 0}));
    step.range = phrase("All but the sugars is believed as the recipe has it, in the same proportions.");
    step.uncertainty = phrase("Thermometer, weather and tables together: {0} %.", Figure{percent(found.sugar_sd), 1});
}

}  // namespace

Result<MixEstimate> sugarByBoiling(const BoilingReading& reading, const Mix& background, Workings* workings)
{
    constexpr Hectopascals highest{1100.0};  // below sea level
    constexpr Hectopascals lowest{500.0};    // some 5500 m
    if (reading.pressure < lowest || reading.pressure > highest)
        return failure(phrase("The pressure of the air lies between {0} and {1} hPa. Correct it.", Figure{lowest.value, 0},
            Figure{highest.value, 0}));
    const MixFamily family(background, MixFamily::Alcohol::StaysInTheWater);
    const auto at = [&](double sugar) { return family.at({sugar}, {}); };
    if (const auto possible = boilingPointOf(at(family.leastSugar({}).value), reading.pressure); !possible)
        return failure(possible.error());

    const double least = family.leastSugar({}).value;
    double most = family.mostSugar({}).value;
    // The tables end at 80 % of dissolved solids in the water, which other things than sugar may be part of.
    const auto tooStrong = [&](double sugar) { return (strengthOf(at(sugar)).dissolvedSolids - strongestBoiled).value; };
    if (const double excess = tooStrong(most); excess > 0.0)
        most = rootBetween(tooStrong, least, most, tooStrong(least), excess);
    const auto tooHot_k = [&](double sugar) {
        return (boilingPointOf(at(sugar), reading.pressure)->temperature - reading.boilsAt).value;
    };
    const double atLeast = tooHot_k(least);
    const double atMost = tooHot_k(most);
    const auto sd_k = [&](double sugar) {
        return combined(errorsOf(reading, boilingPointOf(at(sugar), reading.pressure)->halfGap));
    };
    if (atLeast > toleratedDeviations * sd_k(least))
        return failure(phrase("At this pressure the mix boils at {0} even without sugar, and {1} is less. Check the thermometer in "
                              "boiling water, and the altitude.",
            temperatureFigure({reading.boilsAt.value + atLeast}, 1), temperatureFigure(reading.boilsAt, 1)));
    if (atMost < -toleratedDeviations * sd_k(most))
        return failure(
            phrase("{0} is hotter than {1}, where the tables end with {2} % sugar: all that can be said is that there is "
                   "more.",
                temperatureFigure(reading.boilsAt, 1), temperatureFigure({reading.boilsAt.value + atMost}, 1),
                Figure{100.0 * most, 0}));
    const double sugar = atLeast >= 0.0 ? least : atMost <= 0.0 ? most : rootBetween(tooHot_k, least, most, atLeast, atMost);
    constexpr double step = 1e-4;
    const double other = sugar + step <= most ? sugar + step : sugar - step;
    const double slope_k = (tooHot_k(other) - tooHot_k(sugar)) / (other - sugar);
    const Mix mix = at(sugar);
    const MixEstimate found{{sugar}, {sd_k(sugar) / slope_k}, shareOf(mix[Constituent::Ethanol], mix), {}, mix};
    if (workings)
        record(*workings, reading, found, {least}, {most});
    return found;
}

}  // namespace firn
