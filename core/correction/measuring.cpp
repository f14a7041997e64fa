#include "correction/measuring.h"

#include "analysis/preparation.h"
#include "readings/readings.h"
#include "solution/volume.h"

#include <fmt/format.h>

namespace firn {

std::string figureApart(Instrument instrument)
{
    return "apart" + figureComputedFor(instrument).substr(std::string_view("computed").size());
}

namespace {

FoundMix besideRecipe(const MixEstimate& estimate, const Beforehand& known, const Measuring& measuring)
{
    FoundMix found;
    found.estimate = estimate;
    found.isAlcoholFound = estimate.alcohol_sd.value > 0.0;
    found.isSugarFound = !known.sugar;
    found.sugarDifference = estimate.sugar - measuring.sugar;
    found.alcoholDifference = estimate.alcohol - measuring.alcohol;
    found.state = {estimate.sugar, estimate.sugar_sd, {}};
    // Otherwise the recipe's alcohol stays.
    if (found.isAlcoholFound || known.alcohol)
        found.state.alcohol = estimate.alcohol;
    return found;
}

/// How far apart two figures of the workings are; the measured one is a reading itself where it has no working.
void recordApart(Workings& workings, const std::string& key, Symbol measured, const std::string& computedFigure, double difference,
    Sentence meaning)
{
    const Working* ofComputed = workings.find(computedFigure);
    if (!ofComputed)
        return;
    Symbol computed = ofComputed->steps().back().result;
    computed.figure = computedFigure;
    workings.of(key).found({"Δ" + computed.name, computed.subscript, difference, computed.unit, std::move(meaning)},
        Formula(std::move(measured)) - Formula(computed), Source::Definition);
}

void recordApart(Workings& workings, const BesideReading& beside)
{
    const std::string computedFigure = figureComputedFor(beside.record.instrument);
    if (const Working* ofComputed = workings.find(computedFigure); ofComputed && beside.difference) {
        const Symbol& computed = ofComputed->steps().back().result;
        recordApart(workings, figureApart(beside.record.instrument),
            {computed.name, "read", beside.record.value, computed.unit, phrase("what was read"), {}, computed.decimals},
            computedFigure, *beside.difference, phrase("what was read less what is computed for it"));
    }
}

void recordApart(Workings& workings, const std::string& what, MassFraction difference)
{
    const std::string measuredFigure = fmt::format("measured.{}_percent", what);
    if (const Working* ofMeasured = workings.find(measuredFigure)) {
        Symbol measured = ofMeasured->steps().back().result;
        measured.subscript += ",measured";
        measured.figure = measuredFigure;
        recordApart(workings, fmt::format("apart.{}_percent", what), std::move(measured), "percent." + what, percent(difference),
            phrase("{0}, measured less computed", what));
    }
}

}  // namespace

Measuring measuring(const Recipe& recipe, const Catalogue& catalogue, std::size_t component,
    const std::vector<ReadingRecord>& instruments, bool isRead, const Beforehand& known, std::vector<Workings>* workings)
{
    Measuring result;
    const Mix& mix = result.computed = prepared(recipe, catalogue).components[component].mix();
    if (!mix.isEmpty()) {
        result.sugar = shareOf(sugars(mix), mix);
        result.alcohol = shareOf(mix[Constituent::Ethanol], mix);
    }
    for (const ReadingRecord& instrument : instruments)
        result.beside.push_back(besideComputed(instrument, mix));
    if (const auto all = readings(mix, {20.0})) {
        // None of them disturbs a thermometer.
        if (!instruments.empty() && instruments.front().instrument != Instrument::BoilingPoint)
            result.disturbances = all->disturbances;
        result.refractometer_brix = all->refractometer_brix;
    }
    if (!isRead)
        return result;
    const auto found = foundBy(instruments, known, mix, workings);
    if (!found) {
        result.problem = found.error();
        return result;
    }
    result.range = found->range;
    for (const MixEstimate& estimate : found->mixes)
        result.mixes.push_back(besideRecipe(estimate, known, result));
    return result;
}

Workings workingsOfMeasuring(const Recipe& recipe, const Catalogue& catalogue, std::size_t component, const Conditions& conditions,
    const std::vector<ReadingRecord>& instruments, bool isRead, const Beforehand& known, std::size_t mix)
{
    Workings all = workingsAsRead(instruments, recipe, catalogue, conditions, component);
    std::vector<Workings> ofMixes;
    const Measuring found = measuring(recipe, catalogue, component, instruments, isRead, known, &ofMixes);
    if (isRead) {
        for (const BesideReading& beside : found.beside)
            recordApart(all, beside);
    }
    if (mix < ofMixes.size()) {
        for (const auto& [figure, working] : ofMixes[mix].all())
            all.of(figure).add(working.steps());
        recordApart(all, "sugars", found.mixes[mix].sugarDifference);
        recordApart(all, "alcohol", found.mixes[mix].alcoholDifference);
    }
    return all;
}

std::optional<Result<JarFilling>> fillingFor(const Jar& jar, const Mix& mix, Celsius temperature)
{
    const auto density = densityOf(mix, temperature);
    return density ? std::optional(fillingFor(jar, HydrometerBody{}, *density)) : std::nullopt;
}

}  // namespace firn
