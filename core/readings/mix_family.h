// All mixes that a cook's mix could turn out to be: its sugar and its alcohol are in question, everything else is not.
#pragma once

#include "mix/mix.h"

namespace firn {

class MixFamily {
public:
    enum class Alcohol { InQuestion, StaysInTheWater };

    /// Around a mix as computed: its sugars keep their proportions (sucrose where it has none), its milk keeps its lactose, and all other
    /// things keep theirs to the water; with StaysInTheWater so does its alcohol. An empty mix stands for water, sugar and alcohol alone.
    MixFamily(const Mix& background, Alcohol alcohol);

    /// 1 g with this much sugar and, where it is in question, this much alcohol, by mass of the mix.
    Mix at(MassFraction sugar, MassFraction alcohol) const;

    /// The least and the most sugar that there can be beside this much alcohol. The most leaves the sugars at 84 % of sugars and water, the end
    /// of all tables.
    MassFraction leastSugar(MassFraction alcohol) const;
    MassFraction mostSugar(MassFraction alcohol) const;

    static constexpr MassFraction mostAlcohol{0.99};

private:
    Mix m_sugars;  // 1 g of them
    Mix m_rest;    // 1 g of all else
    double m_lactoseInRest = 0.0;
};

}  // namespace firn
