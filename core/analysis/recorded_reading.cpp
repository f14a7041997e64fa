#include "analysis/recorded_reading.h"

#include "readings/sugar_by_boiling.h"
#include "solution/volume.h"

#include <algorithm>

namespace firn {

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

Celsius temperatureOf(const ReadingRecord& record) { return {record.temperature_c.value_or(20.0)}; }

namespace {

bool isHydrometer(Instrument instrument)
{
    return instrument == Instrument::HydrometerBrix || instrument == Instrument::HydrometerGravity
           || instrument == Instrument::HydrometerBaume;
}

/// An egg whose density is that of an age in the list is one of that age, with its spread; any other density was measured.
EggAge ageOf(GramsPerMillilitre density)
{
    const auto age = std::ranges::find(eggAges(), density, &EggAge::density);
    return age == eggAges().end() ? EggAge{"measured", density, density, density} : *age;
}

}  // namespace

EggReading eggOf(const ReadingRecord& record)
{
    EggReading reading{{record.value}, temperatureOf(record)};
    reading.mass = record.eggMass.value_or(reading.mass);
    if (record.eggDensity)
        reading.age = ageOf(*record.eggDensity);
    return reading;
}

namespace {

BoilingReading boilingOf(const ReadingRecord& record) { return {{record.value}, record.pressure.value_or(standardPressure)}; }

std::optional<ScaleReading> patchIn(const EggReading& egg, const Mix& mix, Working* working)
{
    const auto liquid = densityOf(mix, egg.temperature);
    const auto lies = [&](GramsPerMillilitre density, Working* ofIt = nullptr) {
        return liquid ? floatEgg({egg.mass, density}, *liquid, ofIt) : EggFloat{};
    };
    const EggFloat likely = lies(egg.age.density, working);
    if (!likely.floats) {
        if (working)
            working->giveUp();
        return std::nullopt;
    }
    const Millimetres byAge = (lies(egg.age.least).exposedWidth - lies(egg.age.most).exposedWidth) / 2.0;
    return ScaleReading{OnScale::Yes, likely.exposedWidth.value,
        {{phrase("the ruler"), egg.width_sd.value}, {phrase("the egg's age"), byAge.value}}};
}

std::optional<ScaleReading> boilIn(const BoilingReading& reading, const Mix& mix, Working* working)
{
    const auto boils = boilingPointOf(mix, reading.pressure, working);
    if (!boils) {
        if (working)
            working->giveUp();
        return std::nullopt;
    }
    return ScaleReading{OnScale::Yes, boils->temperature.value, errorsOf(reading, boils->halfGap)};
}

}  // namespace

std::optional<ScaleReading> computedFor(const ReadingRecord& record, const Mix& computed, Working* working)
{
    switch (record.instrument) {
    case Instrument::Refractometer:
        return read(refractometerOf(record), computed, temperatureOf(record), working);
    case Instrument::Egg:
        return patchIn(eggOf(record), computed, working);
    case Instrument::BoilingPoint:
        return boilIn(boilingOf(record), computed, working);
    case Instrument::HydrometerBrix:
    case Instrument::HydrometerGravity:
    case Instrument::HydrometerBaume:
        break;
    }
    return read(hydrometerOf(record), computed, temperatureOf(record), working);
}

Result<Found> foundBy(
    std::span<const ReadingRecord> records, const Beforehand& known, const Mix& computed, std::vector<Workings>* workings)
{
    const auto ofTheOne = [&] { return workings ? &workings->emplace_back() : nullptr; };
    if (records.size() == 1 && records.front().instrument == Instrument::Egg) {
        Workings* ofEgg = ofTheOne();
        return sugarByEgg(eggOf(records.front()), known.alcohol, computed, ofEgg).map([&](const SugarRange& range) {
            return Found{{asEstimate(range, ofEgg)}, range};
        });
    }
    if (records.size() == 1 && records.front().instrument == Instrument::BoilingPoint)
        return sugarByBoiling(boilingOf(records.front()), computed, ofTheOne()).map([](const MixEstimate& one) {
            return Found{{one}};
        });
    std::vector<Measurement> measurements;
    for (const ReadingRecord& record : records) {
        if (record.instrument == Instrument::Refractometer)
            measurements.push_back(RefractometerReading{record.value, temperatureOf(record), refractometerOf(record)});
        else if (isHydrometer(record.instrument))
            measurements.push_back(HydrometerReading{record.value, temperatureOf(record), hydrometerOf(record)});
        else
            return failure(phrase("An egg and a boiling point are read alone. Leave the other readings out."));
    }
    return solve(measurements, known, computed, workings).map([](std::vector<MixEstimate> mixes) {
        return Found{std::move(mixes)};
    });
}

Result<std::vector<MixEstimate>> mixesBy(const ReadingRecord& record, const Mix& computed)
{
    return foundBy({&record, 1}, {}, computed).map([](Found found) { return std::move(found.mixes); });
}

}  // namespace firn
