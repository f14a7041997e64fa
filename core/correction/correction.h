// What to do about a mix whose strength is not what it should be: why it strayed, and what to add.
#pragma once

#include "correction/strength_target.h"
#include "derivation/working.h"
#include "ingredients/catalogue.h"
#include "recipe/recipe.h"
#include "texture/texture.h"

#include <optional>
#include <string>
#include <vector>

namespace firn {

/// What a reading found in the mix; nothing measured means the mix is as the recipe says.
struct MeasuredState {
    std::optional<MassFraction> sugars;
    MassFraction sugars_sd;  // one standard deviation of the reading
    std::optional<MassFraction> alcohol = {};
};

enum class CauseKind {
    Spread,       // real fruit, milk or juice differs from the table
    LeftOut,      // the row never went in
    Doubled,      // the row went in twice
    WrongAmount,  // the row was weighed or measured wrongly
    WaterLost     // boiled or dried off without being in the recipe
};

/// A row as it really was.
struct RowAsItWas {
    std::size_t index;       // of the component
    std::optional<Row> row;  // none: it never went in
};

/// One slip, or the spread of one or two ingredients, that would explain the reading.
struct Cause {
    CauseKind kind;
    std::vector<RowAsItWas> rows;  // put there, the recipe computes what was measured; empty where no row can say it
    double oddity = 0.0;           // how unlikely it is, in standard deviations; for slips a judgement, see causes.cpp
    Sentence sentence;
};

/// What a mix is like, before and after.
struct MixFigures {
    Grams mass;
    MassFraction sugars;
    MassFraction acid;
    MassFraction alcohol;
    std::optional<double> refractometer_brix;  // at 20 °C
    double sweetness_percentSucrose = 0.0;
    std::optional<Celsius> freezingPoint;
    TextureClass textureClass = TextureClass::Nothing;
    Firmness firmness = Firmness::Liquid;  // at the serving temperature
};

/// One way to the target.
struct CorrectionChoice {
    std::string name;       // of what is added
    std::vector<Row> rows;  // to add, in grams, exactly; see weighable()
    Grams added;
    Grams added_sd;  // one standard deviation, from that of the reading
    Mix mix;         // with it
    MixFigures after;
    double disturbance = 0.0;       // see disturbanceOf in choices.cpp; smaller is better
    std::vector<Sentence> effects;  // on mass, sweetness, sourness, alcohol, freezing point and texture
    Working working = Working();    // of `added`
};

struct CorrectionPlan {
    Mix now;
    MixFigures recipe;  // as it is written
    MixFigures nowFigures;
    MixFigures intended;  // the recipe with its own sugars brought to the target: what a choice should come near
    Sentence diagnosis;
    std::vector<Cause> causes;              // likeliest first
    std::vector<CorrectionChoice> choices;  // least disturbing first
    std::vector<Sentence> leftOut;          // what one might expect among the choices, and why it is not
    std::vector<Sentence> cautions;         // what this reckoning could not take into account
};

/// What is brought to the target: the batch that was measured, to which something is added as it is now, or the recipe, whose rows change and go
/// through its steps.
enum class Corrected { Batch, Recipe };

/// Fails where there is no such component, nothing in it has a weight, the measured sugars leave no water, or no share of sugars gives the target.
Result<CorrectionPlan> corrections(const Recipe& recipe, const Catalogue& catalogue, std::size_t component,
    const MeasuredState& measured, const StrengthTarget& target, Corrected what = Corrected::Batch);

/// The rows in amounts that a scale of this resolution shows; never nothing.
std::vector<Row> weighable(const std::vector<Row>& rows, Grams scaleStep);

/// The component with the rows as a cause says that they were, and the rows of a choice added: to a row of the same ingredient in grams where
/// there is one, else behind the last. With a cause of kind Spread, or none and nothing measured, its mix becomes what
/// the plan says; a slip also changes the mass, so put it right alone and ask for corrections again, without a measurement. Rows in % of the mix become
/// grams, or they would grow with what is added. The component must be one of the recipe's and the cause one of this recipe's plan.
Component corrected(const Recipe& recipe, const Catalogue& catalogue, std::size_t component, const std::vector<Row>& added,
    const std::optional<Cause>& cause = {});

}  // namespace firn
