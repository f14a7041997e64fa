// Recipes as a kitchen might write them, and odder ones.
#pragma once

#include "../shipped_catalogue.h"
#include "any_recipe.h"

namespace firn {

/// An id of the catalogue, mostly; one of the few that make odd mixes; another component; or a name that nobody knows.
inline std::string anyIngredient(std::size_t components)
{
    static const std::vector<std::string> odd{
        "water", "ethanol", "sucrose", "salt", "citric-acid", "glycerol", "whole milk", "gin", "<b>unknown</b> & Sons", ""};
    const auto all = shippedCatalogue().all();
    switch (*rc::gen::inRange(0, 6)) {
    case 0:
    case 1:
        return *rc::gen::elementOf(odd);
    case 2:
        return "part " + std::to_string(*rc::gen::inRange<std::size_t>(0, components));
    default:
        return all[*rc::gen::inRange<std::size_t>(0, all.size())].id;
    }
}

inline Amount anyKitchenAmount()
{
    if (*rc::gen::inRange(0, 10) == 0)
        return anyAmount();
    const double value = *rc::gen::inRange(0, 4000) / 8.0;
    const bool isGrams = *rc::gen::inRange(0, 3) > 0;
    return {value, isGrams ? Unit::Gram : allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit};
}

inline Loss anyLoss(const Component& component)
{
    const double size = *rc::gen::inRange(0, 6000) / 8.0;
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        return HeldBack{{size}};
    case 1:
        return Steeped{component.rows.empty() ? "" : component.rows.front().ingredient, size / 300.0, size / 8.0};
    case 2:
        return BoiledToMass{{size}};
    case 3:
        return BoiledToBrix{size / 10.0};
    default:
        return {};
    }
}

inline Recipe anyRecipe()
{
    Recipe recipe;
    recipe.title = anyText(printableCharacters());
    recipe.overrun_percent = *rc::gen::inRange(0, 100);
    recipe.process = *rc::gen::elementOf(allProcesses);
    const auto components = *rc::gen::inRange<std::size_t>(1, 4);
    recipe.components.resize(components);
    for (std::size_t i = 0; i < components; ++i) {
        Component& component = recipe.components[i];
        component.name = "part " + std::to_string(i);
        const int rows = *rc::gen::inRange(0, 15);
        for (int row = 0; row < rows; ++row) {
            component.rows.push_back({anyIngredient(components), anyKitchenAmount(), {}, {}});
            if (*rc::gen::inRange(0, 8) == 0)
                component.rows.back().measuredBrix = *rc::gen::inRange(0, 300) / 10.0;
        }
        const int steps = *rc::gen::inRange(0, 3);
        for (int step = 0; step < steps; ++step)
            component.steps.push_back(Step{StepKind::Strain, {}, {}, anyLoss(component), {}, {}});
    }
    return recipe;
}

}  // namespace firn
