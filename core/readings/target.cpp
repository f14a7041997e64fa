#include "readings/target.h"

#include "solution/ethanol.h"
#include "solution/refraction.h"
#include "solution/volume.h"

#include <algorithm>

namespace firn {

namespace {

constexpr Celsius coldest{0.0};
constexpr Celsius warmest{60.0};

Shown onScale(const Refractometer&, double value) { return {{value, 1}, "°Bx"}; }

Shown onScale(const Hydrometer& instrument, double value)
{
    switch (instrument.scale) {
    case HydrometerScale::SpecificGravity:
        return {{value, 3}, "SG"};
    case HydrometerScale::Baume:
        return {{value, 1}, "°Bé"};
    case HydrometerScale::Brix:
        break;
    }
    return {{value, 1}, "°Bx"};
}

double valueOf(const RefractometerReading& reading) { return reading.brix; }
double valueOf(const HydrometerReading& reading) { return reading.value; }
double fromOf(const Refractometer& instrument) { return instrument.from_brix; }
double fromOf(const Hydrometer& instrument) { return instrument.from; }
double toOf(const Refractometer& instrument) { return instrument.to_brix; }
double toOf(const Hydrometer& instrument) { return instrument.to; }

Refractometer wholeScaleLike(const Refractometer& instrument)
{
    return {0.0, highestBrix, instrument.compensates, instrument.division_brix};
}
Hydrometer wholeScaleLike(const Hydrometer& instrument) { return wholeScale(instrument.scale, instrument.calibration); }

/// The value, or the end of the whole scale that it lies beyond.
template <class Instrument>
double onWholeScale(const Instrument& whole, const ScaleReading& reading)
{
    return reading.value.value_or(reading.onScale == OnScale::Below ? fromOf(whole) : toOf(whole));
}

/// Why no liquid can have made the instrument show this.
std::optional<Sentence> faultOf(const RefractometerReading& reading)
{
    if (reading.brix < 0.0)
        return phrase(
            "A mix cannot hold less than no sugar, and {0} °Bx is below the beginning of every scale. Check the instrument "
            "with water, which must show 0.",
            Figure{reading.brix, 1});
    return std::nullopt;
}

std::optional<Sentence> faultOf(const HydrometerReading& reading)
{
    const Hydrometer whole = wholeScaleLike(reading.instrument);
    if (reading.instrument.scale == HydrometerScale::Brix && reading.value < 0.0)
        return phrase("A hydrometer in °Bx begins at 0: for a mix that is lighter than water use one in specific gravity.");
    const ScaleReading alcohol = read(whole, ethanolSolutionDensity({1.0}, reading.temperature), reading.temperature);
    if (const double least = onWholeScale(whole, alcohol); reading.value < least) {
        const Shown pure = onScale(whole, least);
        return phrase("{0} {1} is lighter than pure alcohol, which shows {2}: no mix is so light. Read it again.",
            onScale(whole, reading.value).value, pure.unit, pure.value);
    }
    return std::nullopt;
}

template <class Reading>
std::optional<Sentence> faultOfScale(const Reading& reading)
{
    const double from = fromOf(reading.instrument);
    const double to = toOf(reading.instrument);
    if (valueOf(reading) >= from && valueOf(reading) <= to)
        return std::nullopt;
    const Shown end = onScale(reading.instrument, to);
    return phrase("{0} {1} is off the scale of this instrument, which goes from {2} to {3}. Choose the instrument that was read.",
        onScale(reading.instrument, valueOf(reading)).value, end.unit, onScale(reading.instrument, from).value, end.value);
}

Target targetFrom(const RefractometerReading& reading, Working* working)
{
    return {Target::Property::RefractiveIndex, refractiveIndexAt(reading.instrument, reading.brix, reading.temperature, working),
        reading.temperature, {}};
}

Target targetFrom(const HydrometerReading& reading, Working* working)
{
    return {Target::Property::Density, densityAt(reading.instrument, reading.value, reading.temperature, working).value,
        reading.temperature, {}};
}

/// How much of the property a unit of the scale is worth, where it was read.
double slopeOf(const RefractometerReading& reading)
{
    constexpr double step_brix = 0.1;
    const double from = std::min(reading.brix, highestBrix - step_brix);
    const auto at = [&](double brix) { return refractiveIndexAt(reading.instrument, brix, reading.temperature); };
    return (at(from + step_brix) - at(from)) / step_brix;
}

double slopeOf(const HydrometerReading& reading)
{
    const double step = reading.instrument.scale == HydrometerScale::SpecificGravity ? 0.001 : 0.1;
    const auto at = [&](double value) { return densityAt(reading.instrument, value, reading.temperature); };
    return (at(reading.value) - at(reading.value - step)).value / step;
}

}  // namespace

double Target::excess(const Mix& mix) const
{
    const double found = property == Property::Density ? densityOf(mix, temperature)->value : *refractiveIndexOf(mix, temperature);
    return found - value;
}

double Target::sd(const Mix& mix) const
{
    return std::visit([&](const auto& r) { return combined(errorsOf(r.instrument, mix, r.temperature)) * slopeOf(r); }, reading);
}

Result<Target> targetOf(const Measurement& measurement, Working* working)
{
    return std::visit(
        [&](const auto& reading) -> Result<Target> {
            if (reading.temperature < coldest || reading.temperature > warmest)
                return failure(phrase("Readings can be understood from {0} to {1}. Bring the sample there and read it again.",
                    temperatureFigure(coldest, 0), temperatureFigure(warmest, 0)));
            if (auto fault = faultOf(reading))
                return failure(std::move(*fault));
            if (auto fault = faultOfScale(reading))
                return failure(std::move(*fault));
            Target target = targetFrom(reading, working);
            target.reading = measurement;
            return target;
        },
        measurement);
}

Shown shown(const Measurement& measurement)
{
    return std::visit([](const auto& reading) { return onScale(reading.instrument, valueOf(reading)); }, measurement);
}

Shown wouldShow(const Measurement& measurement, const Mix& mix)
{
    return std::visit(
        [&](const auto& reading) {
            const auto whole = wholeScaleLike(reading.instrument);
            return onScale(whole, onWholeScale(whole, *read(whole, mix, reading.temperature)));
        },
        measurement);
}

}  // namespace firn
