#include "syrup/pearson.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

Figure percentFigure(MassFraction share) { return {percent(share), 1}; }

bool isShare(MassFraction share) { return share.value >= 0.0 && share.value <= 1.0; }

bool isAmount(Grams mass) { return mass.value > 0.0 && std::isfinite(mass.value); }

tl::unexpected<Sentence> noShare() { return failure(phrase("A strength is from 0 to 100 % by mass. Correct it.")); }

Symbol strengthSymbol(const char* subscript, MassFraction share, Sentence meaning)
{
    return {"w", subscript, percent(share), "%", std::move(meaning)};
}

void recordBlend(Working& working, MassFraction first, MassFraction second, MassFraction wanted, Grams total, const Blend& blend)
{
    const Symbol w1 = strengthSymbol("1", first, phrase("strength of the one"));
    const Symbol w2 = strengthSymbol("2", second, phrase("strength of the other"));
    const Symbol w = strengthSymbol("wanted", wanted, phrase("strength that is wanted"));
    const Symbol all{"m", "all", total.value, "g", phrase("what is to be made in all")};
    const Symbol m1{"m", "1", blend.first.value, "g", phrase("grams of the one")};
    working.found(m1, all * ((w - Formula(w2)) / (w1 - Formula(w2))), Source::Definition).range =
        phrase("By mass, since volumes do not add up; exact.");
    working.found({"m", "2", blend.second.value, "g", phrase("grams of the other, after those of the one")}, all - Formula(m1),
        Source::Definition);
}

}  // namespace

Result<Blend> pearsonSquare(MassFraction first, MassFraction second, MassFraction wanted, Grams total, Working* working)
{
    if (!isShare(first) || !isShare(second) || !isShare(wanted))
        return noShare();
    if (!isAmount(total))
        return failure(phrase("Nothing would be mixed. Ask for more than 0 g."));
    const auto [weak, strong] = std::minmax(first, second);
    if (wanted < weak || wanted > strong)
        return failure(
            phrase("{0} % cannot be mixed from {1} % and {2} %. Ask for a strength between them, or take a weaker or stronger one.",
                percentFigure(wanted), percentFigure(first), percentFigure(second)));
    if (first == second)
        return failure(phrase("Both have {0} %: mixed in any way they stay so.", percentFigure(first)));
    Blend blend;
    blend.partsOfFirst = std::abs(percent(second - wanted));
    blend.partsOfSecond = std::abs(percent(wanted - first));
    blend.first = total * ((wanted - second) / (first - second));
    blend.second = total - blend.first;
    if (working)
        recordBlend(*working, first, second, wanted, total, blend);
    return blend;
}

Result<Grams> amountToReach(MassFraction wanted, Grams mass, MassFraction now, MassFraction added, Working* working)
{
    if (!isShare(wanted) || !isShare(now) || !isShare(added))
        return noShare();
    if (!isAmount(mass))
        return failure(phrase("There is nothing to add to. Give it a mass of more than 0 g."));
    if (wanted == now)
        return Grams{0.0};
    const double amount_g = mass.value * ((wanted - now) / (added - wanted));
    if (!(amount_g > 0.0) || !std::isfinite(amount_g))
        return failure(phrase("Adding something of {0} % never brings {1} % to {2} %. Add something on the far side of {2} %.",
            percentFigure(added), percentFigure(now), percentFigure(wanted)));
    if (working) {
        const Symbol w = strengthSymbol("wanted", wanted, phrase("strength that is wanted"));
        working->found({"m", "add", amount_g, "g", phrase("what to add")},
            Symbol{"m", "", mass.value, "g", phrase("mass of what there is")}
                * ((w - Formula(strengthSymbol("now", now, phrase("its strength"))))
                    / (strengthSymbol("add", added, phrase("strength of what is added")) - Formula(w))),
            Source::Definition);
    }
    return Grams{amount_g};
}

}  // namespace firn
