// Density of a food that nobody weighed, from what it is made of.
#pragma once

#include "ingredients/ingredient.h"

#include <optional>

namespace firn {

/// How a food is put into a measure: poured, or heaped in pieces with air between.
enum class Filling { Poured, MayBeHeaped };

/// At 20 °C, rounded to 0.001 g/mL, usually within 2 %; nothing for what may be a powder or a heap: too little water or alcohol to flow, or,
/// where it may be heaped, fibre or starch as in pieces of fruit, which take twice the room of their purée. Oils that hold no water are
/// liquid by their fat.
std::optional<GramsPerMillilitre> estimatedDensity(const Composition& composition, Filling filling);

/// What rows of the ingredient go by for want of anything better: nothing too where it has a density or a weighed volume.
std::optional<GramsPerMillilitre> estimatedDensity(const Ingredient& ingredient, Filling filling);

}  // namespace firn
