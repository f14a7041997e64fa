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

struct Exercise {
    ExerciseKind kind = ExerciseKind::SugarsByMass;
    Sentence question;
    ExpectedAnswer answer;
    std::vector<Sentence> hints;        // each says more than the one before
    std::vector<WorkingStep> solution;  // ends with the answer
    std::vector<Sentence> given = {};   // data to reckon with, printed under the question: rows of tables, densities
};

struct ExerciseSheet {
    std::uint64_t seed = 0;
    Recipe recipe;  // with the amounts that the exercises are about
    std::vector<Exercise> exercises;
    Mix mix = {};                         // of that recipe, for who wants to reckon by hand
    std::optional<Sentence> reason = {};  // why there are no exercises, where a row keeps them from being solved
};

/// A sheet of the exercises that the recipe has the stuff for: none on alcohol without alcohol, none at all for nothing, nor from a
/// recipe with a row that nothing is known about: `reason` says which. Seed 0 leaves the
/// recipe's amounts as they are; any other one changes those of its rows by up to 15 %, in whole grams where they are in grams and to three digits elsewhere.
ExerciseSheet exercisesFor(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions, std::uint64_t seed);

}  // namespace firn
