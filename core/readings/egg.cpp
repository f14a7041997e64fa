#include "readings/egg.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace firn {

namespace {

/// Half the distance from the spheroid's middle to its pole at which the cap above the surface has this share of the volume: the root of
/// (1 - z)^2 (2 + z) / 4 = share in [-1, 1], where z is in units of the half axis.
double surfaceOf(double share)
{
    std::uintmax_t steps = 60;
    const auto [low, high] =
        boost::math::tools::toms748_solve([share](double z) { return (1.0 - z) * (1.0 - z) * (2.0 + z) / 4.0 - share; }, -1.0, 1.0,
            boost::math::tools::eps_tolerance<double>(45), steps);
    return (low + high) / 2.0;
}

}  // namespace

EggFloat floatEgg(const Egg& egg, GramsPerMillilitre liquid)
{
    // A spheroid of half axes a (length) and b (breadth): V = 4/3 pi a b^2, in mm3.
    const double volume_mm3 = 1000.0 * egg.mass.value / egg.density.value;
    const double b_mm = std::cbrt(volume_mm3 * 3.0 / (4.0 * std::numbers::pi * egg.lengthToBreadth));
    const double a_mm = b_mm * egg.lengthToBreadth;

    EggFloat result;
    result.breadth = {2.0 * b_mm};
    result.length = {2.0 * a_mm};
    const double exposed = 1.0 - egg.density / liquid;
    result.floats = exposed > 0.0;
    if (!result.floats)
        return result;
    const double z = surfaceOf(exposed);
    const double waist = std::sqrt(1.0 - z * z);
    result.exposedVolumeShare = exposed;
    result.exposedWidth = {2.0 * b_mm * waist};
    result.exposedLength = {2.0 * a_mm * waist};
    result.exposedHeight = {b_mm * (1.0 - z)};
    return result;
}

}  // namespace firn
