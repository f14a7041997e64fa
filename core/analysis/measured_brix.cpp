#include "analysis/measured_brix.h"

#include "mix/mix.h"
#include "readings/readings.h"

#include <boost/math/tools/roots.hpp>
#include <cstdint>

namespace firn {

namespace {

Grams sugarsOf(const Composition& composition)
{
    Grams sum;
    for (const Constituent sugar : sugarKinds)
        sum += composition.per100g[sugar];
    return sum;
}

/// The same with this many times the sugars, in place of water.
Composition withSugars(const Composition& composition, double factor)
{
    Composition result = composition;
    for (const Constituent sugar : sugarKinds)
        result.per100g[sugar] = composition.per100g[sugar] * factor;
    result.per100g[Constituent::Water] += sugarsOf(composition) - sugarsOf(result);
    return result;
}

double brixOf(const Composition& composition)
{
    constexpr double offTheScale_brix = 100.0;
    Mix mix;
    mix.add(composition, {100.0});
    const auto found = readings(mix, {20.0});
    return found ? found->refractometer_brix.value_or(offTheScale_brix) : offTheScale_brix;
}

}  // namespace

Result<Composition> measuredComposition(const Composition& composition, double brix)
{
    const Grams sugars = sugarsOf(composition);
    const Grams water = composition.per100g[Constituent::Water];
    if (sugars.value <= 0.0 || water.value <= 0.0)
        return failure(
            phrase("A reading in °Bx says nothing about something without sugars or without water. Take the reading away."));
    const auto tooMuch_brix = [&](double factor) { return brixOf(withSugars(composition, factor)) - brix; };
    const double most = (sugars + water) / sugars * 0.99;  // a little water must be left to read in
    if (tooMuch_brix(0.0) > 0.0)
        return failure(phrase("It would read more than {0} °Bx without any sugar. Measure again.", Figure{brix, 1}));
    constexpr double endOfScales_brix = 85.0;
    if (brix > endOfScales_brix || tooMuch_brix(most) < 0.0)
        return failure(phrase("It cannot read as much as {0} °Bx. Measure again.", Figure{brix, 1}));
    std::uintmax_t steps = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve(tooMuch_brix, 0.0, most, boost::math::tools::eps_tolerance<double>(40), steps);
    return withSugars(composition, (low + high) / 2.0);
}

}  // namespace firn
