#include "readings/egg.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace firn {

namespace {

double volume_mm3(const Egg& egg) { return 1000.0 * egg.mass.value / egg.density.value; }

/// Half of the spheroid's breadth. With half axes a (length) and b (breadth) V = 4/3 pi a b^2.
double halfBreadth_mm(const Egg& egg) { return std::cbrt(volume_mm3(egg) * 3.0 / (4.0 * std::numbers::pi * egg.lengthToBreadth)); }

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

Symbol densitySymbol(const Egg& egg) { return {"ρ", "egg", egg.density.value, "g/mL", phrase("density of the egg, by its age")}; }

Symbol halfBreadthSymbol(const Egg& egg) { return {"h", "", halfBreadth_mm(egg), "mm", phrase("half the breadth of the egg")}; }

/// The egg as a spheroid: its volume, then half its breadth.
void recordOutline(Working& working, const Egg& egg)
{
    const Symbol volume{"V", "egg", volume_mm3(egg), "mm³", phrase("volume of the egg")};
    const Symbol mass{"m", "egg", egg.mass.value, "g", phrase("mass of the egg in its shell")};
    const Symbol ratio{"λ", "", egg.lengthToBreadth, "", phrase("length to breadth")};
    working.found(volume, Formula(Number{1000.0, "mm³/mL"}) * mass / densitySymbol(egg), Source::Egg);
    working.found(halfBreadthSymbol(egg),
        power(3.0 * volume / (4.0 * Formula(Symbol{"π", "", std::numbers::pi, "", phrase("pi")}) * ratio), 1.0 / Formula(3.0)),
        Source::Egg);
}

Formula capAboveFormula(const Symbol& z) { return power(1.0 - z, 2.0) * (2.0 + z) / 4.0; }

Symbol heightSymbol(double z)
{
    return {"z", "", z, "", phrase("height of the surface over the egg's middle, as a share of the way to its top"), {}, 5};
}

void record(Working& working, const Egg& egg, GramsPerMillilitre liquid, const EggFloat& found, double z)
{
    const Symbol half = halfBreadthSymbol(egg);
    const Symbol rho{"ρ", "mix", liquid.value, "g/mL", phrase("density of the mix"), working.keyOf("readings.density_g_ml"), 4};
    const double exposedShare = found.floats ? found.exposedVolumeShare : 0.0;
    const Symbol exposed{"e", "", exposedShare, "", phrase("share of the egg's volume above the surface")};
    const Symbol width{"d", "egg", found.exposedWidth.value, "mm", phrase("width of the shell that shows"),
        working.keyOf("readings.egg.exposed_width_mm")};
    working.found(exposed, function("max", {0.0, 1.0 - densitySymbol(egg) / rho}), Source::Egg);
    if (!found.floats) {
        working.found(width, Number{0.0, "mm", true}, Source::Egg).range =
            phrase("The egg is denser than the mix: it sinks, and nothing shows.");
        return;
    }
    recordOutline(working, egg);
    const Symbol height = heightSymbol(z);
    working.solved(height, capAboveFormula(height), exposed, Source::Egg,
        phrase("Solved for z between -1 and 1: the cap of a spheroid above the surface."));
    working.found(width, 2.0 * half * root(1.0 - power(height, 2.0)), Source::Egg).uncertainty =
        phrase("Real eggs range from 1.03 to 1.09 g/mL, and 0.01 g/mL is worth 2 °Bx.");
}

/// Back from the patch to the liquid.
void recordLiquid(
    Working& working, const Egg& egg, Millimetres patchWidth, double z, double exposedShare, GramsPerMillilitre liquid)
{
    recordOutline(working, egg);
    const Symbol width{"d", "egg", patchWidth.value, "mm", phrase("width of the shell that shows")};
    const Symbol height = heightSymbol(z);
    const Symbol exposed{"e", "", exposedShare, "", phrase("share of the egg's volume above the surface")};
    working.found(height, root(1.0 - power(width / (2.0 * halfBreadthSymbol(egg)), 2.0)), Source::Egg);
    working.found(exposed, capAboveFormula(height), Source::Egg);
    working.found(
        {"ρ", "mix", liquid.value, "g/mL", phrase("density of the mix"), {}, 4}, densitySymbol(egg) / (1.0 - exposed), Source::Egg);
}

}  // namespace

EggFloat floatEgg(const Egg& egg, GramsPerMillilitre liquid, Working* working)
{
    const double b_mm = halfBreadth_mm(egg);
    const double a_mm = b_mm * egg.lengthToBreadth;

    EggFloat result;
    result.breadth = {2.0 * b_mm};
    result.length = {2.0 * a_mm};
    const double exposed = 1.0 - egg.density / liquid;
    result.floats = exposed > 0.0;
    if (!result.floats) {
        if (working)
            record(*working, egg, liquid, result, 1.0);
        return result;
    }
    const double z = surfaceOf(exposed);
    const double waist = std::sqrt(1.0 - z * z);
    result.exposedVolumeShare = exposed;
    result.exposedWidth = {2.0 * b_mm * waist};
    result.exposedLength = {2.0 * a_mm * waist};
    result.exposedHeight = {b_mm * (1.0 - z)};
    if (working)
        record(*working, egg, liquid, result, z);
    return result;
}

std::optional<GramsPerMillilitre> liquidFloating(const Egg& egg, Millimetres patchWidth, Working* working)
{
    const double waist = patchWidth.value / (2.0 * halfBreadth_mm(egg));
    if (waist < 0.0 || waist > 1.0)
        return std::nullopt;
    const double z = std::sqrt(1.0 - waist * waist);
    const double exposed = capAbove(z);
    const GramsPerMillilitre liquid = egg.density / (1.0 - exposed);
    if (working)
        recordLiquid(*working, egg, patchWidth, z, exposed, liquid);
    return liquid;
}

}  // namespace firn
