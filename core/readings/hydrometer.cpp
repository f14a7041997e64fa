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

/// Cubic expansion of the soda-lime glass of hydrometers (from memory).
constexpr double glassPerKelvin = 25e-6;

double glassVolume(Calibration calibration, Celsius temperature)
{
    return 1.0 + glassPerKelvin * (temperature - temperatureOf(calibration)).value;
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

Symbol shownSymbol(HydrometerScale scale, double value)
{
    switch (scale) {
    case HydrometerScale::SpecificGravity:
        return {"SG", "", value, "", phrase("what a hydrometer in specific gravity shows"), {}, 4};
    case HydrometerScale::Baume:
        return {"Bé", "", value, "°Bé", phrase("what a hydrometer in degrees Baumé shows")};
    case HydrometerScale::Brix:
        break;
    }
    return {"B", "", value, "°Bx", phrase("what a hydrometer in degrees Brix shows")};
}

/// The liquid itself may have another temperature.
Symbol waterOfScaleSymbol(Celsius made)
{
    Symbol water = waterDensitySymbol(made);
    water.subscript = "w,scale";
    return water;
}

/// From the density of the liquid to what the scale shows in it.
void recordScale(Working& working, const Hydrometer& instrument, GramsPerMillilitre liquid, Celsius temperature, double value)
{
    const Celsius made = temperatureOf(instrument.calibration);
    const Symbol density{"ρ", "mix", liquid.value, "g/mL", phrase("density of the mix without air"), {}, 4};
    const Symbol seen{"ρ", "seen", liquid.value * glassVolume(instrument.calibration, temperature), "g/mL",
        phrase("density that the scale seems to see: a warmer float takes more room"), {}, 4};
    const Symbol glass{"k", "glass", glassPerKelvin, "1/K", phrase("expansion of the float's glass, for each kelvin")};
    const Symbol at{"t", "read", temperature.value, "°C", phrase("temperature of the mix when it is read")};
    const Symbol madeFor{"t", "scale", made.value, "°C", phrase("temperature that the scale is made for")};
    working.found(seen, density * (1.0 + glass * (at - Formula(madeFor))), Source::SpecificGravity).origin =
        phrase("expansion of soda-lime glass from memory");
    const Symbol shown = shownSymbol(instrument.scale, value);
    const Symbol water = waterOfScaleSymbol(made);
    if (instrument.scale != HydrometerScale::Brix)
        recordWaterDensity(working, water, madeFor);
    switch (instrument.scale) {
    case HydrometerScale::SpecificGravity: {
        const Symbol air{"ρ", "air", densityOfAir.value, "g/mL", phrase("density of air")};
        working.found(shown, (seen - Formula(air)) / (water - Formula(air)), Source::SpecificGravity);
        return;
    }
    case HydrometerScale::Baume:
        working.found(shown, Formula(Number{baumeModulus, "°Bé"}) * (1.0 - water / seen), Source::Baume);
        return;
    case HydrometerScale::Brix:
        break;
    }
    const double low = std::max(instrument.from, 0.0), high = std::min(instrument.to, highestSucrose_percent);
    WorkingStep& step = working.solved(shown,
        function("ρ_sucrose", {shown, madeFor}, phrase("density of sucrose in water, of that strength and temperature")), seen,
        Source::SugarDensity,
        phrase("Solved for B between {0} and {1} °Bx: the sucrose solution of this density.", Figure{low, 0}, Figure{high, 0}));
    step.range = phrase("Alcohol lightens the mix, so that it shows less sugar than there is.");
}

/// Back from what was read to the density of the liquid.
void recordDensityAt(Working& working, const Hydrometer& instrument, double value, Celsius temperature, GramsPerMillilitre liquid)
{
    const Celsius made = temperatureOf(instrument.calibration);
    Symbol read = shownSymbol(instrument.scale, value);
    read.meaning = phrase("what the hydrometer showed");
    const Symbol seen{
        "ρ", "seen", densityOnScale(instrument, value).value, "g/mL", phrase("density that the scale writes so"), {}, 4};
    const Symbol madeFor{"t", "scale", made.value, "°C", phrase("temperature that the scale is made for")};
    const Symbol water = waterOfScaleSymbol(made);
    if (instrument.scale != HydrometerScale::Brix)
        recordWaterDensity(working, water, madeFor);
    switch (instrument.scale) {
    case HydrometerScale::SpecificGravity: {
        const Symbol air{"ρ", "air", densityOfAir.value, "g/mL", phrase("density of air")};
        working.found(seen, read * (water - Formula(air)) + air, Source::SpecificGravity);
        break;
    }
    case HydrometerScale::Baume:
        working.found(seen, water * (Number{baumeModulus, "°Bé"} / (Formula(Number{baumeModulus, "°Bé"}) - read)), Source::Baume);
        break;
    case HydrometerScale::Brix:
        working.found(seen,
            function("ρ_sucrose", {read, madeFor}, phrase("density of sucrose in water, of that strength and temperature")),
            Source::SugarDensity);
        break;
    }
    const Symbol glass{"k", "glass", glassPerKelvin, "1/K", phrase("expansion of the float's glass, for each kelvin")};
    const Symbol at{"t", "read", temperature.value, "°C", phrase("temperature of the mix when it was read")};
    working
        .found({"ρ", "mix", liquid.value, "g/mL", phrase("density of the mix without air"), {}, 4},
            seen / (1.0 + glass * (at - Formula(madeFor))), Source::SpecificGravity)
        .origin = phrase("expansion of soda-lime glass from memory");
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

GramsPerMillilitre densityAt(const Hydrometer& instrument, double value, Celsius temperature, Working* working)
{
    const GramsPerMillilitre density = densityOnScale(instrument, value) / glassVolume(instrument.calibration, temperature);
    if (working) [[unlikely]]
        recordDensityAt(*working, instrument, value, temperature, density);
    return density;
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

std::optional<ScaleReading> read(const Hydrometer& instrument, const Mix& mix, Celsius temperature, Working* working)
{
    const auto density = densityOf(mix, temperature, working);
    if (!density)
        return std::nullopt;
    ScaleReading reading = read(instrument, *density, temperature);
    reading.errors = errorsOf(instrument, mix, temperature);
    if (working && reading.value)
        recordScale(*working, instrument, *density, temperature, *reading.value);
    else if (working)
        working->giveUp();
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
