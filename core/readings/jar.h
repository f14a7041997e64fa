// How much liquid a jar needs so that a hydrometer floats in it.
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

namespace firn {

/// Sizes of an ordinary hydrometer for syrups: common practice, no source.
struct HydrometerBody {
    Grams mass{50.0};
    Millilitres bulbVolume{43.5};
    Millimetres bulbLength{130.0};
    Millimetres bulbDiameter{24.0};
    Millimetres stemLength{130.0};
    Millimetres stemDiameter{8.0};
};

/// Common practice, no source.
struct Jar {
    Millimetres innerDiameter{38.0};
    Millimetres depth{280.0};
};

struct JarFilling {
    Millilitres liquid;     // the least that floats it clear of the bottom
    Millimetres height;     // how high it stands in the jar with the hydrometer in it
    Millimetres submerged;  // of the hydrometer's length
};

/// Displacement. Fails where the hydrometer would touch the wall or the bottom, sink, or lift its bulb out of the liquid.
Result<JarFilling> fillingFor(const Jar& jar, const HydrometerBody& hydrometer, GramsPerMillilitre liquid);

}  // namespace firn
