#include "readings/hydrometer.h"

#include "solution/sucrose.h"
#include "solution/volume.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

namespace firn {

namespace {

constexpr double highestSucrose_percent = 90.0;

/// Cubic expansion of the soda-lime glass of hydrometers, 25e-6 a kelvin (from memory).
double glassVolume(Calibration calibration, Celsius temperature)
{
    return 1.0 + 25e-6 * (temperature - temperatureOf(calibration)).value;
}

/// What the scale says for a density at the temperature that it is made for.
double valueOf(const Hydrometer& instrument, GramsPerMillilitre density)
{
    const Celsius made = temperatureOf(instrument.calibration);
    switch (instrument.scale) {
    case HydrometerScale::SpecificGravity:
        return specificGravityInAir(density, made);
    case HydrometerScale::Baume:
        return baumeOf(density, made);
    case HydrometerScale::Brix:
        break;
    }
    std::uintmax_t steps = 60;
    const auto tooDense = [&](double brix) { return (sucroseSolutionDensity(fromPercent(brix), made) - density).value; };
    const double low = std::max(instrument.from, 0.0);
    const double high = std::min(instrument.to, highestSucrose_percent);
    // Water at the end of the scale may lie a rounding beyond it.
    if (tooDense(low) >= 0.0)
        return low;
    if (tooDense(high) <= 0.0)
        return high;
    const auto [below, above] =
        boost::math::tools::toms748_solve(tooDense, low, high, boost::math::tools::eps_tolerance<double>(44), steps);
    return (below + above) / 2.0;
}

/// The density, at the temperature that the scale is made for, that it writes so.
GramsPerMillilitre densityOnScale(const Hydrometer& instrument, double value)
{
    const Celsius made = temperatureOf(instrument.calibration);
    switch (instrument.scale) {
    case HydrometerScale::SpecificGravity:
        return {value * (waterDensity(made).value - densityOfAir.value) + densityOfAir.value};
    case HydrometerScale::Baume:
        return waterDensity(made) * (baumeModulus / (baumeModulus - value));
    case HydrometerScale::Brix:
        break;
    }
    return sucroseSolutionDensity(fromPercent(std::min(value, highestSucrose_percent)), made);
}

/// Density per unit of the scale.
double slopeOf(const Hydrometer& instrument, double value)
{
    const double step = instrument.scale == HydrometerScale::SpecificGravity ? 0.001 : 0.1;
    return (densityOnScale(instrument, value + step) - densityOnScale(instrument, value)).value / step;
}

}  // namespace

Celsius temperatureOf(Calibration calibration) { return {calibration == Calibration::At60F ? (60.0 - 32.0) / 1.8 : 20.0}; }

std::span<const Hydrometer> commonHydrometers()
{
    // Common practice, no source.
    static constexpr std::array scales{Hydrometer{HydrometerScale::Brix, Calibration::At20C, 0.0, 35.0, 0.5},
        Hydrometer{HydrometerScale::SpecificGravity, Calibration::At20C, 0.990, 1.170, 0.002},
        Hydrometer{HydrometerScale::Baume, Calibration::At20C, 0.0, 40.0, 0.5}};
    return scales;
}

Hydrometer wholeScale(HydrometerScale scale, Calibration calibration)
{
    switch (scale) {
    case HydrometerScale::SpecificGravity:
        return {scale, calibration, 0.6, 1.5, 0.002};
    case HydrometerScale::Baume:
        return {scale, calibration, -50.0, 50.0, 0.5};
    case HydrometerScale::Brix:
        break;
    }
    return {scale, calibration, 0.0, highestSucrose_percent, 0.5};
}

double specificGravityInAir(GramsPerMillilitre density, Celsius water)
{
    return (density.value - densityOfAir.value) / (waterDensity(water).value - densityOfAir.value);
}

double baumeOf(GramsPerMillilitre density, Celsius water) { return baumeModulus * (1.0 - waterDensity(water) / density); }

GramsPerMillilitre densityAt(const Hydrometer& instrument, double value, Celsius temperature)
{
    return densityOnScale(instrument, value) / glassVolume(instrument.calibration, temperature);
}

ScaleReading read(const Hydrometer& instrument, GramsPerMillilitre liquid, Celsius temperature)
{
    const GramsPerMillilitre atItsOwn = liquid * glassVolume(instrument.calibration, temperature);
    constexpr double rounding_g_mL = 1e-12;
    ScaleReading reading;
    if (atItsOwn.value < densityOnScale(instrument, instrument.from).value - rounding_g_mL)
        reading.onScale = OnScale::Below;
    else if (atItsOwn.value > densityOnScale(instrument, instrument.to).value + rounding_g_mL)
        reading.onScale = OnScale::Above;
    else
        reading.value = valueOf(instrument, atItsOwn);
    return reading;
}

std::optional<ScaleReading> read(const Hydrometer& instrument, const Mix& mix, Celsius temperature)
{
    const auto density = densityOf(mix, temperature);
    if (!density)
        return std::nullopt;
    ScaleReading reading = read(instrument, *density, temperature);
    reading.errors = errorsOf(instrument, mix, temperature);
    return reading;
}

std::vector<ErrorPart> errorsOf(const Hydrometer& instrument, const Mix& mix, Celsius temperature)
{
    std::vector<ErrorPart> errors{
        {phrase("the eye tells half a division"), instrument.division / 2.0}};  // common practice, no source
    const auto density = densityOf(mix, temperature);
    const auto warmer = densityOf(mix, {temperature.value + 1.0});
    if (!density || !warmer)
        return errors;
    const double value = read(instrument, *density, temperature).value.value_or(instrument.from);
    const double perUnit = slopeOf(instrument, value);
    const auto add = [&](Sentence reason, double sd_g_mL) {
        if (sd_g_mL > 0.0)
            errors.push_back({std::move(reason), sd_g_mL / perUnit});
    };
    add(phrase("the temperature is known to 1 °C"), std::abs((*warmer - *density).value));
    add(phrase("the density of the sugars and acids"), 0.0003);  // within 0.0002 to 0.0007 of the CRC Handbook
    // Sugar and alcohol are added up; a published note says that this fails beyond 5 % sucrose with 18 % alcohol. 0.001 is judgement.
    const double alcohol = shareOf(mix[Constituent::Ethanol], mix).value;
    const double sugar = shareOf(sugars(mix), mix).value;
    add(phrase("the density of sugar and alcohol together"), 0.001 * std::min(1.0, alcohol / 0.15) * std::min(1.0, sugar / 0.05));
    const double floating = shareOf(mix[Constituent::Fibre] + mix[Constituent::Starch] + mix[Constituent::Fat], mix).value;
    add(phrase("pulp or fat holds it up or lets it down"), std::min(0.004, 0.1 * floating));  // common practice: about a degree
    return errors;
}

}  // namespace firn
