// The one door: everything that Firn knows about a recipe. The window and the command line show this and compute nothing.
#pragma once

#include "analysis/instrument_readings.h"
#include "analysis/measured_beside.h"
#include "analysis/steps.h"
#include "derivation/working.h"
#include "freezing/freezing_curve.h"
#include "freezing/textbook.h"
#include "ingredients/catalogue.h"
#include "mix/mix.h"
#include "readings/readings.h"
#include "recipe/recipe.h"
#include "texture/texture.h"

#include <optional>
#include <string>
#include <vector>

namespace firn {

struct Conditions {
    Celsius serveAt{-12.0};
    Celsius freezerAt{-18.0};
    Celsius readAt{20.0};
    std::optional<Process> process;  // instead of the recipe's own
    Instruments instruments = {};    // that the cook reads
};

/// The conditions that a recipe asks for, and the usual ones where it does not: of one component, or of all of it. `process` stands for the
/// recipe's own. A temperature below 0 °C is that of the frozen parts, and says nothing about a part that is not frozen.
Conditions conditionsOf(const Recipe& recipe, std::optional<std::size_t> component = {}, std::optional<Process> process = {});

/// One row, weighed.
struct RowAnalysis {
    std::string text;          // "1 1/2 cups strawberries"
    std::string ingredientId;  // empty if the name is unknown
    std::string ingredientName;
    Grams mass;
    Sentence how;        // how the amount became a mass
    MassFraction share;  // of the whole mix
    Ribbon ribbon{};
    std::optional<Sentence> problem;  // why the row counts for nothing, or only in part
    std::string unknownName = {};     // as typed, where nothing is known by that name
    std::vector<std::string> suggestions = {};  // what an unknown name may mean, best first: names that find an ingredient
    std::optional<Sentence> takenAs = {};       // where a general word or a slip was taken for an ingredient: for which
    bool isProblemOfReading = false;  // it lies in the °Bx measured, not in the amount
};

/// Per gram of the whole mix.
struct Shares {
    MassFraction water, sugars, fat, milkFat, protein, alcohol, totalSolids, milkSolidsNotFat;
};

enum class Severity { Danger, Warning, Note };

/// What a cook should know before going on: safety, allergens, rows that could not be counted.
struct Caution {
    Severity severity;
    Sentence sentence;
};

struct Analysis {
    Conditions conditions;
    std::vector<std::vector<RowAnalysis>> components;  // as in the recipe
    std::vector<std::vector<StepOutcome>> steps;       // of each component
    Mix mix;  // of one component after its steps, or of the whole dessert; what all figures below are about
              // (freezing and texture: about those of its parts that are frozen)
    Ribbon ribbon{};
    Grams mass;
    Grams water;
    Millilitres volume_20c;
    double overrun_percent = 0.0;  // of the component, or of the whole by volume
    Millilitres finishedVolume;    // at 20 °C, with that air
    Shares shares;
    double alcohol_percentByVolume = 0.0;   // mL of ethanol in 100 mL of the mix at 20 °C, before air
    MassFraction sugarsUncertainty;         // one standard deviation, from the spread of the ingredients
    double sweetness_percentSucrose = 0.0;  // a sucrose solution of this many % by mass is as sweet, +-20 % of the figure
    double lactose_gPer100gWater = 0.0;
    FreezingCurve freezing;
    std::optional<TextbookFreezing> textbook;
    Texture texture;
    std::optional<Readings> readings;
    std::vector<Caution> cautions;                       // most serious first
    std::optional<InstrumentReadings> instruments = {};  // none where there are no readings
    MeasuredBeside measured = {};
};

/// Analyses one component of a recipe, or all of it as one mix where none is named (components that are part of others count once): after its
/// last step, or after so many of them. Never fails: what cannot be counted is said in the rows and the cautions. `workings`, if given, take
/// the steps of every figure, by its key in the report, as it is computed.
Analysis analyse(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions,
    std::optional<std::size_t> component = {}, std::optional<std::size_t> stepsDone = {}, Workings* workings = nullptr);

}  // namespace firn
