// What instruments show in a mix.
#include "explain/exercise_parts.h"
#include "readings/refractometer.h"
#include "solution/refraction.h"
#include "solution/sucrose.h"
#include "units/number.h"

#include <cmath>

namespace firn {

/// The scale's table is walked between its two nearest full degrees.
AskedExercise refractometer(const ExplainedAnalysis& explained)
{
    const auto& readings = explained.analysis.readings;
    if (!readings || readings->refractometer_brix.value_or(0.0) <= 0.0)
        return std::nullopt;
    constexpr int indexDecimals = 5;
    const double seen = roundedTo(indexDecimals, refractiveIndexSeen(readings->refractiveIndex, readings->temperature));
    const double below_brix = std::floor(*readings->refractometer_brix), above_brix = below_brix + 1.0;
    const double below = refractiveIndexOfBrix(below_brix), above = refractiveIndexOfBrix(above_brix);
    Symbol index = given(indexSymbol(seen), indexDecimals);
    index.meaning = phrase("refractive index of the mix, as the instrument sees it");
    const Symbol b1{"B", "1", below_brix, "°Bx", phrase("row of the table below it"), {}, 0};
    const Symbol b2{"B", "2", above_brix, "°Bx", phrase("row of the table above it"), {}, 0};
    Symbol n1 = given(indexSymbol(below), indexDecimals), n2 = given(indexSymbol(above), indexDecimals);
    n1.subscript = "1";
    n1.meaning = phrase("index in the lower row");
    n2.subscript = "2";
    n2.meaning = phrase("index in the upper row");
    const double shown = below_brix + (above_brix - below_brix) * (seen - below) / (above - below);
    Working working;
    working
        .found({"B", "", shown, "°Bx", phrase("what the refractometer shows"), {}, 1},
            b1 + (Formula(b2) - b1) * ((Formula(index) - n1) / (Formula(n2) - n1)), Source::SugarScale)
        .method = phrase("Looked up between two rows of the table, along a straight line.");
    Exercise made = exercise(ExerciseKind::Refractometer,
        phrase(
            "What does a refractometer without compensation show in the mix at {0} °C? In the instrument the mix has a refractive "
            "index of {1}.",
            Figure{readings->temperature.value, 0}, Figure{seen, indexDecimals}),
        1.0, 1, working);
    made.given = {phrase("Table of the scale: OIV-MA-AS2-02, Table II.")};
    GivenTable table{{phrase("°Bx"), phrase("Refractive index at 20 °C")}, {}};
    for (const auto& [brix, value] : {std::pair{below_brix, below}, std::pair{above_brix, above}})
        table.rows.push_back({cell(brix, 0), cell(value, indexDecimals)});
    made.tables = {std::move(table)};
    made.hints = {phrase("It sees what is dissolved in the water; fat is not in the light's way."),
        phrase("The mix lies between two rows of the table. Interpolate between them.")};
    const Mix& mix = explained.analysis.mix;
    const double water_g = mix[Constituent::Water].value, sugars_g = sugars(mix).value;
    made.answer.slips = {{100.0 * sugars_g / mix.mass().value,
                             phrase("Those are the sugars by mass. Acid, minerals, protein and alcohol show on the scale, too.")},
        {100.0 * sugars_g / (sugars_g + water_g),
            phrase("Those are sugars over sugars and water. Acid, minerals, protein and alcohol show on the scale, too.")}};
    return made;
}

AskedExercise baume(const ExplainedAnalysis& explained)
{
    const auto& readings = explained.analysis.readings;
    if (!readings)
        return std::nullopt;
    auto derivation = explain("readings.baume", explained.workings);
    if (!derivation)
        return std::nullopt;
    Working working;
    constexpr int densityDecimals = 4;
    working.add({withSymbols(derivation->steps.back(), [](Symbol& symbol) {
        if (symbol.name == "ρ")
            symbol = given(std::move(symbol), densityDecimals);
    })});
    const double density = readings->density.value, water = waterDensity({20.0}).value;
    Exercise made = exercise(ExerciseKind::Baume,
        phrase("A millilitre of the mix weighs {0} g, one of water at 20 °C {1} g. How many degrees Baumé is that?",
            Figure{density, densityDecimals}, Figure{water, densityDecimals}),
        0.2, 1, working);
    made.hints = {phrase("The scale for liquids heavier than water begins at 0 in water."),
        phrase("°Bé = 145 × (1 − density of water ÷ density of mix) (NBS Circular 440).")};
    made.answer.slips = {{145.0 * (density / water - 1.0), phrase("Divide by the density of the mix, not by that of water.")},
        {145.0 * (1.0 - 1.0 / density),
            phrase("Compare with water at 20 °C, a millilitre of which weighs a little less than 1 g.")}};
    return made;
}

}  // namespace firn
