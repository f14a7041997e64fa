#include "analysis/recorded_reading.h"

#include "readings/sugar_by_boiling.h"
#include "readings/sugar_by_egg.h"
#include "solution/volume.h"

namespace firn {

namespace {

Celsius temperatureOf(const ReadingRecord& record) { return {record.temperature_c.value_or(20.0)}; }

Refractometer refractometerOf(const ReadingRecord& record)
{
    const Refractometer usual;
    return {record.from.value_or(usual.from_brix), record.to.value_or(usual.to_brix), record.compensates,
        record.division.value_or(usual.division_brix)};
}

Hydrometer hydrometerOf(const ReadingRecord& record)
{
    const HydrometerScale scale = record.instrument == Instrument::HydrometerGravity ? HydrometerScale::SpecificGravity
                                  : record.instrument == Instrument::HydrometerBaume ? HydrometerScale::Baume
                                                                                     : HydrometerScale::Brix;
    const Hydrometer whole = wholeScale(scale, record.isMadeFor60F ? Calibration::At60F : Calibration::At20C);
    return {scale, whole.calibration, record.from.value_or(whole.from), record.to.value_or(whole.to),
        record.division.value_or(whole.division)};
}

EggReading eggOf(const ReadingRecord& record)
{
    EggReading reading{{record.value}, temperatureOf(record)};
    reading.mass = record.eggMass.value_or(reading.mass);
    if (record.eggDensity)
        reading.age = {"measured", *record.eggDensity, *record.eggDensity, *record.eggDensity};
    return reading;
}

BoilingReading boilingOf(const ReadingRecord& record) { return {{record.value}, record.pressure.value_or(standardPressure)}; }

std::optional<ScaleReading> patchIn(const EggReading& egg, const Mix& mix)
{
    const auto liquid = densityOf(mix, egg.temperature);
    const EggFloat lies = liquid ? floatEgg({egg.mass, egg.age.density}, *liquid) : EggFloat{};
    if (!lies.floats)
        return std::nullopt;
    return ScaleReading{OnScale::Yes, lies.exposedWidth.value, {{phrase("the ruler"), egg.width_sd.value}}};
}

std::optional<ScaleReading> boilIn(const BoilingReading& reading, const Mix& mix)
{
    const auto boils = boilingPointOf(mix, reading.pressure);
    if (!boils)
        return std::nullopt;
    return ScaleReading{OnScale::Yes, boils->temperature.value, errorsOf(reading, boils->halfGap)};
}

}  // namespace

std::optional<ScaleReading> computedFor(const ReadingRecord& record, const Mix& computed)
{
    switch (record.instrument) {
    case Instrument::Refractometer:
        return read(refractometerOf(record), computed, temperatureOf(record));
    case Instrument::Egg:
        return patchIn(eggOf(record), computed);
    case Instrument::BoilingPoint:
        return boilIn(boilingOf(record), computed);
    case Instrument::HydrometerBrix:
    case Instrument::HydrometerGravity:
    case Instrument::HydrometerBaume:
        break;
    }
    return read(hydrometerOf(record), computed, temperatureOf(record));
}

Result<std::vector<MixEstimate>> mixesBy(const ReadingRecord& record, const Mix& computed)
{
    switch (record.instrument) {
    case Instrument::Egg:
        return sugarByEgg(eggOf(record), {}, computed).map(asEstimates);
    case Instrument::BoilingPoint:
        return sugarByBoiling(boilingOf(record), computed).map([](const MixEstimate& one) { return std::vector{one}; });
    case Instrument::Refractometer: {
        const Measurement measurement = RefractometerReading{record.value, temperatureOf(record), refractometerOf(record)};
        return solve({&measurement, 1}, {}, computed);
    }
    case Instrument::HydrometerBrix:
    case Instrument::HydrometerGravity:
    case Instrument::HydrometerBaume:
        break;
    }
    const Measurement measurement = HydrometerReading{record.value, temperatureOf(record), hydrometerOf(record)};
    return solve({&measurement, 1}, {}, computed);
}

}  // namespace firn
