#include "derivation/working.h"

namespace firn {

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
    return m_workings.try_emplace(home + figure, home).first->second;
}

const Working* Workings::find(const std::string& figure) const
{
    const auto found = m_workings.find(figure);
    return found == m_workings.end() || found->second.steps().empty() ? nullptr : &found->second;
}

}  // namespace firn
