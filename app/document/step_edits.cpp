#include "document/step_edits.h"

#include "document/change_value.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct StepsOf {
    using Value = std::vector<Step>;
    std::size_t component;
    auto& in(auto& recipe) const { return recipe.components.at(component).steps; }
    friend bool operator==(const StepsOf&, const StepsOf&) = default;
};

struct StepAt {
    using Value = Step;
    std::size_t component;
    std::size_t index;
    auto& in(auto& recipe) const { return recipe.components.at(component).steps.at(index); }
    friend bool operator==(const StepAt&, const StepAt&) = default;
};

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::StepEdits)
};

}  // namespace

void addStep(Document& document, std::size_t component, StepKind kind)
{
    const StepsOf place{component};
    std::vector<Step> after = place.in(document.recipe());
    after.emplace_back().kind = kind;
    change(document, Words::tr("Add step"), place, std::move(after));
}

void removeSteps(Document& document, std::size_t component, const std::vector<std::size_t>& steps)
{
    if (steps.empty())
        return;
    const StepsOf place{component};
    const std::vector<Step>& before = place.in(document.recipe());
    std::vector<Step> after;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (std::ranges::find(steps, i) == steps.end())
            after.push_back(before[i]);
    const QString name = steps.size() == 1 ? Words::tr("Delete step “%1”").arg(translatedName(keyOf(before.at(steps.front()).kind)))
                                           : Words::tr("Delete %n steps", nullptr, int(steps.size()));
    change(document, name, place, std::move(after));
}

void moveStep(Document& document, std::size_t component, std::size_t from, std::size_t to)
{
    const StepsOf place{component};
    std::vector<Step> after = place.in(document.recipe());
    const QString name = Words::tr("Move step “%1”").arg(translatedName(keyOf(after.at(from).kind)));
    const Step moved = after.at(from);
    after.erase(after.begin() + std::ptrdiff_t(from));
    after.insert(after.begin() + std::ptrdiff_t(to), moved);
    change(document, name, place, std::move(after));
}

void changeStep(Document& document, std::size_t component, std::size_t index, const Step& step, Gesture gesture)
{
    change(document, Words::tr("Change step “%1”").arg(translatedName(keyOf(step.kind))), StepAt{component, index}, step, gesture);
}

}  // namespace firn::app
