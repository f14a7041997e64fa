#include "readings/sugar_by_egg.h"

#include "readings/mix_family.h"
#include "solution/volume.h"

#include <algorithm>

namespace firn {

namespace {

/// The density as a hydrometer would show it, so that the one solver does the rest.
Measurement asHydrometer(GramsPerMillilitre liquid, Celsius temperature)
{
    const Hydrometer instrument = wholeScale(HydrometerScale::SpecificGravity);
    const ScaleReading shown = read(instrument, liquid, temperature);
    const double beyond = shown.onScale == OnScale::Below ? instrument.from : instrument.to;
    return HydrometerReading{shown.value.value_or(beyond), temperature, instrument};
}

}  // namespace

Result<SugarRange> sugarByEgg(const EggReading& reading, std::optional<MassFraction> alcohol, const Mix& background)
{
    const auto solvedFor = [&](GramsPerMillilitre egg, Millimetres width) -> Result<MixEstimate> {
        const Egg likely{reading.mass, egg};
        const Millimetres breadth = floatEgg(likely, egg).breadth;
        const auto liquid = liquidFloating(likely, std::clamp(width, Millimetres{0.0}, breadth));
        const Measurement measurement = asHydrometer(*liquid, reading.temperature);
        return solve({&measurement, 1}, {.alcohol = alcohol}, background).map([](const auto& all) { return all.front(); });
    };

    const Millimetres widest = floatEgg({reading.mass, reading.age.density}, reading.age.density).breadth;
    if (reading.mass.value <= 0.0)
        return failure(phrase("An egg weighs more than nothing: give its mass in its shell."));
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

    const auto likely = solvedFor(reading.age.density, reading.patchWidth);
    if (!likely)
        return failure(likely.error());
    // Where the oldest egg would need less than no sugar, or the freshest more than there can be, the range ends with what can be.
    const auto least = solvedFor(reading.age.least, reading.patchWidth - reading.width_sd);
    const auto most = solvedFor(reading.age.most, reading.patchWidth + reading.width_sd);
    return SugarRange{least ? least->sugar : family.leastSugar(known), likely->sugar, most ? most->sugar : family.mostSugar(known),
        likely->alcohol, likely->mix};
}

std::vector<MixEstimate> asEstimates(const SugarRange& range)
{
    return {{(range.least + range.most) / 2.0, (range.most - range.least) / 2.0, range.alcohol, {}, range.mix}};
}

}  // namespace firn
