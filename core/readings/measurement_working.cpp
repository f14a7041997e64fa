#include "readings/measurement_working.h"

namespace firn {

namespace {

Symbol sugars(const MixEstimate& found)
{
    return {"w", "sugars", percent(found.sugar), "%", phrase("sugars in the mix, as measured")};
}

Symbol alcohol(const MixEstimate& found)
{
    return {"w", "alcohol", percent(found.alcohol), "%", phrase("alcohol in the mix by mass, as measured")};
}

Symbol numbered(Symbol symbol, const char* number)
{
    symbol.subscript += number;
    return symbol;
}

Formula propertyOfMix(const Target& target, const Symbol& sugars, const Symbol& alcohol)
{
    const bool isIndex = target.property == Target::Property::RefractiveIndex;
    return isIndex ? function("nD_mix", {sugars, alcohol, Number{target.temperature.value, "°C", true}},
               phrase("refractive index of a mix with so much sugar and alcohol, at that temperature"))
                   : function("ρ_found", {sugars, alcohol, Number{target.temperature.value, "°C", true}},
                       phrase("density of a mix with so much sugar and alcohol, at that temperature"));
}

void solveFor(
    Working& working, const ExplainedTarget& reading, Unknown unknown, const Symbol& sugars, const Symbol& alcohol, Sentence method)
{
    const bool isIndex = reading.target.property == Target::Property::RefractiveIndex;
    WorkingStep& step =
        working.solved(unknown == Unknown::Sugars ? sugars : alcohol, propertyOfMix(reading.target, sugars, alcohol),
            reading.working.steps().back().result, isIndex ? Source::Refraction : Source::SoluteVolumes, std::move(method));
    step.range = phrase("All but sugars and alcohol is believed as the recipe has it, in the same proportions.");
}

Working& workingOf(Workings& workings, Unknown unknown)
{
    return workings.of(unknown == Unknown::Sugars ? "measured.sugars_percent" : "measured.alcohol_percent");
}

Sentence forOne(Unknown unknown)
{
    return unknown == Unknown::Sugars ? phrase("Solved for the share of sugars: the mix that shows so.")
                                      : phrase("Solved for the share of alcohol: the mix that shows so.");
}

Unknown other(Unknown unknown) { return unknown == Unknown::Sugars ? Unknown::Alcohol : Unknown::Sugars; }

/// The weight of a measurement in a mean.
Formula weightOf(const Symbol& deviation) { return 1.0 / power(deviation, 2.0); }

}  // namespace

Symbol symbolOf(Unknown unknown, const MixEstimate& found) { return unknown == Unknown::Sugars ? sugars(found) : alcohol(found); }

void recordKnown(Workings& workings, Unknown unknown, const MixEstimate& found, KnownFrom from)
{
    const Symbol known = symbolOf(unknown, found);
    workingOf(workings, unknown).found(known, Number{known.value, "%", true}, Source::Recipe).origin =
        from == KnownFrom::Beforehand ? phrase("known without measuring")
                                      : phrase("not measured: it keeps the proportion to the water that the recipe gives it");
}

void recordEstimate(
    Workings& workings, const ExplainedTarget& reading, Unknown unknown, const MixEstimate& found, KnownFrom otherFrom)
{
    recordKnown(workings, other(unknown), found, otherFrom);
    Working& working = workingOf(workings, unknown);
    working.add(reading.working.steps());
    solveFor(working, reading, unknown, sugars(found), alcohol(found), forOne(unknown));
}

void recordMean(Workings& workings, const ExplainedTarget& firstReading, const MixEstimate& first,
    const ExplainedTarget& secondReading, const MixEstimate& second, Unknown unknown, const MixEstimate& mean)
{
    recordKnown(workings, other(unknown), mean, KnownFrom::Beforehand);
    Working& working = workingOf(workings, unknown);
    const auto from = [&](const ExplainedTarget& reading, const MixEstimate& found, const char* number) {
        Symbol ofSugars = sugars(found), ofAlcohol = alcohol(found);
        Symbol& sought = unknown == Unknown::Sugars ? ofSugars : ofAlcohol;
        sought = numbered(std::move(sought), number);
        working.add(reading.working.steps());
        solveFor(working, reading, unknown, ofSugars, ofAlcohol, forOne(unknown));
        return sought;
    };
    const auto deviation = [&](const MixEstimate& found, const char* number) {
        const MassFraction sd = unknown == Unknown::Sugars ? found.sugar_sd : found.alcohol_sd;
        return Symbol{"σ", number, percent(sd), "%", phrase("standard deviation of that reading")};
    };
    const Symbol x1 = from(firstReading, first, ",1"), x2 = from(secondReading, second, ",2");
    const Symbol sd1 = deviation(first, "1"), sd2 = deviation(second, "2");
    working
        .found(symbolOf(unknown, mean), (x1 * weightOf(sd1) + x2 * weightOf(sd2)) / (weightOf(sd1) + weightOf(sd2)),
            Source::Definition)
        .origin = phrase("the mean of both, each by how sure it is");
}

void recordPair(Workings& workings, const ExplainedTarget& index, const ExplainedTarget& density, const MixEstimate& found)
{
    for (const Unknown unknown : {Unknown::Sugars, Unknown::Alcohol}) {
        Working& working = workingOf(workings, unknown);
        working.add(index.working.steps());
        working.add(density.working.steps());
        solveFor(working, density, other(unknown), sugars(found), alcohol(found),
            phrase("One of two equations with two unknowns, solved together with the next."));
        solveFor(working, index, unknown, sugars(found), alcohol(found),
            phrase("Solved together with the equation before: the mix that both instruments show."));
    }
}

}  // namespace firn
