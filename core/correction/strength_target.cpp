#include "correction/strength_target.h"

#include "correction/measured_mix.h"
#include "solution/refraction.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

namespace firn {

namespace {

/// A root of f between two places where it has opposite signs.
template <class Function>
double rootBetween(Function f, double low, double high)
{
    std::uintmax_t steps = 100;
    const auto [below, above] =
        boost::math::tools::toms748_solve(f, low, high, boost::math::tools::eps_tolerance<double>(50), steps);
    return (below + above) / 2.0;
}

Symbol addedSymbol(double amount_g) { return {"m", "add", amount_g, "g", phrase("what to add")}; }

std::optional<Grams> amountReaching(const SugarsTarget& target, const Mix& mix, const Mix& gram, Grams most, Working* working)
{
    const double missing_g = target.sugars.value * mix.mass().value - sugars(mix).value;
    const double gain = sugars(gram).value - target.sugars.value * gram.mass().value;
    const double amount_g = missing_g / gain;
    if (!(amount_g > 0.0) || amount_g > most.value)
        return std::nullopt;
    if (working) [[unlikely]] {
        const Symbol wanted{"w", "target", percent(target.sugars), "%", phrase("target: sugars in the mix")};
        const Symbol mass{"m", "mix", mix.mass().value, "g", phrase("mass of the mix as it is")};
        const Symbol now{"m", "sugars", sugars(mix).value, "g", phrase("sugars in it")};
        const Symbol carried{"s", "add", sugars(gram).value, "g/g", phrase("sugars in a gram of what is added")};
        const Symbol gramOf{"c", "add", gram.mass().value, "g/g", phrase("a gram of it, as its constituents sum up")};
        working->found(addedSymbol(amount_g),
            (wanted / oneHundredPercent() * mass - Formula(now)) / (carried - wanted / oneHundredPercent() * gramOf),
            Source::Definition);
    }
    return Grams{amount_g};
}

/// Where the excess changes its sign.
struct Crossing {
    double from_g;
    double amount_g;
    double to_g;
};

/// The first one between nothing and the most. The excess need not move evenly, so that the search goes up in strides.
std::optional<Crossing> crossingOf(const std::function<double(double)>& excess, Grams most)
{
    const bool startsAbove = excess(0.0) > 0.0;
    constexpr double finest = 1e-4;  // of the most
    constexpr double stride = 1.5;
    double below_g = 0.0;
    for (double amount_g = finest * most.value;; amount_g = std::min(stride * amount_g, most.value)) {
        if ((excess(amount_g) > 0.0) != startsAbove)
            return Crossing{below_g, rootBetween(excess, below_g, amount_g), amount_g};
        if (amount_g >= most.value)
            return std::nullopt;
        below_g = amount_g;
    }
}

std::optional<Grams> amountReaching(const BrixTarget& target, const Mix& mix, const Mix& gram, Grams most, Working* working)
{
    const auto found = crossingOf([&](double amount_g) { return excessOver(target, withAdded(mix, gram, {amount_g})); }, most);
    if (found && working) [[unlikely]] {
        const Symbol wanted{"B", "target", target.brix, "°Bx", phrase("target on the refractometer at 20 °C")};
        working->solved(addedSymbol(found->amount_g),
            function("nD_mix", {addedSymbol(found->amount_g)}, phrase("refractive index of the mix with so much added, at 20 °C")),
            indexOfSucrose({wanted, Number{20.0, "°C"}}), Source::Refraction,
            phrase("Solved for what to add between {0} and {1} g: the mix with it has the index that the scale writes so.",
                Figure{found->from_g, 1}, Figure{found->to_g, 1}));
    }
    return found ? std::optional(Grams{found->amount_g}) : std::nullopt;
}

}  // namespace

Mix withAdded(Mix mix, const Mix& gram, Grams amount)
{
    mix.amounts.add(gram.amounts, amount.value);
    mix.milkFat += gram.milkFat * amount.value;
    mix.milkSolidsNotFat += gram.milkSolidsNotFat * amount.value;
    mix.yolkSolids += gram.yolkSolids * amount.value;
    return mix;
}

double excessOver(const StrengthTarget& target, const Mix& mix)
{
    if (const auto* wanted = std::get_if<SugarsTarget>(&target))
        return (shareOf(sugars(mix), mix) - wanted->sugars).value;
    const auto index = refractiveIndexOf(mix, {20.0});
    constexpr double farAbove = 1.0;
    return index ? *index - refractiveIndexOfBrix(std::get<BrixTarget>(target).brix) : farAbove;
}

Result<Mix> broughtTo(const StrengthTarget& target, const Mix& mix)
{
    if (const auto* wanted = std::get_if<SugarsTarget>(&target))
        return measuredMix(mix, wanted->sugars);
    const double brix = std::get<BrixTarget>(target).brix;
    const auto withSugars = [&](double share) { return measuredMix(mix, {share}); };
    auto weakest = withSugars(0.0);
    if (!weakest)
        return weakest;
    constexpr double endOfScales_brix = 85.0;
    constexpr double nearlyAll = 0.99;  // a little water must be left to read in
    const double most = nearlyAll * shareOf((*weakest)[Constituent::Water], *weakest).value;
    const auto excess = [&](double share) { return excessOver(target, *withSugars(share)); };
    if (!(brix >= 0.0 && brix <= endOfScales_brix) || excess(most) < 0.0)
        return failure(phrase("This mix cannot read {0} °Bx. Choose another target.", Figure{brix, 1}));
    if (excess(0.0) > 0.0)
        return failure(
            phrase("Without any sugar this mix would still read more than {0} °Bx. Choose a higher target.", Figure{brix, 1}));
    return withSugars(rootBetween(excess, 0.0, most));
}

std::optional<Grams> amountReaching(const StrengthTarget& target, const std::function<Mix(Grams)>& mixWith, Grams most)
{
    const auto found = crossingOf([&](double amount_g) { return excessOver(target, mixWith({amount_g})); }, most);
    return found ? std::optional(Grams{found->amount_g}) : std::nullopt;
}

std::optional<Grams> amountReaching(const StrengthTarget& target, const Mix& mix, const Mix& gram, Grams most, Working* working)
{
    return std::visit([&](const auto& wanted) { return amountReaching(wanted, mix, gram, most, working); }, target);
}

}  // namespace firn
