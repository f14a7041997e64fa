// Why the trade has its bands of sugar: how much of a mix is ice when it is served, against how much sugar it holds.
#pragma once

#include "texture/trade_bands.h"

namespace firn {

/// A band as it lies on the curve, with the firmness for which its kind is served.
struct BandOnCurve {
    const TradeBand* band;
    MassFraction iceAtLow, iceAtHigh;  // on the curve
    MassFraction leastBest, mostBest;  // ice with which this kind is best served
    Firmness best;
};

struct SugarIceCurve {
    struct Point {
        MassFraction sugars;  // as the band counts them; alcohol as the sugar that softens as much
        MassFraction ice;     // of the whole mix
    };

    Celsius serveAt;
    SugarCount counts = SugarCount::AllSugars;
    bool hasAlcohol = false;
    std::vector<Point>
        points;  // every percentage point, from the least that the alcohol counts as to 50 %, as far as there is water
    Point mix;
    std::vector<BandOnCurve> bands;       // granita and sorbet, which are one mix in two strengths; of other kinds their own
    std::vector<BandOfSource> ofSources;  // of the same kinds
};

/// The curve for the solids of this mix: its sugars are changed in their own proportions (sucrose where it has none), water takes the rest, all else
/// stays. Error as of the freezing curve. Empty points for a mix without water to freeze.
SugarIceCurve sugarIceCurve(const Mix& mix, TextureClass textureClass, Celsius serveAt);

/// What the picture says, a sentence for each band and each source.
std::vector<Sentence> saidBy(const SugarIceCurve& curve);

}  // namespace firn
