#include "syrup/pearson.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

Figure percentFigure(MassFraction share) { return {percent(share), 1}; }

bool isShare(MassFraction share) { return share.value >= 0.0 && share.value <= 1.0; }

bool isAmount(Grams mass) { return mass.value > 0.0 && std::isfinite(mass.value); }

tl::unexpected<Sentence> noShare() { return failure(phrase("A strength is from 0 to 100 % by mass: correct it.")); }

}  // namespace

Result<Blend> pearsonSquare(MassFraction first, MassFraction second, MassFraction wanted, Grams total)
{
    if (!isShare(first) || !isShare(second) || !isShare(wanted))
        return noShare();
    if (!isAmount(total))
        return failure(phrase("Nothing would be mixed: ask for more than 0 g."));
    const auto [weak, strong] = std::minmax(first, second);
    if (wanted < weak || wanted > strong)
        return failure(
            phrase("{0} % cannot be mixed from {1} % and {2} %: ask for a strength between them, or take a weaker or stronger one.",
                percentFigure(wanted), percentFigure(first), percentFigure(second)));
    if (first == second)
        return failure(phrase("Both have {0} %: mixed in any way they stay so.", percentFigure(first)));
    Blend blend;
    blend.partsOfFirst = std::abs(percent(second - wanted));
    blend.partsOfSecond = std::abs(percent(wanted - first));
    blend.first = total * ((wanted - second) / (first - second));
    blend.second = total - blend.first;
    return blend;
}

Result<Grams> amountToReach(MassFraction wanted, Grams mass, MassFraction now, MassFraction added)
{
    if (!isShare(wanted) || !isShare(now) || !isShare(added))
        return noShare();
    if (!isAmount(mass))
        return failure(phrase("There is nothing to add to: give it a mass of more than 0 g."));
    if (wanted == now)
        return Grams{0.0};
    const double amount_g = mass.value * ((wanted - now) / (added - wanted));
    if (!(amount_g > 0.0) || !std::isfinite(amount_g))
        return failure(phrase("Adding something of {0} % never brings {1} % to {2} %: add something on the far side of {2} %.",
            percentFigure(added), percentFigure(now), percentFigure(wanted)));
    return Grams{amount_g};
}

}  // namespace firn
