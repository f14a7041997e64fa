// How much of each recipe stands beside the others.
#pragma once

#include "units/quantity.h"

namespace firn {

struct Basis {
    enum Per { HundredGrams, Batch, Portion };

    Per per = HundredGrams;
    Grams portion{100.0};  // where it is per portion
    friend bool operator==(const Basis&, const Basis&) = default;
};

/// What a mass of a batch that weighs so much is multiplied by; 1 for an empty batch.
inline double factorOf(const Basis& basis, Grams batch)
{
    if (basis.per == Basis::Batch || batch.value <= 0.0)
        return 1.0;
    return basis.per == Basis::Portion ? basis.portion / batch : 100.0 / batch.value;
}

}  // namespace firn
