#include "explain/lesson_steps.h"

#include "derivation/formula_text.h"
#include "freezing/curve_working.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

const char* const iceAtServing = "texture.ice_percent_at_serving";

using OnSymbol = std::function<void(Symbol&)>;

double sizeOf(const SeriesTerm& term) { return std::abs(valueOf(term.formula).value_or(0.0)); }

Formula retoldNode(const Number& number, const OnSymbol&) { return number; }

Formula retoldNode(Symbol symbol, const OnSymbol& onSymbol)
{
    if (onSymbol)
        onSymbol(symbol);
    return symbol;
}

Formula retoldNode(Operation operation, const OnSymbol& onSymbol)
{
    for (Formula& part : operation.parts)
        part = retold(part, onSymbol);
    return operation;
}

Formula retoldNode(Series series, const OnSymbol& onSymbol)
{
    std::ranges::stable_sort(series.terms, std::ranges::greater{}, sizeOf);
    for (SeriesTerm& term : series.terms)
        term.formula = retold(term.formula, onSymbol);
    return series;
}

}  // namespace

Formula retold(const Formula& formula, const OnSymbol& onSymbol)
{
    return std::visit([&](const auto& node) { return retoldNode(node, onSymbol); }, formula.node);
}

WorkingStep retold(WorkingStep step, const OnSymbol& onSymbol)
{
    step.formula = retold(step.formula, onSymbol);
    if (onSymbol)
        onSymbol(step.result);
    return step;
}

std::vector<WorkingStep> chosenSteps(
    const Workings& workings, const std::string& figure, std::initializer_list<std::string_view> results)
{
    std::vector<WorkingStep> chosen;
    const Working* working = workings.find(figure);
    if (!working)
        return chosen;
    for (const WorkingStep& step : working->steps()) {
        const bool isLast = &step == &working->steps().back();
        if (isLast || std::ranges::find(results, textOf(step.result)) != results.end())
            chosen.push_back(retold(step));
    }
    return chosen;
}

std::vector<WorkingStep> allSteps(const Workings& workings, const std::string& figure)
{
    std::vector<WorkingStep> steps;
    if (const Working* working = workings.find(figure)) {
        for (const WorkingStep& step : working->steps())
            steps.push_back(retold(step));
    }
    return steps;
}

std::vector<std::string> pointsOfIce(const Workings& workings)
{
    std::vector<std::string> points;
    const Working* working = workings.find(iceAtServing);
    if (!working)
        return points;
    for (const Symbol& symbol : symbolsOf(working->steps().back().formula)) {
        if (symbol.figure.starts_with("freezing_curve[") && symbol.figure.ends_with("ice_percent_of_mass"))
            points.push_back(symbol.figure);
    }
    return points;
}

std::vector<WorkingStep> stepsToIce(const Workings& workings)
{
    const std::vector<std::string> points = pointsOfIce(workings);
    if (points.size() == 1)
        return allSteps(workings, points.front());
    // Both neighbours are reckoned alike: their symbols need names of their own.
    std::vector<WorkingStep> steps;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        for (WorkingStep& step : allSteps(workings, points[i]))
            steps.push_back(retold(std::move(step), [&](Symbol& symbol) {
                const std::string name = textOf(symbol);
                if (name == "m_ice")
                    symbol.subscript += "," + number;
                else if (name == "x_ice" || name == concentrationName || name == "t")
                    symbol.subscript = number;
            }));
    }
    append(steps, allSteps(workings, iceAtServing));
    return steps;
}

std::vector<WorkingStep> stepsToMassOfIce(const Workings& workings)
{
    std::vector<WorkingStep> steps = stepsToIce(workings);
    if (steps.size() < 2 || textOf(steps[steps.size() - 2].result) != "m_ice")
        return {};
    steps.pop_back();
    return steps;
}

void append(std::vector<WorkingStep>& steps, std::vector<WorkingStep> more) { std::ranges::move(more, std::back_inserter(steps)); }

}  // namespace firn
