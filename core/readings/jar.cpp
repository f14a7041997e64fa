#include "readings/jar.h"

#include <numbers>

namespace firn {

namespace {

double area_mm2(Millimetres diameter) { return std::numbers::pi / 4.0 * diameter.value * diameter.value; }

constexpr double mm3PerMillilitre = 1000.0;

// Room around and below that lets it float freely: common practice, no source.
constexpr Millimetres besideIt{3.0};
constexpr Millimetres belowIt{10.0};

}  // namespace

Result<JarFilling> fillingFor(const Jar& jar, const HydrometerBody& hydrometer, GramsPerMillilitre liquid)
{
    if (jar.innerDiameter < hydrometer.bulbDiameter + 2.0 * besideIt)
        return failure(phrase("The jar is too narrow: a hydrometer of {0} mm needs at least {1} mm inside.",
            Figure{hydrometer.bulbDiameter.value, 0}, Figure{(hydrometer.bulbDiameter + 2.0 * besideIt).value, 0}));
    const double displaced_mL = hydrometer.mass.value / liquid.value;
    const double stem_mm = (displaced_mL - hydrometer.bulbVolume.value) * mm3PerMillilitre / area_mm2(hydrometer.stemDiameter);
    if (stem_mm > hydrometer.stemLength.value)
        return failure(phrase("The hydrometer sinks in so light a liquid. Use one with a lower scale."));
    if (stem_mm < 0.0)
        return failure(phrase("The hydrometer floats with its bulb out of so dense a liquid. Use one with a higher scale."));
    JarFilling filling;
    filling.submerged = hydrometer.bulbLength + Millimetres{stem_mm};
    filling.height = filling.submerged + belowIt;
    if (filling.height > jar.depth)
        return failure(phrase("The jar is too shallow: the liquid must stand {0} mm high in it, and it is {1} mm deep.",
            Figure{filling.height.value, 0}, Figure{jar.depth.value, 0}));
    filling.liquid = {area_mm2(jar.innerDiameter) * filling.height.value / mm3PerMillilitre - displaced_mL};
    return filling;
}

}  // namespace firn
