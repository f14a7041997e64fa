// Exercises made from a recipe, with numbers of their own for each seed, so that each student gets another sheet.
#pragma once

#include "explain/answer.h"
#include "explain/explain.h"

#include <cstdint>

namespace firn {

enum class ExerciseKind {
    SugarsByMass,
    SucroseToReach,
    FreezingPoint,
    Refractometer,
    Baume,
    IceWhenServed,
    AlcoholByVolume,
    SugarsByRefractometer
};

/// "Freezing point", as a heading.
std::string_view nameOf(ExerciseKind kind);

/// Numbers to work with, in rows under the names of their columns.
struct GivenTable {
    std::vector<Sentence> names;
    std::vector<std::vector<Sentence>> rows;  // a cell under each name
};

struct Exercise {
    ExerciseKind kind = ExerciseKind::SugarsByMass;
    Sentence question;
    ExpectedAnswer answer;
    std::vector<Sentence> hints;          // each says more than the one before
    std::vector<WorkingStep> solution;    // from what is given to the answer
    std::vector<Sentence> given = {};     // data to work with, printed under the question
    std::vector<GivenTable> tables = {};  // more of them
};

struct ExerciseSheet {
    std::uint64_t seed = 0;
    Recipe recipe;  // with the amounts that the exercises are about
    std::vector<Exercise> exercises;
    Mix mix = {};                                      // of that recipe, for who wants to work it out by hand
    std::vector<std::vector<std::string>> lines = {};  // the rows of each component, as a cook writes them: "0.4 g salt, a pinch"
    std::optional<Sentence> reason = {};               // why there are no exercises, where a row keeps them from being solved
};

/// A sheet of the exercises that the recipe has the stuff for: none on alcohol without alcohol, none at all for nothing, nor from a
/// recipe with a row that nothing is known about: `reason` says which. No exercise gives the answer of another away. Seed 0 leaves the
/// recipe's amounts as they are; any other one changes those of its rows by up to 15 %: in whole grams from 10 g up and to a tenth of a gram
/// below, pieces not at all, and to what a jug or a spoon measures elsewhere.
ExerciseSheet exercisesFor(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions, std::uint64_t seed);

}  // namespace firn
