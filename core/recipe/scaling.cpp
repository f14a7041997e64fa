#include "recipe/scaling.h"

#include <algorithm>
#include <array>
#include <cmath>

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

/// The multiple of the step next to a value, but at least one step of a value that is not zero.
double toStep(double value, double step)
{
    if (value <= 0.0 || step <= 0.0)
        return value;
    return std::max(1.0, std::round(value / step)) * step;
}

/// The kitchen fraction next to a value: quarters and thirds, which measuring cups and spoons come in.
double toKitchenFraction(double value)
{
    constexpr std::array fractions{0.0, 0.25, 1.0 / 3.0, 0.5, 2.0 / 3.0, 0.75, 1.0};
    const double whole = std::floor(value);
    const double rest = value - whole;
    const auto nearest = std::min_element(
        fractions.begin(), fractions.end(), [rest](double a, double b) { return std::abs(a - rest) < std::abs(b - rest); });
    return std::max(whole + *nearest, value > 0.0 ? fractions[1] : 0.0);
}

bool isMeasuredInFractions(Unit unit)
{
    switch (unit) {
    case Unit::Teaspoon:
    case Unit::Tablespoon:
    case Unit::Cup:
    case Unit::MetricTeaspoon:
    case Unit::MetricTablespoon:
    case Unit::MetricCup:
    case Unit::ImperialCup:
    case Unit::FluidOunce:
    case Unit::ImperialFluidOunce:
    case Unit::Pint:
    case Unit::Quart:
    case Unit::ImperialPint:
        return true;
    default:
        return false;
    }
}

Amount roundedAmount(const Amount& amount, const Rounding& rounding)
{
    const UnitFacts& facts = factsOf(amount.unit);
    if (facts.dimension == Dimension::Mass)
        return {toStep(amount.value, rounding.scaleStep.value / facts.size), amount.unit};
    if (!rounding.toSpoonFractions || facts.dimension == Dimension::Share)
        return amount;
    if (facts.dimension == Dimension::Count)
        return {toStep(amount.value, 0.5), amount.unit};
    if (isMeasuredInFractions(amount.unit))
        return {toKitchenFraction(amount.value), amount.unit};
    constexpr double jugStep_mL = 5.0;
    return {toStep(amount.value, jugStep_mL / facts.size), amount.unit};
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

Recipe rounded(const Recipe& recipe, const Rounding& rounding)
{
    Recipe result = recipe;
    for (Component& component : result.components) {
        for (Row& row : component.rows)
            row.amount = roundedAmount(row.amount, rounding);
    }
    return result;
}

}  // namespace firn
