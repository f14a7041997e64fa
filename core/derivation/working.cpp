#include "derivation/working.h"

namespace firn {

namespace {

/// In a formula of numbers a value has no unit.
Formula withoutUnits(Formula formula)
{
    if (auto* number = std::get_if<Number>(&formula.node)) {
        number->unit.clear();
    } else if (auto* operation = std::get_if<Operation>(&formula.node)) {
        for (Formula& part : operation->parts)
            part = withoutUnits(std::move(part));
    } else if (auto* sum = std::get_if<Series>(&formula.node)) {
        for (SeriesTerm& term : sum->terms)
            term.formula = withoutUnits(std::move(term.formula));
    }
    return formula;
}

void changeSymbols(Formula& formula, const std::function<void(Symbol&)>& change)
{
    if (auto* symbol = std::get_if<Symbol>(&formula.node)) {
        change(*symbol);
    } else if (auto* operation = std::get_if<Operation>(&formula.node)) {
        for (Formula& part : operation->parts)
            changeSymbols(part, change);
    } else if (auto* sum = std::get_if<Series>(&formula.node)) {
        Formula body = *sum->body;
        changeSymbols(body, change);
        sum->body = std::make_shared<const Formula>(std::move(body));
        for (SeriesTerm& term : sum->terms)
            changeSymbols(term.formula, change);
    }
}

}  // namespace

WorkingStep withSymbols(WorkingStep step, const std::function<void(Symbol&)>& change)
{
    change(step.result);
    changeSymbols(step.formula, change);
    return step;
}

Formula withValues(const WorkingStep& step)
{
    Formula values = withValues(step.formula, &step.result);
    return step.isInNumbers ? withoutUnits(std::move(values)) : values;
}

Sentence noteOnNumbers() { return phrase("In numbers: each symbol stands for its number in the unit given with it."); }

WorkingStep& Working::found(Symbol result, Formula right, Source source)
{
    Formula formula = equation(result, std::move(right));
    return m_steps.emplace_back(WorkingStep{std::move(result), std::move(formula), source});
}

WorkingStep& Working::solved(Symbol result, Formula left, Formula right, Source source, Sentence method)
{
    WorkingStep& step = m_steps.emplace_back(WorkingStep{std::move(result), equation(std::move(left), std::move(right)), source});
    step.method = std::move(method);
    return step;
}

void Working::add(const std::vector<WorkingStep>& steps) { m_steps.insert(m_steps.end(), steps.begin(), steps.end()); }

Working& Workings::of(const std::string& figure, const std::string& home)
{
    return m_workings.try_emplace(home + figure, m_isApart ? Working::apart() : Working(home)).first->second;
}

const Working* Workings::find(const std::string& figure) const
{
    const auto found = m_workings.find(figure);
    return found == m_workings.end() || found->second.steps().empty() ? nullptr : &found->second;
}

}  // namespace firn
