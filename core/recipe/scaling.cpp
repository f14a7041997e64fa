#include "recipe/scaling.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

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

/// The kitchen fraction next to a value: quarters and thirds, which measuring cups and spoons come in, and whole ones from ten on.
double toKitchenFraction(double value)
{
    constexpr std::array fractions{0.0, 0.25, 1.0 / 3.0, 0.5, 2.0 / 3.0, 0.75, 1.0};
    constexpr double countedWhole = 10.0;
    if (value >= countedWhole)
        return std::round(value);
    const double whole = std::floor(value);
    const double rest = value - whole;
    const auto nearest = std::min_element(
        fractions.begin(), fractions.end(), [rest](double a, double b) { return std::abs(a - rest) < std::abs(b - rest); });
    return whole + *nearest;
}

/// What a measure is taken with when it would have to be rounded too much.
std::optional<Unit> finerThan(Unit unit)
{
    switch (unit) {
    case Unit::Quart:
    case Unit::Pint:
        return Unit::Cup;
    case Unit::Cup:
    case Unit::FluidOunce:
        return Unit::Tablespoon;
    case Unit::Tablespoon:
        return Unit::Teaspoon;
    case Unit::ImperialPint:
        return Unit::ImperialCup;
    case Unit::ImperialCup:
    case Unit::ImperialFluidOunce:
    case Unit::MetricCup:
        return Unit::MetricTablespoon;
    case Unit::MetricTablespoon:
        return Unit::MetricTeaspoon;
    default:
        return std::nullopt;
    }
}

bool isFinest(Unit unit) { return unit == Unit::Teaspoon || unit == Unit::MetricTeaspoon; }

/// In the coarsest cup or spoon that shows the amount within a twentieth.
Amount inKitchenMeasures(Amount amount)
{
    constexpr double tolerance = 0.05;
    constexpr double leastSpoon = 0.125;  // the smallest of a set (common practice, no source)
    while (true) {
        const double shown = toKitchenFraction(amount.value);
        const auto finer = finerThan(amount.unit);
        if (!finer)
            return {amount.value > 0.0 ? std::max(shown, leastSpoon) : shown, amount.unit};
        if (std::abs(shown - amount.value) <= tolerance * amount.value)
            return {shown, amount.unit};
        amount = {amount.value * factsOf(amount.unit).size / factsOf(*finer).size, *finer};
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
    if (finerThan(amount.unit) || isFinest(amount.unit))
        return inKitchenMeasures(amount);
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
