#include "analysis/measured_beside.h"

#include "analysis/recorded_reading.h"
#include "recipe/versions.h"

#include <algorithm>

namespace firn {

namespace {

/// Hydrometers are one kind, whatever is written on their scale.
Instrument kindOf(const ReadingRecord& record)
{
    return record.instrument == Instrument::HydrometerGravity || record.instrument == Instrument::HydrometerBaume
               ? Instrument::HydrometerBrix
               : record.instrument;
}

/// Of one date, and such as are solved together.
bool areOnePair(const ReadingRecord& a, const ReadingRecord& b)
{
    const auto has = [&](Instrument kind) { return kindOf(a) == kind || kindOf(b) == kind; };
    return !a.date.empty() && a.date == b.date && has(Instrument::Refractometer) && has(Instrument::HydrometerBrix);
}

std::optional<MixEstimate> mixOf(const std::vector<BesideReading>& latest, const Mix& computed, Workings* workings)
{
    std::vector<ReadingRecord> together{latest.back().record};
    if (latest.size() > 1 && areOnePair(latest[latest.size() - 2].record, latest.back().record))
        together.push_back(latest[latest.size() - 2].record);
    std::vector<Workings> ofMixes;
    const auto found = foundBy(together, {}, computed, workings ? &ofMixes : nullptr);
    if (!found || found->mixes.size() != 1)
        return std::nullopt;
    for (const Workings& ofMix : ofMixes) {
        for (const auto& [figure, working] : ofMix.all())
            workings->of(figure).add(working.steps());
    }
    return found->mixes.front();
}

}  // namespace

BesideReading besideComputed(const ReadingRecord& record, const Mix& computed)
{
    BesideReading beside{record, computedFor(record, computed), {}};
    if (beside.computed && beside.computed->value)
        beside.difference = record.value - *beside.computed->value;
    return beside;
}

bool isAbout(const std::string& recorded, const Recipe& recipe, std::optional<std::size_t> component)
{
    if (recorded.empty() && recipe.components.size() == 1)
        return true;
    return recorded == (component ? recipe.components.at(*component).name : std::string());
}

MeasuredBeside measuredBeside(const Recipe& recipe, std::optional<std::size_t> component, const Mix& computed, Workings* workings)
{
    MeasuredBeside measured;
    const std::string bench = recipe.readings.empty() ? std::string() : versionOfBench(recipe);
    for (const ReadingRecord& record : recipe.readings) {
        if (!isAbout(record.component, recipe, component) || (!record.version.empty() && record.version != bench))
            continue;
        std::erase_if(measured.readings, [&](const BesideReading& one) { return kindOf(one.record) == kindOf(record); });
        measured.readings.push_back({record, {}, {}});
    }
    if (measured.readings.empty() || computed.isEmpty())
        return measured;
    for (BesideReading& one : measured.readings)
        one = besideComputed(one.record, computed);
    measured.mix = mixOf(measured.readings, computed, workings);
    if (measured.mix)
        measured.sugarDifference = measured.mix->sugar - shareOf(sugars(computed), computed);
    return measured;
}

}  // namespace firn
