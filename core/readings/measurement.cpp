#include "readings/measurement.h"

#include "readings/measurement_working.h"
#include "readings/one_unknown.h"
#include "readings/two_unknowns.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr Celsius warmestAlcohol{40.0};  // the end of OIML R 22

using Estimates = Result<std::vector<MixEstimate>>;

bool isRefractometer(const Measurement& reading) { return std::holds_alternative<RefractometerReading>(reading); }

/// The mean of two measurements of one thing, each by its weight.
void combine(MassFraction& value, MassFraction& sd, MassFraction other, MassFraction other_sd)
{
    const double weight = 1.0 / (sd.value * sd.value);
    const double otherWeight = 1.0 / (other_sd.value * other_sd.value);
    value = {(value.value * weight + other.value * otherWeight) / (weight + otherWeight)};
    sd = {1.0 / std::sqrt(weight + otherWeight)};
}

/// How far two estimates of one unknown are apart, in standard deviations.
double apart(const MixEstimate& a, const MixEstimate& b)
{
    const double away = std::abs((a.sugar - b.sugar).value) + std::abs((a.alcohol - b.alcohol).value);
    return away / std::hypot(a.sugar_sd.value, b.sugar_sd.value, std::hypot(a.alcohol_sd.value, b.alcohol_sd.value));
}

/// Two readings of one unknown: their mean, if they agree.
Estimates inAgreement(const std::vector<MixEstimate>& first, const std::vector<MixEstimate>& second, const MixFamily& family,
    const std::vector<ExplainedTarget>& readings, std::vector<Workings>* workings)
{
    const MixEstimate* bestFirst = &first.front();
    const MixEstimate* bestSecond = &second.front();
    for (const MixEstimate& a : first) {
        for (const MixEstimate& b : second) {
            if (apart(a, b) < apart(*bestFirst, *bestSecond)) {
                bestFirst = &a;
                bestSecond = &b;
            }
        }
    }
    constexpr double tolerated = 3.0;
    const bool isSugar = bestFirst->sugar_sd.value > 0.0;
    const auto figure = [&](const MixEstimate& e) { return Figure{percent(isSugar ? e.sugar : e.alcohol), 1}; };
    if (apart(*bestFirst, *bestSecond) > tolerated)
        return failure(isSugar
                           ? phrase("The refractometer says {0} % sugar and the hydrometer {1} %. Read both again, or leave the "
                                    "alcohol to be found from them.",
                               figure(*bestFirst), figure(*bestSecond))
                           : phrase("The refractometer says {0} % alcohol and the hydrometer {1} %. Read both again, or leave the "
                                    "sugar to be found from them.",
                               figure(*bestFirst), figure(*bestSecond)));
    MixEstimate mean = *bestFirst;
    if (isSugar)
        combine(mean.sugar, mean.sugar_sd, bestSecond->sugar, bestSecond->sugar_sd);
    else
        combine(mean.alcohol, mean.alcohol_sd, bestSecond->alcohol, bestSecond->alcohol_sd);
    mean.mix = family.at(mean.sugar, mean.alcohol);
    if (workings)
        recordMean(workings->emplace_back(), readings[0], *bestFirst, readings[1], *bestSecond,
            isSugar ? Unknown::Sugars : Unknown::Alcohol, mean);
    return std::vector{mean};
}

std::optional<Sentence> faultOf(const Beforehand& known)
{
    const auto isShare = [](std::optional<MassFraction> share) { return !share || (share->value >= 0.0 && share->value < 1.0); };
    if (!isShare(known.sugar) || !isShare(known.alcohol))
        return phrase("What is known of sugar and alcohol must be from 0 to less than 100 % by mass.");
    if (known.sugar && known.alcohol)
        return phrase("Where sugar and alcohol are both known there is nothing to find. Leave one of them out.");
    return std::nullopt;
}

}  // namespace

Estimates solve(
    std::span<const Measurement> measurements, const Beforehand& known, const Mix& background, std::vector<Workings>* workings)
{
    const bool isPair = measurements.size() == 2 && isRefractometer(measurements[0]) != isRefractometer(measurements[1]);
    if (measurements.size() != 1 && !isPair)
        return failure(phrase("Give one reading, or one of a refractometer and one of a hydrometer."));
    std::vector<ExplainedTarget> readings;
    for (const Measurement& measurement : measurements) {
        Working working;
        auto target = targetOf(measurement, workings ? &working : nullptr);
        if (!target)
            return failure(std::move(target.error()));
        readings.push_back({*target, std::move(working)});
    }
    if (isPair && readings[0].target.property == Target::Property::Density)
        std::swap(readings[0], readings[1]);
    return solve(readings, known, background, workings);
}

Estimates solve(
    const std::vector<ExplainedTarget>& readings, const Beforehand& known, const Mix& background, std::vector<Workings>* workings)
{
    if (auto fault = faultOf(known))
        return failure(std::move(*fault));
    if (!background.isEmpty() && background[Constituent::Water].value <= 0.0)
        return failure(phrase("There is no water in the recipe: no instrument can read it."));
    const bool isPair = readings.size() == 2;
    const bool staysInTheWater = !isPair && !known.sugar && !known.alcohol;
    const bool hasAlcohol = !staysInTheWater || background[Constituent::Ethanol].value > 0.0;
    const auto isWarm = [](const ExplainedTarget& reading) { return reading.target.temperature > warmestAlcohol; };
    if (hasAlcohol && known.alcohol != MassFraction{0.0} && std::ranges::any_of(readings, isWarm))
        return failure(
            phrase("With alcohol in it a mix can be read up to {0}. Let it cool.", temperatureFigure(warmestAlcohol, 0)));

    const MixFamily family(background, staysInTheWater ? MixFamily::Alcohol::StaysInTheWater : MixFamily::Alcohol::InQuestion);
    if (isPair && !known.sugar && !known.alcohol) {
        auto both = sugarAndAlcoholFrom(readings[0].target, readings[1].target, family);
        if (both && workings) {
            for (const MixEstimate& found : *both)
                recordPair(workings->emplace_back(), readings[0], readings[1], found);
        }
        return both;
    }
    const auto from = [&](const Target& target) {
        return known.sugar ? alcoholFrom(target, family, *known.sugar)
                           : sugarFrom(target, family, known.alcohol.value_or(MassFraction{0.0}));
    };
    auto first = from(readings[0].target);
    if (first && !isPair && workings) {
        for (const MixEstimate& found : *first)
            recordEstimate(workings->emplace_back(), readings[0], known.sugar ? Unknown::Alcohol : Unknown::Sugars, found,
                staysInTheWater ? KnownFrom::Recipe : KnownFrom::Beforehand);
    }
    if (!first || !isPair)
        return first;
    auto second = from(readings[1].target);
    return second ? inAgreement(*first, *second, family, readings, workings) : second;
}

}  // namespace firn
