#include "recipe/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

namespace firn {

namespace {

constexpr double tolerance_percent = mostRounding_percent * (1.0 + 1e-9);  // so that exactly that much still passes

// A scale for spices and gums, beside the one for everything else (common practice, no source).
constexpr Grams fineStep{0.1};
constexpr Grams weighedFinely{10.0};

/// How a unit of the kitchen is said, and what is taken instead where it cannot say the amount (sets of measuring cups and spoons, common
/// practice, no source).
struct KitchenUnit {
    Unit unit;
    std::array<int, 2> parts;  // halves, thirds … that it is filled to; zero for none
    std::optional<Unit> smaller;
    double mostInsteadOfLarger;  // more of them are not counted out in place of a larger one
};

constexpr std::array kitchenUnits = std::to_array<KitchenUnit>({
    {Unit::Pound, {4, 0}, Unit::Ounce, 0.0},
    {Unit::Ounce, {4, 0}, {}, 16.0},
    {Unit::Quart, {4, 3}, Unit::Cup, 0.0},
    {Unit::Pint, {4, 3}, Unit::Cup, 0.0},
    {Unit::Cup, {4, 3}, Unit::Tablespoon, 12.0},
    {Unit::FluidOunce, {4, 0}, Unit::Tablespoon, 0.0},
    {Unit::Shot, {4, 0}, Unit::Tablespoon, 0.0},
    {Unit::Tablespoon, {2, 0}, Unit::Teaspoon, 12.0},
    {Unit::Teaspoon, {4, 8}, Unit::Dash, 12.0},
    {Unit::ImperialPint, {4, 3}, Unit::ImperialCup, 0.0},
    {Unit::ImperialCup, {4, 3}, Unit::MetricTablespoon, 12.0},
    {Unit::ImperialFluidOunce, {4, 0}, Unit::MetricTablespoon, 0.0},
    {Unit::MetricCup, {4, 3}, Unit::MetricTablespoon, 0.0},
    {Unit::MetricTablespoon, {2, 0}, Unit::MetricTeaspoon, 12.0},
    {Unit::MetricTeaspoon, {4, 8}, Unit::Dash, 12.0},
    {Unit::Dash, {1, 0}, Unit::Pinch, 4.0},
    {Unit::Pinch, {2, 0}, {}, 4.0},
    {Unit::Drop, {1, 0}, {}, 0.0},
    {Unit::Piece, {2, 0}, {}, 0.0},
});

const KitchenUnit* kitchenUnit(Unit unit)
{
    const auto found = std::ranges::find(kitchenUnits, unit, &KitchenUnit::unit);
    return found == kitchenUnits.end() ? nullptr : &*found;
}

double sizeOf(const Amount& amount) { return amount.value * factsOf(amount.unit).size; }

/// The multiple of the step nearest to a value, but at least one step. A step below one divides by its inverse, so that 0.1 is not
/// 0.1000000000000001.
double toStep(double value, double step)
{
    const double steps = std::max(1.0, std::round(value / step));
    return step < 1.0 ? steps / std::round(1.0 / step) : steps * step;
}

/// Tries amounts one after the other: the first that is near enough is taken, or else the nearest.
class Choice {
public:
    Choice(const Amount& exact, std::optional<Grams> wanted, const MassOf& massOf)
        : m_exact(exact)
        , m_wanted(wanted)
        , m_massOf(massOf)
    {
    }

    bool has(const Amount& amount)
    {
        const double deviation = deviation_percent(amount);
        if (!m_nearest || std::abs(deviation) < std::abs(m_nearest->deviation_percent))
            m_nearest = {amount, deviation};
        return std::abs(deviation) <= tolerance_percent;
    }

    /// How much of another unit makes the same: by mass, since a cup of flour is packed closer than spoons of it.
    double valueIn(Unit unit) const
    {
        const double byVolume = sizeOf(m_exact) / factsOf(unit).size;
        const auto mass = massOf({byVolume, unit});
        return mass && m_wanted && mass->value > 0.0 ? byVolume * (*m_wanted / *mass) : byVolume;
    }

    std::optional<Grams> massOf(const Amount& amount) const { return m_massOf ? m_massOf(amount) : std::nullopt; }
    const RoundedAmount& nearest() const { return *m_nearest; }

private:
    double deviation_percent(const Amount& amount) const
    {
        constexpr double beyondSaying = std::numeric_limits<double>::infinity();
        // A measure that nobody weighed would take the row's weight away.
        if (m_wanted && m_wanted->value > 0.0 && m_massOf) {
            const auto mass = massOf(amount);
            return mass ? 100.0 * (*mass / *m_wanted - 1.0) : beyondSaying;
        }
        const bool isComparable = factsOf(amount.unit).dimension == factsOf(m_exact.unit).dimension && sizeOf(m_exact) > 0.0;
        return isComparable ? 100.0 * (sizeOf(amount) / sizeOf(m_exact) - 1.0) : beyondSaying;
    }

    Amount m_exact;
    std::optional<Grams> m_wanted;
    const MassOf& m_massOf;
    std::optional<RoundedAmount> m_nearest;
};

bool takesWeight(Choice& choice, double mass_g, Unit unit, Grams scaleStep)
{
    const double size_g = factsOf(unit).size;
    std::vector<double> steps_g;
    if (scaleStep <= fineStep || mass_g >= weighedFinely.value)
        steps_g.push_back(scaleStep.value);
    if (scaleStep > fineStep)
        steps_g.push_back(fineStep.value);
    return std::ranges::any_of(steps_g, [&](double step_g) { return choice.has({toStep(mass_g, step_g) / size_g, unit}); });
}

/// Nobody writes milligrams without a scale that shows them.
bool takesMilligrams(Choice& choice, double value)
{
    return choice.has({toStep(value, 10.0), Unit::Milligram}) || choice.has({toStep(value, 1.0), Unit::Milligram});
}

/// A jug, a medicine cup and two syringes.
bool takesMillilitres(Choice& choice, const Amount& exact)
{
    const double size_ml = factsOf(exact.unit).size;
    return std::ranges::any_of(std::array{5.0, 1.0, 0.1, 0.01}, [&](double step_ml) {
        return choice.has({toStep(sizeOf(exact), step_ml) / size_ml, exact.unit});
    });
}

bool takesFractions(Choice& choice, double value, const KitchenUnit& unit)
{
    // Of quarters and thirds the nearer comes first, of quarters and eighths the coarser.
    std::vector<double> values;
    for (const int parts : unit.parts)
        if (parts > 0)
            values.push_back(toStep(value, 1.0 / parts));
    if (unit.parts[1] == 3)
        std::ranges::sort(values, {}, [value](double each) { return std::abs(each - value); });
    return std::ranges::any_of(values, [&](double each) { return choice.has({each, unit.unit}); });
}

/// In the unit as written, then in smaller ones.
bool takesKitchenUnit(Choice& choice, const Amount& exact)
{
    const KitchenUnit* unit = kitchenUnit(exact.unit);
    if (unit == nullptr)
        return false;
    if (takesFractions(choice, exact.value, *unit))
        return true;
    while (unit->smaller) {
        unit = kitchenUnit(*unit->smaller);
        const double value = choice.valueIn(unit->unit);
        if (value <= unit->mostInsteadOfLarger && takesFractions(choice, value, *unit))
            return true;
    }
    return false;
}

}  // namespace

bool RoundedAmount::isOff() const { return !(std::abs(deviation_percent) <= tolerance_percent); }

RoundedAmount rounded(const Amount& exact, const Rounding& rounding, std::optional<Grams> wanted, const MassOf& massOf)
{
    const Dimension dimension = factsOf(exact.unit).dimension;
    if (exact.value <= 0.0 || dimension == Dimension::Share)
        return {exact, 0.0};
    Choice choice(exact, wanted, massOf);
    const bool isWeight = dimension == Dimension::Mass;
    if (isWeight ? rounding.scaleStep.value <= 0.0 : !rounding.toMeasures) {
        choice.has(exact);
        return choice.nearest();
    }
    const Grams step = rounding.scaleStep.value > 0.0 ? rounding.scaleStep : fineStep;
    if (exact.unit == Unit::Milligram)
        takesMilligrams(choice, exact.value);
    else if (exact.unit == Unit::Gram || exact.unit == Unit::Kilogram)
        takesWeight(choice, sizeOf(exact), exact.unit, step);
    else if (const bool isMetric = exact.unit == Unit::Millilitre || exact.unit == Unit::Litre;
             !(isMetric ? takesMillilitres(choice, exact) : takesKitchenUnit(choice, exact)) && (wanted || isWeight))
        takesWeight(choice, isWeight ? sizeOf(exact) : wanted->value, Unit::Gram, step);
    return choice.nearest();
}

}  // namespace firn
