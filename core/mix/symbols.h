// What stands for a mix in formulas.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

namespace firn {

/// A part of a mix that has a mass of its own in derivations: a constituent, or what is told apart within some.
struct MixPart {
    std::string figure;  // its key: "water_g", "sugars_g.sucrose", "constituents_g.milk_fat"
    std::string subscript;
    std::string label;
    Grams (*inMix)(const Mix& mix, std::size_t index);
    Grams (*per100g)(const Composition& composition, std::size_t index);
    std::size_t index;

    Grams of(const Mix& mix) const { return inMix(mix, index); }
    Grams of(const Composition& composition) const { return per100g(composition, index); }
};

/// All constituents in their order, then milk fat, milk solids-not-fat and yolk solids.
const std::vector<MixPart>& mixParts();
const MixPart& partOf(Constituent constituent);
const MixPart& milkFatPart();
const MixPart& milkSolidsNotFatPart();

/// The mass of a part, of a mix that is at the working's home.
Symbol massOf(const MixPart& part, const Mix& mix, const Working& working);
Symbol massOf(Constituent constituent, const Mix& mix, const Working& working);
Symbol massOfMix(const Mix& mix, const Working& working);

Symbol temperatureSymbol(Celsius temperature);

/// "m_i", for the general term of a sum.
Symbol generalMass();

}  // namespace firn
