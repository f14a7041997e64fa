#include "analysis/workings_as_read.h"

#include "analysis/recorded_reading.h"

#include <array>

namespace firn {

std::string figureComputedFor(Instrument instrument)
{
    constexpr std::array<std::string_view, 6> names{
        "refractometer_brix", "hydrometer_brix", "hydrometer_gravity", "hydrometer_baume", "egg_width_mm", "boiling_point_c"};
    return "computed." + std::string(names.at(static_cast<std::size_t>(instrument)));
}

Workings workingsAsRead(std::span<const ReadingRecord> records, Recipe recipe, const Catalogue& catalogue, Conditions conditions,
    std::optional<std::size_t> component)
{
    recipe.readings.clear();
    for (const ReadingRecord& record : records) {
        conditions.readAt = temperatureOf(record);
        if (record.instrument == Instrument::Egg) {
            const EggReading egg = eggOf(record);
            conditions.instruments.egg.mass = egg.mass;
            conditions.instruments.egg.density = egg.age.density;
        }
    }
    Workings workings;
    const Analysis analysis = analyse(recipe, catalogue, conditions, component, {}, &workings);
    for (const ReadingRecord& record : records)
        computedFor(record, analysis.mix, &workings.of(figureComputedFor(record.instrument)));
    return workings;
}

}  // namespace firn
