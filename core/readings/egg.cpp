#include "readings/egg.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace firn {

namespace {

/// Half of the spheroid's breadth. With half axes a (length) and b (breadth) V = 4/3 pi a b^2, in mm3.
double halfBreadth_mm(const Egg& egg)
{
    const double volume_mm3 = 1000.0 * egg.mass.value / egg.density.value;
    return std::cbrt(volume_mm3 * 3.0 / (4.0 * std::numbers::pi * egg.lengthToBreadth));
}

/// Share of the volume that the cap above z has, z in units of the half axis from the middle.
double capAbove(double z) { return (1.0 - z) * (1.0 - z) * (2.0 + z) / 4.0; }

/// The distance from the spheroid's middle, in units of the half axis, above which the cap has this share of the volume.
double surfaceOf(double share)
{
    std::uintmax_t steps = 60;
    const auto [low, high] = boost::math::tools::toms748_solve(
        [share](double z) { return capAbove(z) - share; }, -1.0, 1.0, boost::math::tools::eps_tolerance<double>(45), steps);
    return (low + high) / 2.0;
}

}  // namespace

EggFloat floatEgg(const Egg& egg, GramsPerMillilitre liquid)
{
    const double b_mm = halfBreadth_mm(egg);
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

std::optional<GramsPerMillilitre> liquidFloating(const Egg& egg, Millimetres patchWidth)
{
    const double waist = patchWidth.value / (2.0 * halfBreadth_mm(egg));
    if (waist < 0.0 || waist > 1.0)
        return std::nullopt;
    return egg.density / (1.0 - capAbove(std::sqrt(1.0 - waist * waist)));
}

}  // namespace firn
