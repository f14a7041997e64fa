// One job with syrups, as a table: what is asked, and what follows from the answers. Every job is shown by the same form.
#pragma once

#include "gauges/marked_lines.h"
#include "ingredients/composition.h"
#include "recipe/recipe.h"
#include "syrup/pearson.h"
#include "units/quantity.h"
#include "units/sentence.h"

#include <QString>
#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace firn::app {

struct SoluteAmount {
    Constituent solute = Constituent::Sucrose;
    Grams mass;
};

/// What a number that was typed stands for.
using Typed = std::variant<MassFraction, Grams, Millilitres, Celsius, SoluteAmount>;

/// One way to mean a number: a scale, a unit, a substance.
struct Meaning {
    QString name;  // as the box beside the number offers it, where there are several
    QString unit;  // written behind the number; may be empty
    int mostDecimals = 0;
    double example = 0.0;
    std::function<QString(double number)> write;  // if not as number and unit
    std::function<Result<double>(std::string_view text)> read;
    std::function<Result<Typed>(double number)> take;
    std::function<std::optional<double>(const Typed& typed)> numberFor;  // that means the same in this way, if any does
};

struct Field {
    QString name;  // for finding it
    QString label;
    std::vector<Meaning> meanings;  // never empty; the first is the usual one
};

/// A Pearson square and the strengths that it was drawn from.
struct DrawnSquare {
    MassFraction first;
    MassFraction second;
    MassFraction wanted;
    Blend blend;
};

struct WorkedFigure {
    QString label;
    QString value;
    QString note;  // range and source
    Working working = Working();
};

struct Outcome {
    QString answer;  // what to do
    std::vector<WorkedFigure> figures;
    std::vector<MarkedLine> lines;  // cautions, then the reasoning
    std::vector<Row> rows;          // sugar and water, for the recipe
    std::optional<DrawnSquare> square;
    Working working = Working();  // how the answer comes about; without steps where there is nothing to tell
};

/// Why there is no outcome, and the field that it lies in.
struct Refusal {
    std::size_t field = 0;
    Sentence why;
};

using Worked = tl::expected<Outcome, Refusal>;

struct SyrupJob {
    QString name;
    std::vector<Field> fields;
    Worked (*work)(const std::vector<Typed>& typed);  // one for each field, in their order
    bool hasSquare = false;
};

/// Mix, make, boil down, dilute, dissolve, convert.
std::vector<SyrupJob> syrupJobs();

}  // namespace firn::app
