#include "compare/header_differences.h"

#include "recipe/scaling.h"
#include "units/temperature.h"
#include "units/text.h"

#include <algorithm>

namespace firn {

namespace {

using Values = std::vector<std::vector<Sentence>>;

struct LossInBrief {
    std::optional<Sentence> operator()(std::monostate) const { return std::nullopt; }
    std::optional<Sentence> operator()(const HeldBack& held) const { return phrase("{0} g held back", Figure{held.mass.value, 0}); }
    std::optional<Sentence> operator()(const Steeped& steeped) const
    {
        return phrase("{0} taken out: soaks up {1} g per gram, {2} % extracted", steeped.ingredient,
            Figure{steeped.soaksUp_gPerG, 1}, Figure{steeped.extracted_percent, 0});
    }
    std::optional<Sentence> operator()(const BoiledToMass& boiled) const
    {
        return phrase("boiled to {0} g", Figure{boiled.mass.value, 0});
    }
    std::optional<Sentence> operator()(const BoiledToBrix& boiled) const
    {
        return phrase("boiled to {0} °Bx", Figure{boiled.brix, 1});
    }
};

Sentence saidOrNot(const std::string& text) { return text.empty() ? phrase("none") : phrase("{0}", shortened(text)); }

class Collector {
public:
    explicit Collector(std::size_t recipes)
        : m_count(recipes)
    {
    }

    /// Adds the difference if the things, one of each recipe, are not all as the first.
    template <class Of, class Said>
    void add(std::string_view label, const std::string& part, Of of, Said said)
    {
        Values values;
        bool differs = false;
        for (std::size_t i = 0; i < m_count; ++i) {
            const auto thing = of(i);
            differs |= !(thing == of(0));
            values.push_back(said(thing));
        }
        if (differs)
            m_found.push_back({label, part, std::move(values)});
    }

    std::vector<HeaderDifference> done() && { return std::move(m_found); }

private:
    std::size_t m_count;
    std::vector<HeaderDifference> m_found;
};

std::vector<Sentence> only(Sentence sentence) { return {std::move(sentence)}; }

/// The names of all components, those without a name by their place.
std::vector<std::string> componentNames(std::span<const Recipe* const> recipes)
{
    std::vector<std::string> names;
    for (const Recipe* recipe : recipes)
        for (const Component& component : recipe->components)
            if (std::ranges::find(names, component.name) == names.end())
                names.push_back(component.name);
    return names;
}

std::optional<std::size_t> componentOf(const Recipe& recipe, const std::string& name, bool areSingle)
{
    if (areSingle)
        return 0;
    const auto found = std::ranges::find(recipe.components, name, &Component::name);
    return found == recipe.components.end() ? std::nullopt : std::optional(std::size_t(found - recipe.components.begin()));
}

template <class Thing, class Name>
std::vector<std::string> namesOf(std::span<const Recipe* const> recipes, std::vector<Thing> Recipe::*things, Name Thing::*name)
{
    std::vector<std::string> names;
    for (const Recipe* recipe : recipes)
        for (const Thing& thing : recipe->*things)
            if (std::ranges::find(names, thing.*name) == names.end())
                names.push_back(thing.*name);
    return names;
}

/// Those of all recipes that have one of this name; another make is no difference to a recipe that does without.
template <class Thing, class Name>
void addMakes(Collector& collector, std::string_view label, std::span<const Recipe* const> recipes,
    std::vector<Thing> Recipe::*things, Name Thing::*called)
{
    for (const std::string& name : namesOf(recipes, things, called)) {
        const auto of = [&](std::size_t i) -> const Thing* {
            const auto found = std::ranges::find(recipes[i]->*things, name, called);
            return found == (recipes[i]->*things).end() ? nullptr : &*found;
        };
        const Thing* first = nullptr;
        for (std::size_t i = 0; i < recipes.size() && !first; ++i)
            first = of(i);
        collector.add(
            label, name, [&](std::size_t i) { return !of(i)             ? 0
                                                     : *of(i) == *first ? 1
                                                                        : 2; },
            [](int make) {
                return only(make == 0 ? phrase("not in it") : make == 1 ? phrase("as first written") : phrase("changed"));
            });
    }
}

}  // namespace

std::vector<Sentence> inBrief(const Step& step)
{
    const std::string kind(keyOf(step.kind));
    std::vector<Sentence> parts;
    if (step.temperature_c && step.minutes)
        parts.push_back(
            phrase("{0} at {1} for {2} min", kind, chosenTemperatureFigure({*step.temperature_c}), Figure{*step.minutes, 0}));
    else if (step.temperature_c)
        parts.push_back(phrase("{0} at {1}", kind, chosenTemperatureFigure({*step.temperature_c})));
    else if (step.minutes)
        parts.push_back(phrase("{0} for {1} min", kind, Figure{*step.minutes, 0}));
    else
        parts.push_back(phrase("{0}", kind));
    if (auto loss = std::visit(LossInBrief{}, step.loss))
        parts.push_back(std::move(*loss));
    return parts;
}

std::vector<Step> stepsInSize(const Recipe& recipe, std::size_t component, double factor)
{
    Recipe holder;
    holder.components.front().steps = recipe.components.at(component).steps;
    return factor == 1.0 ? holder.components.front().steps : scaled(holder, factor).components.front().steps;
}

std::vector<HeaderDifference> headerDifferences(
    std::span<const Recipe* const> recipes, std::span<const Conditions> conditions, std::span<const double> batchFactors)
{
    Collector collector(recipes.size());
    const bool areSingle = std::ranges::all_of(recipes, [](const Recipe* recipe) { return recipe->components.size() == 1; });
    const std::vector<std::string> names = areSingle ? std::vector<std::string>{std::string()} : componentNames(recipes);
    for (const std::string& name : names) {
        const auto at = [&](std::size_t i) { return componentOf(*recipes[i], name, areSingle); };
        collector.add(
            "Frozen by", name, [&](std::size_t i) { return at(i) ? processOf(*recipes[i], *at(i)) : std::nullopt; },
            [](std::optional<Process> process) {
                return only(process ? phrase("{0}", std::string(keyOf(*process))) : phrase("not said"));
            });
        collector.add(
            "Overrun", name, [&](std::size_t i) { return at(i) ? overrunOf(*recipes[i], *at(i)) : 0.0; },
            [](double overrun) {
                return only(phrase("{0} %", Figure{overrun, 0}));
            });
        // In the first recipe's size, in which a larger batch holds back no more.
        collector.add(
            "Steps", name,
            [&](std::size_t i) { return at(i) ? stepsInSize(*recipes[i], *at(i), 1.0 / batchFactors[i]) : std::vector<Step>(); },
            [](const std::vector<Step>& steps) {
                std::vector<Sentence> parts;
                for (const Step& step : steps)
                    std::ranges::move(inBrief(step), std::back_inserter(parts));
                return parts.empty() ? only(phrase("none")) : parts;
            });
    }
    const auto degrees = [](Celsius temperature) { return only(phrase("{0}", temperatureFigure(temperature, 1))); };
    collector.add(
        "Served at", {}, [&](std::size_t i) { return conditions[i].serveAt; }, degrees);
    collector.add(
        "Freezer", {}, [&](std::size_t i) { return conditions[i].freezerAt; }, degrees);
    addMakes(collector, "Own ingredient", recipes, &Recipe::ingredients, &Ingredient::name);
    addMakes(collector, "Linked recipe", recipes, &Recipe::linked, &LinkedRecipe::name);
    collector.add(
        "Notes", {}, [&](std::size_t i) { return recipes[i]->notes; },
        [](const std::string& notes) { return only(saidOrNot(notes)); });
    return std::move(collector).done();
}

}  // namespace firn
