#include "explain/exercise_parts.h"

#include "derivation/one_form.h"
#include "units/number.h"

#include <cmath>

namespace firn {

namespace {

int gramsDecimals(double grams)
{
    const double size = std::abs(grams);
    return size >= 10.0 ? 1 : size >= 1.0 ? 2 : 3;
}

}  // namespace

Exercise exercise(ExerciseKind kind, Sentence question, double tolerance, int decimals, const Working& solution)
{
    std::vector<WorkingStep> steps = solution.steps();
    const Symbol answer = steps.back().result;
    steps.back() = withSymbols(std::move(steps.back()), [&](Symbol& symbol) {
        if (isSame(symbol, answer))
            symbol.decimals = decimals;
    });
    Exercise made;
    made.kind = kind;
    made.question = std::move(question);
    made.solution = fromNumbersAsWritten(inOneForm(std::move(steps)));
    const Symbol& result = made.solution.back().result;
    made.answer = {result.value, tolerance, result.unit, decimals};
    return made;
}

Symbol given(Symbol symbol, int decimals)
{
    symbol.decimals = decimals;
    symbol.value = roundedTo(decimals, symbol.value);
    return symbol;
}

Symbol givenInGrams(Symbol symbol)
{
    const int decimals = gramsDecimals(symbol.value);
    return given(std::move(symbol), decimals);
}

Figure gramsFigure(double grams)
{
    const int decimals = gramsDecimals(grams);
    return {roundedTo(decimals, grams), decimals};
}

Sentence cell(double value, int decimals) { return phrase("{0}", Figure{value, decimals}); }
Sentence cell(Figure figure) { return phrase("{0}", figure); }

}  // namespace firn
