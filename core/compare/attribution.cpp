#include "compare/attribution.h"

#include "analysis/preparation.h"
#include "analysis/sweetness.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <unordered_map>

namespace firn {

namespace {

using Order = std::vector<std::size_t>;

struct Values {
    std::optional<double> freezingPoint_c;
    bool isTrusted = false;  // the liquid is no stronger than what was measured
    double sweetness_percent = 0.0;
    double ice_percent = 0.0;
};

Values valuesOf(const Recipe& recipe, Celsius servedAt, const Catalogue& catalogue)
{
    Mix mix;
    for (const PreparedComponent& component : prepared(recipe, catalogue).components)
        if (!component.isPartOfAnother)
            mix.add(component.mix());
    const FreezingCurve curve = freezingCurve(mix);
    Values values;
    if (curve.freezingPoint) {
        values.freezingPoint_c = curve.freezingPoint->temperature.value;
        values.isTrusted = !curve.freezingPoint->isExtrapolated;
    }
    values.sweetness_percent = sweetnessAsSucrose_percent(mix);
    values.ice_percent = percent(curve.iceAt(servedAt));
    return values;
}

Values valuesOf(const Analysis& analysis)
{
    Values values;
    if (const auto& point = analysis.freezing.freezingPoint) {
        values.freezingPoint_c = point->temperature.value;
        values.isTrusted = !point->isExtrapolated;
    }
    values.sweetness_percent = analysis.sweetness_percentSucrose;
    values.ice_percent = percent(analysis.texture.iceAtServing);
    return values;
}

/// Additions first and what is left out last: the mix never runs out of water on the way.
Order safeOrder(const std::vector<Change>& changes)
{
    Order order(changes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto rank = [&](std::size_t i) {
        return changes[i].way == Change::Added ? 0 : changes[i].way == Change::LeftOut ? 2 : 1;
    };
    std::ranges::stable_sort(order, {}, rank);
    return order;
}

std::vector<Order> allOrders(std::size_t count)
{
    Order order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::vector<Order> orders;
    do
        orders.push_back(order);
    while (std::ranges::next_permutation(order).found);
    return orders;
}

/// The same ones each time. Fewer where each has more mixes on its way, so that a person who types need not wait.
std::vector<Order> someOrders(const std::vector<Change>& changes)
{
    constexpr std::size_t mostMixes = 480;
    constexpr std::size_t fewestOrders = 4;
    const std::size_t pairs = std::max(fewestOrders, mostMixes / changes.size()) / 2;
    std::mt19937 random(1953);
    std::vector<Order> orders;
    Order order = safeOrder(changes);
    for (std::size_t pair = 0; pair < pairs; ++pair) {
        orders.push_back(order);
        orders.emplace_back(order.rbegin(), order.rend());
        // Not std::shuffle, which is another on another machine.
        for (std::size_t i = order.size() - 1; i > 0; --i)
            std::swap(order[i], order[random() % (i + 1)]);
    }
    return orders;
}

class Attributor {
public:
    Attributor(const Between& between, const Catalogue& catalogue)
        : m_between(between)
        , m_catalogue(catalogue)
    {
    }

    const Values& valuesWith(const std::vector<bool>& isMade)
    {
        const auto known = m_known.find(isMade);
        if (known != m_known.end())
            return known->second;
        return m_known.emplace(isMade, valuesOf(m_between.with(isMade), m_between.servedAt(isMade), m_catalogue)).first->second;
    }

    /// Whether all mixes on the way are such as `isFit` wants them.
    template <class IsFit>
    bool leadsThrough(const Order& order, IsFit isFit)
    {
        std::vector<bool> isMade(order.size());
        for (std::size_t i = 0; i + 1 < order.size(); ++i) {
            isMade[order[i]] = true;
            if (!isFit(valuesWith(isMade)))
                return false;
        }
        return true;
    }

    template <class IsFit>
    std::vector<Order> fit(const std::vector<Order>& orders, IsFit isFit)
    {
        std::vector<Order> result;
        std::ranges::copy_if(orders, std::back_inserter(result), [&](const Order& order) { return leadsThrough(order, isFit); });
        return result;
    }

    /// The mean of each change's part of a figure.
    template <class Of>
    std::vector<double> parts(const std::vector<Order>& orders, Of of)
    {
        const std::size_t count = m_between.changes().size();
        std::vector<double> parts(count);
        for (const Order& order : orders) {
            std::vector<bool> isMade(count);
            double before = of(valuesWith(isMade));
            for (const std::size_t change : order) {
                isMade[change] = true;
                const double after = of(valuesWith(isMade));
                parts[change] += (after - before) / double(orders.size());
                before = after;
            }
        }
        return parts;
    }

private:
    const Between& m_between;
    const Catalogue& m_catalogue;
    std::unordered_map<std::vector<bool>, Values> m_known;
};

double freezingPointOf(const Values& values) { return *values.freezingPoint_c; }
double sweetnessOf(const Values& values) { return values.sweetness_percent; }
double iceOf(const Values& values) { return values.ice_percent; }

/// What the mixes between the recipes leave of the whole difference: nothing but rounding, unless a name means another thing in each recipe.
double restOf(const AttributedFigure& figure)
{
    return figure.whyNone ? 0.0 : *figure.to - *figure.from - std::accumulate(figure.parts.begin(), figure.parts.end(), 0.0);
}

void addRest(Attribution& attribution)
{
    constexpr double rounding = 1e-7;  // a mix summed in another order meets the solver's tolerance elsewhere
    const std::initializer_list<AttributedFigure*> figures{
        &attribution.freezingPoint_c, &attribution.sweetness_percentSucrose, &attribution.iceAtServing_percent};
    if (std::ranges::all_of(figures, [](const AttributedFigure* figure) { return std::abs(restOf(*figure)) <= rounding; }))
        return;
    for (AttributedFigure* figure : figures)
        if (!figure->whyNone)
            figure->parts.push_back(restOf(*figure));
    attribution.changes.push_back(
        {Change::Rest, Change::Other, 0, 0, {}, phrase("what belongs to no row: names that mean another thing in each recipe")});
}

}  // namespace

Attribution attributed(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t other,
    double batchFactor, const Catalogue& catalogue, const std::string& nameOfFirst, const std::string& nameOfOther)
{
    const Between between(recipes, matching, other, batchFactor);
    const Values from = valuesOf(*recipes.front().analysis), to = valuesOf(*recipes[other].analysis);
    Attribution result;
    result.changes = between.changes();
    result.freezingPoint_c = {from.freezingPoint_c, to.freezingPoint_c, {}, {}};
    result.sweetness_percentSucrose = {from.sweetness_percent, to.sweetness_percent, {}, {}};
    result.iceAtServing_percent = {from.ice_percent, to.ice_percent, {}, {}};

    const std::size_t count = result.changes.size();
    result.isSample = count > mostChangesInAllOrders;
    std::vector<Order> orders = result.isSample ? someOrders(result.changes) : allOrders(count);
    Attributor attributor(between, catalogue);
    const bool bothFreeze = from.freezingPoint_c && to.freezingPoint_c;
    if (bothFreeze) {
        std::vector<Order> fit;
        if (from.isTrusted && to.isTrusted)
            fit = attributor.fit(orders, [](const Values& values) { return values.isTrusted; });
        if (fit.empty())
            fit = attributor.fit(orders, [](const Values& values) { return values.freezingPoint_c.has_value(); });
        if (!fit.empty())
            orders = std::move(fit);
        else
            result.freezingPoint_c.whyNone =
                phrase("The changes cannot be told apart: on every way from “{0}” to “{1}” there is a mix without water.",
                    nameOfFirst, nameOfOther);
    } else {
        const bool isFirst = !from.freezingPoint_c;
        result.freezingPoint_c.whyNone =
            !from.freezingPoint_c && !to.freezingPoint_c
                ? phrase(
                    "Neither “{0}” nor “{1}” has water to freeze: there is no freezing point to compare.", nameOfFirst, nameOfOther)
                : phrase(
                    "“{0}” has no water to freeze, so it has no freezing point to compare.", isFirst ? nameOfFirst : nameOfOther);
    }
    result.orders = orders.size();
    if (!result.freezingPoint_c.whyNone)
        result.freezingPoint_c.parts = attributor.parts(orders, freezingPointOf);
    result.sweetness_percentSucrose.parts = attributor.parts(orders, sweetnessOf);
    result.iceAtServing_percent.parts = attributor.parts(orders, iceOf);
    addRest(result);
    return result;
}

}  // namespace firn
