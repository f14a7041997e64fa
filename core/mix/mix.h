// The mix: grams of each constituent. The one value that every model takes; no model knows a recipe.
#pragma once

#include "ingredients/composition.h"

namespace firn {

struct Mix {
    Amounts amounts;
    Grams milkFat;
    Grams milkSolidsNotFat;
    Grams yolkSolids;

    /// Adds this much of a food.
    void add(const Composition& composition, Grams mass);
    void add(const Mix& other);

    Grams mass() const { return amounts.total(); }
    Grams operator[](Constituent c) const { return amounts[c]; }
    bool isEmpty() const { return mass().value <= 0.0; }

    friend bool operator==(const Mix&, const Mix&) = default;
};

/// Mono- and disaccharides, lactose included: what "sugars" means on every gauge.
inline constexpr std::array sugarKinds{Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose, Constituent::Galactose,
    Constituent::Lactose, Constituent::Maltose, Constituent::Trehalose};

/// All of them together.
Grams sugars(const Mix& mix);

/// Everything but water and alcohol.
Grams totalSolids(const Mix& mix);

/// Share of a part in the whole mix; zero for an empty mix.
MassFraction shareOf(Grams part, const Mix& mix);

/// The constituents in the groups, and in the order, that every ribbon shows.
enum class RibbonPart { Water, Sugars, Fat, Protein, FibreAndOther, Alcohol, SaltAndAcid };
inline constexpr std::size_t ribbonPartCount = static_cast<std::size_t>(RibbonPart::SaltAndAcid) + 1;

RibbonPart ribbonPartOf(Constituent constituent);

/// Mass fraction of each part; adds up to 1, or is all zero for nothing.
using Ribbon = std::array<MassFraction, ribbonPartCount>;
Ribbon ribbonOf(const Amounts& amounts);

}  // namespace firn
