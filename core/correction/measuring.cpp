#include "correction/measuring.h"

#include "analysis/preparation.h"
#include "readings/readings.h"
#include "solution/volume.h"

namespace firn {

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

std::optional<Result<JarFilling>> fillingFor(const Jar& jar, const Mix& mix, Celsius temperature)
{
    const auto density = densityOf(mix, temperature);
    return density ? std::optional(fillingFor(jar, HydrometerBody{}, *density)) : std::nullopt;
}

}  // namespace firn
