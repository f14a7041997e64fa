#include "explain/reading_exercise.h"

#include "readings/measurement.h"
#include "solution/refraction.h"

#include <cmath>

namespace firn {

namespace {

constexpr double warmRoom_c = 30.0;
constexpr double scaleMadeFor_c = 20.0;
constexpr double leastShown_brix = 2.0;    // below, the correction is as large as the reading
constexpr double tolerance_percent = 0.3;  // judgement: how well it can be reckoned by hand

/// What stands on the board: a whole number of °Bx, and how warm the drop is.
std::optional<RefractometerReading> drawn(const Mix& mix, std::uint64_t seed, Dice& dice)
{
    const Celsius temperature{seed == 0 ? warmRoom_c : double(dice.between(24, 36))};
    const int away = seed == 0 ? 0 : dice.between(-2, 2);
    const auto shown = read(Refractometer{}, mix, temperature);
    if (!shown || !shown->value)
        return std::nullopt;
    const double brix = std::round(*shown->value) + away;
    return brix < leastShown_brix ? std::nullopt : std::optional(RefractometerReading{brix, temperature, {}});
}

Symbol shownSymbol(const RefractometerReading& reading)
{
    return {"B", "", reading.brix, "°Bx", phrase("what the refractometer shows"), {}, 1};
}

Symbol temperatureSymbol(const RefractometerReading& reading)
{
    return {"t", "", reading.temperature.value, "°C", phrase("temperature of the drop"), {}, 0};
}

/// What the scale would show at 20 °C, were it sucrose in water: the usual correction for temperature.
double recordCorrection(Working& working, const RefractometerReading& reading, double index)
{
    const Symbol corrected{
        "B", "20", *brixOfRefractiveIndex(index, reading.temperature), "°Bx", phrase("the reading corrected to 20 °C"), {}, 1};
    const Symbol correction{"ΔB", "", corrected.value - reading.brix, "°Bx", phrase("correction for temperature"), {}, 2};
    working
        .solved(corrected, function("n_sucrose", {corrected, temperatureSymbol(reading)}), indexSymbol(index), Source::Refraction,
            phrase(
                "Solved for the strength of sucrose in water that has this index at {0} °C.", Figure{reading.temperature.value, 0}))
        .range = phrase("A scale made for 20 °C, without temperature compensation; from 0 to 60 °C.");
    working.found(correction, corrected - Formula(shownSymbol(reading)), Source::Refraction);
    return corrected.value;
}

void recordSugars(Working& working, const RefractometerReading& reading, double index, const MixEstimate& found)
{
    const Symbol sugars{"w", "sugars", percent(found.sugar), "%", phrase("sugars in the mix")};
    WorkingStep& step = working.solved(sugars, function("n_mix", {sugars, temperatureSymbol(reading)}), indexSymbol(index),
        Source::Refraction, phrase("Solved for the sugars, in their own proportions; all else keeps its proportion to the water."));
    step.range = phrase("A mix like the recipe's: what it holds beside sugars and water is believed.");
    step.uncertainty = phrase("{0} points, one standard deviation.", Figure{percent(found.sugar_sd), 1});
}

std::vector<Sentence> hintsOn(const RefractometerReading& reading, double corrected_brix, const Mix& mix)
{
    // OIV-MA-AS2-02, Table I: about 0.07 °Bx a kelvin, 10 to 75 °Bx.
    std::vector<Sentence> hints{
        phrase("The scale is made for 20 °C. A warmer drop bends light less, so it shows too little: about 0.07 °Bx for each "
               "kelvin above."),
        phrase("{0} K above 20 °C make {1} °Bx: at 20 °C it would show {2}.", Figure{reading.temperature.value - scaleMadeFor_c, 0},
            Figure{corrected_brix - reading.brix, 1}, Figure{corrected_brix, 1})};
    const double others_g = mix.mass().value - sugars(mix).value - mix[Constituent::Water].value;
    constexpr double hardlyAny = 0.002;
    hints.push_back(others_g < hardlyAny * mix.mass().value
                        ? phrase("It is sugars and water and hardly anything else: °Bx are percent of sugars by mass.")
                        : phrase("Beside sugars and water the recipe's mix holds {0} % of other things. Acid, minerals, protein "
                                 "and alcohol show on the scale too, and all of them count in the mass.",
                            Figure{100.0 * others_g / mix.mass().value, 1}));
    return hints;
}

}  // namespace

std::optional<Exercise> sugarsByRefractometer(const Mix& mix, std::uint64_t seed, Dice& dice)
{
    const auto reading = drawn(mix, seed, dice);
    if (!reading || sugars(mix).value <= 0.0 || mix[Constituent::Water].value <= 0.0)
        return std::nullopt;
    const Measurement measured = *reading;
    const auto found = solve({&measured, 1}, {}, mix);
    if (!found || found->size() != 1)
        return std::nullopt;
    Working working;
    const double index = refractiveIndexAt(reading->instrument, reading->brix, reading->temperature, &working);
    const double corrected_brix = recordCorrection(working, *reading, index);
    recordSugars(working, *reading, index, found->front());

    Exercise exercise;
    exercise.kind = ExerciseKind::SugarsByRefractometer;
    exercise.question = phrase("The refractometer reads {0} °Bx at {1} °C, on a scale for 20 °C without compensation. How much "
                               "sugar does such a mix hold, in percent by mass?",
        Figure{reading->brix, 0}, Figure{reading->temperature.value, 0});
    exercise.answer = {percent(found->front().sugar), tolerance_percent, "%", 1};
    exercise.given = {phrase("At {0} °C a scale for 20 °C shows {1} °Bx too little.", Figure{reading->temperature.value, 0},
                          Figure{corrected_brix - reading->brix, 1}),
        phrase("What such a mix holds beside sugars and water makes it show {0} °Bx more than its sugars are percent by mass.",
            Figure{corrected_brix - percent(found->front().sugar), 1})};
    exercise.hints = hintsOn(*reading, corrected_brix, mix);
    exercise.solution = working.steps();
    return exercise;
}

}  // namespace firn
