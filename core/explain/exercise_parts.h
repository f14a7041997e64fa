// What the exercises are made with.
#pragma once

#include "explain/exercise_questions.h"

namespace firn {

/// An exercise whose answer is what the solution ends with, worked out from the numbers as they are printed: they are the data of the question, and a
/// pupil with a calculator comes to the printed answer. Tolerances are judgement: how well an answer can be worked out by hand.
Exercise exercise(ExerciseKind kind, Sentence question, double tolerance, int decimals, const Working& solution);

/// The symbol with the value that the question gives for it: rounded, and written with so many decimals in the solution too.
Symbol given(Symbol symbol, int decimals);
/// The same with the digits of gramsFigure().
Symbol givenInGrams(Symbol symbol);

/// Grams with the digits that they are worth: 264.2, 5.35, 0.435.
Figure gramsFigure(double grams);

/// A number in a table.
Sentence cell(double value, int decimals);
Sentence cell(Figure figure);

}  // namespace firn
