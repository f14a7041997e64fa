#include "tasting/triangle_test.h"

#include <cmath>

namespace firn {

double chanceByGuessing(std::size_t tasters, std::size_t right)
{
    constexpr double p = 1.0 / 3.0;
    const double n = double(tasters);
    double chance = 0.0;
    for (std::size_t k = right; k <= tasters; ++k) {
        const double found = double(k);
        chance += std::exp(std::lgamma(n + 1.0) - std::lgamma(found + 1.0) - std::lgamma(n - found + 1.0) + found * std::log(p)
                           + (n - found) * std::log1p(-p));
    }
    return chance;
}

std::optional<std::size_t> leastRight(std::size_t tasters, double risk)
{
    for (std::size_t right = 0; right <= tasters; ++right)
        if (chanceByGuessing(tasters, right) <= risk)
            return right;
    return std::nullopt;
}

Result<Sentence> triangleTest(std::size_t tasters, std::size_t right)
{
    if (tasters > mostTasters)
        return failure(phrase("More than {0} tasters: correct the number.", Figure{double(mostTasters), 0}));
    if (right > tasters)
        return failure(phrase("{0} right answers of {1} tasters cannot be: correct one of them.", Figure{double(right), 0},
            Figure{double(tasters), 0}));
    const auto least = leastRight(tasters);
    if (!least)
        return failure(phrase("Too few tasters: even if all of them were right, it could be guessing. Ask at least three."));
    const Figure chance{100.0 * chanceByGuessing(tasters, right), 1};
    if (right >= *least)
        return phrase("A difference was shown: by guessing, so many right answers come about in {0} % of such tests.", chance);
    return phrase(
        "A difference was not shown: {0} right answers are needed, and by guessing, {1} come about in {2} % of such tests.",
        Figure{double(*least), 0}, Figure{double(right), 0}, chance);
}

}  // namespace firn
