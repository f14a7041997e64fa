#include "explain/exercise_questions.h"
#include "readings/measurement.h"
#include "solution/refraction.h"
#include "units/number.h"

#include <cmath>

namespace firn {

namespace {

constexpr double warmRoom_c = 30.0;
constexpr double scaleMadeFor_c = 20.0;
constexpr double leastShown_brix = 2.0;    // below, the correction is as large as the reading
constexpr double tolerance_percent = 0.3;  // judgement: how well it can be worked out by hand
constexpr int givenDecimals = 2, answerDecimals = 1;

/// What stands on the board: a whole number of °Bx, and how warm the drop is. So far from what the recipe's own mix shows that it does not
/// give that away.
std::optional<RefractometerReading> drawn(const Mix& mix, std::uint64_t seed, Dice& dice)
{
    constexpr int least_brix = 3, most_brix = 5;
    const Celsius temperature{seed == 0 ? warmRoom_c : double(dice.between(24, 36))};
    int away = seed == 0 ? -least_brix : dice.between(least_brix, most_brix) * (dice.between(0, 1) == 0 ? -1 : 1);
    const auto shown = read(Refractometer{}, mix, temperature);
    if (!shown || !shown->value)
        return std::nullopt;
    if (std::round(*shown->value) + away < leastShown_brix)
        away = std::abs(away);
    return RefractometerReading{std::round(*shown->value) + away, temperature, {}};
}

/// The two steps from the reading to the sugars, as they are given: rounded to hundredths.
struct Corrections {
    double temperature_brix;  // what a warm drop shows too little
    double others_brix;       // what other things than sugars show
};

std::vector<Sentence> givenOf(const RefractometerReading& reading, const Corrections& corrections)
{
    const Figure temperature{reading.temperature.value, 0}, others{std::abs(corrections.others_brix), givenDecimals};
    return {phrase("At {0} °C a scale for 20 °C shows {1} °Bx too little.", temperature,
                Figure{corrections.temperature_brix, givenDecimals}),
        corrections.others_brix >= 0.0
            ? phrase(
                "What such a mix holds beside sugars and water makes it show {0} °Bx more than its sugars are percent by mass.",
                others)
            : phrase(
                "What such a mix holds beside sugars and water makes it show {0} °Bx less than its sugars are percent by mass.",
                others)};
}

std::vector<Sentence> hintsOn(const RefractometerReading& reading, const Corrections& corrections, const Mix& mix)
{
    // OIV-MA-AS2-02, Table I: about 0.07 °Bx a kelvin, 10 to 75 °Bx.
    std::vector<Sentence> hints{
        phrase("The scale is made for 20 °C. A warmer drop bends light less, so it shows too little: about 0.07 °Bx for each "
               "degree above."),
        phrase("{0} above 20 °C make {1} °Bx: at 20 °C it would show {2}.",
            temperatureDifferenceFigure({reading.temperature.value - scaleMadeFor_c}, 0), Figure{corrections.temperature_brix, 1},
            Figure{reading.brix + corrections.temperature_brix, 1})};
    const double others_g = mix.mass().value - sugars(mix).value - mix[Constituent::Water].value;
    constexpr double hardlyAny = 0.002;
    hints.push_back(others_g < hardlyAny * mix.mass().value
                        ? phrase("It is sugars and water and hardly anything else: °Bx are percent of sugars by mass.")
                        : phrase("Beside sugars and water the recipe's mix holds {0} % of other things. Acid, minerals, protein "
                                 "and alcohol show on the scale too, and all of them count in the mass.",
                            Figure{100.0 * others_g / mix.mass().value, 1}));
    return hints;
}

std::vector<WorkingStep> solutionOf(const RefractometerReading& reading, const Corrections& corrections, double sugars_percent)
{
    const Symbol shown{"B", "shown", reading.brix, "°Bx", phrase("what the refractometer shows"), {}, 0};
    const Symbol warm{"ΔB", "t", corrections.temperature_brix, "°Bx", phrase("correction for temperature"), {}, givenDecimals};
    const Symbol at20{
        "B", "20", reading.brix + corrections.temperature_brix, "°Bx", phrase("the reading corrected to 20 °C"), {}, givenDecimals};
    const Symbol others{
        "ΔB", "others", corrections.others_brix, "°Bx", phrase("what other things than sugars show"), {}, givenDecimals};
    Working working;
    working.found(at20, shown + Formula(warm), Source::Refraction).range =
        phrase("A scale made for 20 °C, without temperature compensation.");
    working
        .found({"w", "sugars", sugars_percent, "%", phrase("sugars in the mix"), {}, answerDecimals}, at20 - Formula(others),
            Source::Refraction)
        .range = phrase("A mix like the recipe's: what it holds beside sugars and water is taken from it.");
    return working.steps();
}

std::vector<Slip> slipsOn(const RefractometerReading& reading, const Corrections& corrections)
{
    const auto [warm, others] = corrections;
    return {{reading.brix, phrase("That is the reading itself. Correct it for temperature, and for what else shows on the scale.")},
        {reading.brix + warm, phrase("The temperature is corrected. Subtract what other things than sugars show.")},
        {reading.brix - others, phrase("The other things are subtracted. Correct the reading for temperature, too.")},
        {reading.brix - warm - others, phrase("A warm drop shows too little: add the correction for temperature.")},
        {reading.brix + warm + others, phrase("What other things show is not sugar: subtract it.")}};
}

}  // namespace

AskedExercise sugarsByRefractometer(const Mix& mix, std::uint64_t seed, Dice& dice)
{
    const auto reading = drawn(mix, seed, dice);
    if (!reading || sugars(mix).value <= 0.0 || mix[Constituent::Water].value <= 0.0)
        return std::nullopt;
    const Measurement measured = *reading;
    const auto found = solve({&measured, 1}, {}, mix);
    if (!found || found->size() != 1)
        return std::nullopt;
    const auto at20_brix = brixOfRefractiveIndex(refractiveIndexAt({}, reading->brix, reading->temperature), reading->temperature);
    if (!at20_brix)
        return std::nullopt;
    // Rounded as they are given, so that who adds them up comes to the answer.
    const double warm_brix = roundedTo(givenDecimals, *at20_brix - reading->brix);
    const Corrections corrections{warm_brix, roundedTo(givenDecimals, reading->brix + warm_brix - percent(found->front().sugar))};
    const double sugars_percent = reading->brix + corrections.temperature_brix - corrections.others_brix;

    Exercise exercise;
    exercise.kind = ExerciseKind::SugarsByRefractometer;
    exercise.question = phrase("Another batch, with more or less water in it, reads {0} °Bx at {1} °C on a refractometer for 20 °C "
                               "without compensation. How much sugar does it hold, in percent by mass?",
        Figure{reading->brix, 0}, Figure{reading->temperature.value, 0});
    exercise.answer = {sugars_percent, tolerance_percent, "%", answerDecimals, {}, slipsOn(*reading, corrections)};
    exercise.given = givenOf(*reading, corrections);
    exercise.hints = hintsOn(*reading, corrections, mix);
    exercise.solution = solutionOf(*reading, corrections, sugars_percent);
    return exercise;
}

}  // namespace firn
