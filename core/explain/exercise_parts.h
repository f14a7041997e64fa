// What the exercises are made with.
#pragma once

#include "explain/exercise_questions.h"

namespace firn {

/// An exercise whose answer is what the solution ends with. Tolerances are judgement: how well an answer can be worked out by hand.
Exercise exercise(ExerciseKind kind, Sentence question, double tolerance, int decimals, const Working& solution);

/// Grams with the digits that they are worth: 264.2, 5.35, 0.435.
Figure gramsFigure(double grams);

/// A number in a table.
Sentence cell(double value, int decimals);
Sentence cell(Figure figure);

}  // namespace firn
