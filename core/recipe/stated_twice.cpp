#include "recipe/stated_twice.h"

#include <algorithm>

namespace firn {

namespace {

/// Two statements of one amount may be rounded as far apart as 25 g and 1 oz, a cup of 240 mL and one of 284 mL, or 600 mL and a pint
/// (imperial, where 473 mL is the American one).
constexpr double farthestApart = 1.3;

/// What a cook trusts most first: a scale, then a measuring jug, then spoons, cups and ounces, then pieces.
int trustOf(Unit unit)
{
    switch (unit) {
    case Unit::Gram:
    case Unit::Kilogram:
    case Unit::Milligram:
        return 0;
    case Unit::Millilitre:
    case Unit::Litre:
        return 1;
    default:
        return factsOf(unit).dimension == Dimension::Count ? 3 : 2;
    }
}

}  // namespace

double inBaseUnit(const Amount& amount) { return amount.value * factsOf(amount.unit).size; }

Dimension dimensionOf(const Amount& amount) { return factsOf(amount.unit).dimension; }

Result<Amount> betterOf(const Amount& first, const Amount& second)
{
    const double a = inBaseUnit(first);
    const double b = inBaseUnit(second);
    if (dimensionOf(first) == dimensionOf(second) && std::max(a, b) > farthestApart * std::min(a, b))
        return failure(phrase("{0} and {1} are not the same amount. Type one of them.", amountText(first), amountText(second)));
    return trustOf(second.unit) < trustOf(first.unit) ? second : first;
}

}  // namespace firn
