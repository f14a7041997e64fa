#include "readings/two_unknowns.h"

#include "readings/roots.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

class Pair {
public:
    Pair(const Target& index, const Target& density, const MixFamily& family)
        : m_index(index)
        , m_density(density)
        , m_family(family)
    {
    }

    double denseWithLeastSugar(double alcohol) const
    {
        return m_density.excess(m_family.at(m_family.leastSugar({alcohol}), {alcohol}));
    }
    double denseWithMostSugar(double alcohol) const
    {
        return m_density.excess(m_family.at(m_family.mostSugar({alcohol}), {alcohol}));
    }

    /// The sugar that gives the density beside this much alcohol; an end where rounding leaves none.
    double sugarBeside(double alcohol) const
    {
        const auto excess = [&](double sugar) { return m_density.excess(m_family.at({sugar}, {alcohol})); };
        const double least = m_family.leastSugar({alcohol}).value;
        const double most = m_family.mostSugar({alcohol}).value;
        const double atLeast = excess(least);
        const double atMost = excess(most);
        if (atLeast >= 0.0)
            return least;
        if (atMost <= 0.0)
            return most;
        return rootBetween(excess, least, most, atLeast, atMost);
    }

    double refractsTooMuch(double alcohol) const { return m_index.excess(m_family.at({sugarBeside(alcohol)}, {alcohol})); }

    MixEstimate estimateAt(double alcohol, double sugar) const
    {
        const Mix mix = m_family.at({sugar}, {alcohol});
        const Slopes bySugar = slopesBetween(mix, m_family.at({sugar + step}, {alcohol}));
        const Slopes byAlcohol = slopesBetween(mix, m_family.at({sugar}, {alcohol + step}));
        const double determinant = std::abs(bySugar.index * byAlcohol.density - byAlcohol.index * bySugar.density);
        const double index_sd = m_index.sd(mix) / determinant;
        const double density_sd = m_density.sd(mix) / determinant;
        return {{sugar}, {std::hypot(byAlcohol.density * index_sd, byAlcohol.index * density_sd)}, {alcohol},
            {std::hypot(bySugar.density * index_sd, bySugar.index * density_sd)}, mix};
    }

    /// At an alcohol at the end of what can be: the sugar that explains both readings best, if their uncertainty allows it.
    std::optional<MixEstimate> bestAt(double alcohol) const
    {
        const double sugar = sugarBeside(alcohol);
        const Mix mix = m_family.at({sugar}, {alcohol});
        const Slopes slopes = slopesBetween(mix, m_family.at({sugar + step}, {alcohol}));
        const double index = slopes.index / m_index.sd(mix);
        const double density = slopes.density / m_density.sd(mix);
        const double misfit = m_index.excess(mix) / m_index.sd(mix);  // all of it in the index, none in the density
        if (std::abs(misfit * density) > toleratedDeviations * std::hypot(index, density))
            return std::nullopt;
        const double best = sugar - misfit * index / (index * index + density * density);
        return estimateAt(alcohol, std::clamp(best, m_family.leastSugar({alcohol}).value, m_family.mostSugar({alcohol}).value));
    }

    Sentence contradictionAt(double alcohol) const
    {
        const Mix mix = m_family.at({sugarBeside(alcohol)}, {alcohol});
        const Shown index = shown(m_index.reading);
        const Shown density = shown(m_density.reading);
        const Shown would = wouldShow(m_index.reading, mix);
        if (alcohol == 0.0)
            return phrase(
                "No mix shows {0} {1} and {2} {3} together: by the hydrometer the refractometer must show at least {4}. Strain "
                "the sample, let bubbles rise, bring both to one temperature, and read them again.",
                index.value, index.unit, density.value, density.unit, would.value);
        return phrase(
            "No mix shows {0} {1} and {2} {3} together: with {5} % alcohol the refractometer would show {4}. Bring both to one "
            "temperature, and read them again.",
            index.value, index.unit, density.value, density.unit, would.value, Figure{100.0 * alcohol, 0});
    }

private:
    static constexpr double step = 1e-5;

    struct Slopes {
        double index;
        double density;
    };
    Slopes slopesBetween(const Mix& mix, const Mix& next) const
    {
        return {(m_index.excess(next) - m_index.excess(mix)) / step, (m_density.excess(next) - m_density.excess(mix)) / step};
    }

    const Target& m_index;
    const Target& m_density;
    const MixFamily& m_family;
};

}  // namespace

Result<std::vector<MixEstimate>> sugarAndAlcoholFrom(const Target& index, const Target& density, const MixFamily& family)
{
    const Pair pair(index, density, family);
    // At one density more alcohol needs more sugar: it goes from what needs none to what needs the most.
    const double most = MixFamily::mostAlcohol.value;
    const auto bound = [&](auto excess) {
        const double without = excess(0.0);
        const double with = excess(most);
        return without <= 0.0 ? 0.0 : with >= 0.0 ? most : rootBetween(excess, 0.0, most, without, with);
    };
    const double from = bound([&](double alcohol) { return pair.denseWithLeastSugar(alcohol); });
    const double to = bound([&](double alcohol) { return pair.denseWithMostSugar(alcohol); });
    if (to <= 0.0 && -pair.denseWithMostSugar(0.0) > toleratedDeviations * density.sd(family.at(family.mostSugar({}), {}))) {
        const Shown was = shown(density.reading);
        return failure(phrase("{0} {1} is denser than any syrup. Read the hydrometer again.", was.value, was.unit));
    }

    constexpr int parts = 24;
    std::vector<MixEstimate> estimates;
    for (const double alcohol : rootsOf([&](double a) { return pair.refractsTooMuch(a); }, from, to, parts))
        estimates.push_back(pair.estimateAt(alcohol, pair.sugarBeside(alcohol)));
    if (!estimates.empty())
        return estimates;
    const bool isNearBeginning = std::abs(pair.refractsTooMuch(from)) < std::abs(pair.refractsTooMuch(to));
    const double end = isNearBeginning ? from : to;
    if (const auto best = pair.bestAt(end))
        return std::vector{*best};
    return failure(pair.contradictionAt(end));
}

}  // namespace firn
