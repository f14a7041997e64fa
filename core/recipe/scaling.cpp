#include "recipe/scaling.h"

namespace firn {

namespace {

Loss scaledLoss(const Loss& loss, double factor)
{
    Loss result = loss;
    if (auto* held = std::get_if<HeldBack>(&result))
        held->mass = held->mass * factor;
    if (auto* boiled = std::get_if<BoiledToMass>(&result))
        boiled->mass = boiled->mass * factor;
    return result;
}

}  // namespace

Recipe scaled(const Recipe& recipe, double factor)
{
    Recipe result = recipe;
    for (Component& component : result.components) {
        for (Row& row : component.rows) {
            if (factsOf(row.amount.unit).dimension != Dimension::Share)
                row.amount.value *= factor;
        }
        for (Step& step : component.steps)
            step.loss = scaledLoss(step.loss, factor);
    }
    return result;
}

}  // namespace firn
