#include "readings/one_unknown.h"

#include "readings/roots.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// The unknown goes from least to most, and `at` makes its mix.
struct Unknown {
    double least;
    double most;
    int parts;  // in which a property may turn around
};

struct Found {
    double value;
    double sd;
};

template <class At>
std::vector<Found> foundBy(const Target& target, const Unknown& unknown, At at)
{
    const auto excess = [&](double x) { return target.excess(at(x)); };
    std::vector<double> values = rootsOf(excess, unknown.least, unknown.most, unknown.parts);
    if (values.empty()) {
        for (const double end : {unknown.least, unknown.most}) {
            const Mix mix = at(end);
            if (std::abs(target.excess(mix)) <= toleratedDeviations * target.sd(mix))
                values.push_back(end);
        }
    }
    std::vector<Found> found;
    for (const double value : values) {
        constexpr double step = 1e-5;
        const double other = value + step <= unknown.most ? value + step : value - step;
        const double slope = (excess(other) - excess(value)) / (other - value);
        found.push_back({value, target.sd(at(value)) / std::abs(slope)});
    }
    return found;
}

}  // namespace

Result<std::vector<MixEstimate>> sugarFrom(const Target& target, const MixFamily& family, MassFraction alcohol)
{
    const Unknown sugar{family.leastSugar(alcohol).value, family.mostSugar(alcohol).value, 8};
    const auto at = [&](double x) { return family.at({x}, alcohol); };
    std::vector<MixEstimate> estimates;
    for (const Found& found : foundBy(target, sugar, at)) {
        const Mix mix = at(found.value);
        estimates.push_back({{found.value}, {found.sd}, shareOf(mix[Constituent::Ethanol], mix), {}, mix});
    }
    if (!estimates.empty())
        return estimates;

    const Shown was = shown(target.reading);
    const bool isTooLittle = target.excess(at(sugar.least)) > 0.0;
    const Shown end = wouldShow(target.reading, at(isTooLittle ? sugar.least : sugar.most));
    if (!isTooLittle)
        return failure(
            phrase("No mix shows as much as {0} {1}: with all the sugar that can dissolve it would be {2}. Read it again.",
                was.value, was.unit, end.value));
    const bool isLight = target.property == Target::Property::Density;
    return failure(
        isLight ? phrase("Even without sugar the mix would show {2} {1}, and {0} is less: it must hold more alcohol. Say how "
                         "much, or read a refractometer as well.",
            was.value, was.unit, end.value)
                : phrase("Even without sugar the mix would show {2} {1}, and {0} is less. Read it again, or correct what else "
                         "is said to be in the mix.",
                    was.value, was.unit, end.value));
}

Result<std::vector<MixEstimate>> alcoholFrom(const Target& target, const MixFamily& family, MassFraction sugar)
{
    if (sugar < family.leastSugar({}) || sugar > family.mostSugar({}))
        return failure(phrase("{0} % sugar is outside what this mix can hold, which is from {1} to {2} %. Correct it.",
            Figure{percent(sugar), 1}, Figure{percent(family.leastSugar({})), 1}, Figure{percent(family.mostSugar({})), 1}));
    // The most sugar is in proportion to what is not alcohol.
    const double most = 1.0 - sugar / family.mostSugar({});
    const Unknown alcohol{0.0, std::min(MixFamily::mostAlcohol.value, most), 40};
    const auto at = [&](double x) { return family.at(sugar, {x}); };
    std::vector<MixEstimate> estimates;
    for (const Found& found : foundBy(target, alcohol, at))
        estimates.push_back({sugar, {}, {found.value}, {found.sd}, at(found.value)});
    if (!estimates.empty())
        return estimates;
    const Shown was = shown(target.reading);
    const Shown without = wouldShow(target.reading, at(0.0));
    return failure(
        phrase("With {0} % sugar no amount of alcohol makes the mix show {1} {2}; without alcohol it would be {3}. Read it "
               "again, or check the sugar.",
            Figure{percent(sugar), 1}, was.value, was.unit, without.value));
}

}  // namespace firn
