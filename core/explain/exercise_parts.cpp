#include "explain/exercise_parts.h"

#include <cmath>

namespace firn {

Exercise exercise(ExerciseKind kind, Sentence question, double tolerance, int decimals, const Working& solution)
{
    Exercise made;
    made.kind = kind;
    made.question = std::move(question);
    made.solution = solution.steps();
    const Symbol& result = made.solution.back().result;
    made.answer = {result.value, tolerance, result.unit, decimals};
    return made;
}

Figure gramsFigure(double grams)
{
    const double size = std::abs(grams);
    return {grams, size >= 10.0 ? 1 : size >= 1.0 ? 2 : 3};
}

Sentence cell(double value, int decimals) { return phrase("{0}", Figure{value, decimals}); }
Sentence cell(Figure figure) { return phrase("{0}", figure); }

}  // namespace firn
