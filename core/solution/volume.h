// Volume and density of a mix and of its liquid, from apparent specific volumes.
//
// Dissolved solids act on the water at their common strength W = solids/(solids + water), ethanol at its own p = ethanol/(ethanol + water);
// each then takes v(W) or v(p) millilitres a gram. Pure solutions thereby have exactly the density of their table. Fat, starch and fibre
// take their own volume (Y. Choi and M. R. Okos, in Food Engineering and Process Applications 1 (1986) 93). Sugar and ethanol
// together are added up so; no measurement of such mixtures was available (a plain sum is said to hold below 5 % sucrose at 18 % ethanol).
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

#include <optional>

namespace firn {

/// Volume of the whole mix without air. Valid from 0 to 40 °C; from -20 °C with growing error.
Millilitres volumeOf(const Mix& mix, Celsius temperature, Working* working = nullptr);

/// Density without air; none for an empty mix.
std::optional<GramsPerMillilitre> densityOf(const Mix& mix, Celsius temperature, Working* working = nullptr);

/// How strong the solids and the ethanol are in the water of a mix.
struct Strength {
    MassFraction dissolvedSolids;  // of solids and water
    MassFraction ethanol;          // of ethanol and water
};
Strength strengthOf(const Mix& mix, Working* working = nullptr);

/// Volume of what a refractometer or the water shares with light: water, dissolved solids, protein and ethanol.
Millilitres liquidVolumeOf(const Mix& mix, Celsius temperature, Working* working = nullptr);

/// The volume as a step of a working.
Symbol volumeSymbol(Millilitres volume, std::string subscript, Celsius temperature);
/// The strength of the dissolved solids in the water, and that of the ethanol.
Symbol solidsStrengthSymbol(const Strength& strength);
Symbol ethanolStrengthSymbol(const Strength& strength);

}  // namespace firn
