#include "readings/sugar_by_egg.h"

#include "readings/measurement_working.h"
#include "readings/mix_family.h"
#include "readings/target.h"
#include "solution/volume.h"

#include <algorithm>

namespace firn {

namespace {

// Keys of the figures that an egg finds.
constexpr const char* leastKey = "measured.sugars_least_percent";
constexpr const char* likelyKey = "measured.sugars_likely_percent";
constexpr const char* mostKey = "measured.sugars_most_percent";

/// What a hydrometer would show in such a liquid: so the one solver knows how to speak of it.
Measurement asHydrometer(GramsPerMillilitre liquid, Celsius temperature)
{
    const Hydrometer instrument = wholeScale(HydrometerScale::SpecificGravity);
    const ScaleReading shown = read(instrument, liquid, temperature);
    const double beyond = shown.onScale == OnScale::Below ? instrument.from : instrument.to;
    return HydrometerReading{shown.value.value_or(beyond), temperature, instrument};
}

Symbol endSymbol(const char* subscript, MassFraction sugars, Sentence meaning, const char* key)
{
    return {"w", subscript, percent(sugars), "%", std::move(meaning), key};
}

/// One egg and one width, and what was known beforehand.
struct EggAtHand {
    const EggReading& reading;
    std::optional<MassFraction> alcohol;
    const Mix& background;

    Result<MixEstimate> solvedFor(GramsPerMillilitre egg, Millimetres width, Workings* workings, const char* key) const
    {
        const Egg likely{reading.mass, egg};
        const Millimetres breadth = floatEgg(likely, egg).breadth;
        Working working;
        const auto liquid = liquidFloating(likely, std::clamp(width, Millimetres{0.0}, breadth), workings ? &working : nullptr);
        auto target = targetOf(asHydrometer(*liquid, reading.temperature));
        if (!target)
            return failure(target.error());
        target->value = liquid->value;  // the egg's own density, which a scale read back would blur
        std::vector<Workings> found;
        const auto all = solve({{*target, std::move(working)}}, {.alcohol = alcohol}, background, workings ? &found : nullptr);
        if (!all)
            return failure(all.error());
        if (workings)
            workings->of(key) = *found.front().find("measured.sugars_percent");
        return all->front();
    }
};

/// Where the oldest egg would need less than no sugar, or the freshest more than there can be, the range ends with what can be.
MassFraction endOf(const Result<MixEstimate>& solved, MassFraction possible, Workings* workings, const char* key)
{
    if (solved)
        return solved->sugar;
    if (workings) {
        MixEstimate end;
        end.sugar = possible;
        workings->of(key).found(symbolOf(Unknown::Sugars, end), Number{percent(possible), "%", true}, Source::Recipe).range =
            phrase("No mix is as light or as heavy as that egg asks for: the range ends with what can be.");
    }
    return possible;
}

}  // namespace

Result<SugarRange> sugarByEgg(
    const EggReading& reading, std::optional<MassFraction> alcohol, const Mix& background, Workings* workings)
{
    const Millimetres widest = floatEgg({reading.mass, reading.age.density}, reading.age.density).breadth;
    if (reading.mass.value <= 0.0)
        return failure(phrase("An egg weighs more than nothing. Give its mass in its shell."));
    if (reading.patchWidth.value <= 0.0)
        return failure(phrase("An egg that shows no patch has sunk: the mix is lighter than the egg, more cannot be said."));
    if (reading.patchWidth > widest)
        return failure(
            phrase("A patch of {0} mm is wider than an egg of {1} g, which is {2} mm across. Measure across the patch, not "
                   "along it, and weigh the egg.",
                Figure{reading.patchWidth.value, 0}, Figure{reading.mass.value, 0}, Figure{widest.value, 0}));

    const MixFamily family(background, alcohol ? MixFamily::Alcohol::InQuestion : MixFamily::Alcohol::StaysInTheWater);
    const MassFraction known = alcohol.value_or(MassFraction{0.0});
    const auto densest = densityOf(family.at(family.mostSugar(known), known), reading.temperature);
    if (*liquidFloating({reading.mass, reading.age.density}, reading.patchWidth) > *densest)
        return failure(
            phrase("No syrup is so dense that an egg of {1} g shows a patch of {0} mm. Measure across the patch, not along it, "
                   "and weigh the egg.",
                Figure{reading.patchWidth.value, 0}, Figure{reading.mass.value, 0}));

    const EggAtHand egg{reading, alcohol, background};
    const auto likely = egg.solvedFor(reading.age.density, reading.patchWidth, workings, likelyKey);
    if (!likely)
        return failure(likely.error());
    if (workings)
        recordKnown(*workings, Unknown::Alcohol, *likely, alcohol ? KnownFrom::Beforehand : KnownFrom::Recipe);
    const auto least = egg.solvedFor(reading.age.least, reading.patchWidth - reading.width_sd, workings, leastKey);
    const auto most = egg.solvedFor(reading.age.most, reading.patchWidth + reading.width_sd, workings, mostKey);
    return SugarRange{endOf(least, family.leastSugar(known), workings, leastKey), likely->sugar,
        endOf(most, family.mostSugar(known), workings, mostKey), likely->alcohol, likely->mix};
}

MixEstimate asEstimate(const SugarRange& range, Workings* workings)
{
    const MixEstimate middle{(range.least + range.most) / 2.0, (range.most - range.least) / 2.0, range.alcohol, {}, range.mix};
    if (workings) {
        const Symbol least = endSymbol(
            "least", range.least, phrase("sugars if the egg is the oldest that it may be, and shows a little less"), leastKey);
        const Symbol most = endSymbol("most", range.most, phrase("sugars if it is the freshest, and shows a little more"), mostKey);
        WorkingStep& step = workings->of("measured.sugars_percent")
                                .found(symbolOf(Unknown::Sugars, middle), (least + Formula(most)) / 2.0, Source::Egg);
        step.origin = phrase("the middle of what the egg allows");
        step.uncertainty = phrase("Half of the way from the least to the most, {0} %.", Figure{percent(middle.sugar_sd), 1});
    }
    return middle;
}

}  // namespace firn
