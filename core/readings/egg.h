// The floating egg: a hen's egg in its shell shows a patch above the syrup, wider the denser the syrup is.
#pragma once

#include "derivation/working.h"
#include "units/quantity.h"

#include <optional>

namespace firn {

struct Egg {
    Grams mass{57.0};                  // in its shell; a US large egg is about this heavy
    GramsPerMillilitre density{1.08};  // about a week old: 1.03 (old) to 1.09 (laid today)
    double lengthToBreadth = 1.30;
    friend bool operator==(const Egg&, const Egg&) = default;
};

/// How the egg lies, as a spheroid on its side. Lengths of the outline are those of the whole egg.
struct EggFloat {
    bool floats = false;
    Millimetres exposedWidth;   // across the patch; the same lying or standing
    Millimetres exposedLength;  // along the patch
    Millimetres exposedHeight;  // above the surface
    double exposedVolumeShare = 0.0;
    Millimetres breadth;
    Millimetres length;
};

/// Buoyancy of a spheroid of this egg's mass and density in a liquid. The geometry is exact; a real egg of unknown age may differ
/// by 0.03 g/mL in density, which is worth 6 °Bx.
EggFloat floatEgg(const Egg& egg, GramsPerMillilitre liquid, Working* working = nullptr);

/// The liquid in which the patch of this egg is so wide; none if that is wider than the egg, or more of it than half would show.
std::optional<GramsPerMillilitre> liquidFloating(const Egg& egg, Millimetres patchWidth, Working* working = nullptr);

}  // namespace firn
