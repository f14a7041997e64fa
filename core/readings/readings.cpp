#include "readings/readings.h"

#include "mix/symbols.h"
#include "readings/hydrometer.h"
#include "readings/refractometer.h"
#include "solution/refraction.h"
#include "solution/sucrose.h"
#include "solution/volume.h"

#include <cmath>

namespace firn {

namespace {

double shareOfMix(const Mix& mix, Constituent c) { return shareOf(mix[c], mix).value; }

/// What these instruments would read if only the sugars were there, in as much water.
struct SugarsOnly {
    double brix;
    double specificGravity;
};

std::optional<SugarsOnly> sugarsOnly(const Mix& mix)
{
    const double sugars_g = sugars(mix).value;
    const double water_g = mix[Constituent::Water].value;
    if (water_g <= 0.0)
        return std::nullopt;
    const double share = sugars_g / (sugars_g + water_g);
    return SugarsOnly{100.0 * share, specificGravityInAir(sucroseSolutionDensity({share}, {20.0}))};
}

/// The mix with one constituent taken out, to see what it does to a reading.
Mix without(Mix mix, Constituent c)
{
    mix.amounts[c] = {0.0};
    return mix;
}

std::optional<double> brixAt20(const Mix& mix)
{
    const auto index = refractiveIndexOf(mix, {20.0});
    return index ? brixOfRefractiveIndex(*index) : std::nullopt;
}

std::vector<Sentence> disturbances(const Mix& mix)
{
    std::vector<Sentence> result;
    const auto brix = brixAt20(mix);
    if (shareOfMix(mix, Constituent::Ethanol) > 0.002) {
        const auto alone = brixAt20(without(mix, Constituent::Ethanol));
        constexpr double visible_brix = 0.1;
        if (brix && alone && std::abs(*brix - *alone) >= visible_brix)
            result.push_back(phrase("Alcohol: it bends light like sugar and lightens the mix. Without it the refractometer would "
                                    "show {0} °Bx instead of {1}, "
                                    "and the hydrometer and the egg read too little sugar.",
                Figure{*alone, 1}, Figure{*brix, 1}));
    }
    if (shareOf(mix.milkSolidsNotFat, mix).value > 0.01)
        result.push_back(
            phrase("Milk: its protein and minerals read as sugar, and its fat blurs the refractometer's line and carries the "
                   "hydrometer higher or lower. Do not trust either by more than a degree."));
    else if (shareOfMix(mix, Constituent::Fat) > 0.01)
        result.push_back(
            phrase("Fat: it blurs the refractometer's line and lightens the mix, so that a hydrometer reads too little sugar."));
    if (shareOfMix(mix, Constituent::Fibre) + shareOfMix(mix, Constituent::Starch) > 0.005)
        result.push_back(
            phrase("Fibre and pulp: they hold a hydrometer and an egg up. Strain the sample and let bubbles rise before reading."));
    if (const auto only = sugarsOnly(mix);
        only && brix && shareOfMix(mix, Constituent::Ethanol) <= 0.002 && *brix - only->brix > 0.3)
        result.push_back(phrase("Acids, minerals and other dissolved solids add {0} °Bx to what the sugars alone would show.",
            Figure{*brix - only->brix, 1}));
    if (shareOfMix(mix, Constituent::Hydrocolloid) > 0.001)
        result.push_back(phrase("Stabiliser: a thick mix settles a hydrometer and an egg slowly; wait before reading."));
    return result;
}

void recordHydrometer(Workings& workings, const Readings& found)
{
    Working& ofGravity = workings.of("readings.specific_gravity_20_20");
    const Symbol density{
        "ρ", "mix", found.density.value, "g/mL", phrase("density of the mix"), ofGravity.keyOf("readings.density_g_ml"), 4};
    const Symbol water = waterDensitySymbol({20.0});
    const Symbol air{"ρ", "air", densityOfAir.value, "g/mL", phrase("density of air")};
    const Symbol gravity{"SG", "", found.specificGravity_20_20, "",
        phrase("specific gravity, weighed in air against water at 20 °C"), ofGravity.keyOf("readings.specific_gravity_20_20"), 4};
    recordWaterDensity(ofGravity, water, temperatureSymbol({20.0}));
    ofGravity.found(gravity, (density - Formula(air)) / (water - Formula(air)), Source::SpecificGravity).range =
        phrase("A hydrometer made for 20 °C, in a strained mix without bubbles.");
    Working& ofBaume = workings.of("readings.baume");
    recordWaterDensity(ofBaume, water, temperatureSymbol({20.0}));
    ofBaume
        .found({"Bé", "", found.baume, "°Bé", phrase("degrees Baumé for liquids heavier than water")},
            Formula(Number{baumeModulus, "°Bé"}) * (1.0 - water / density), Source::Baume)
        .range = phrase("By true densities, not by those in air; a hydrometer made for 20 °C.");
    workings.of("readings.temperature_c")
        .found({"t", "read", found.temperature.value, "°C", phrase("temperature at which instruments are read")},
            Number{found.temperature.value, "°C", true}, Source::Recipe);
}

}  // namespace

std::optional<Readings> readings(const Mix& mix, Celsius temperature, const Egg& egg, Workings* workings)
{
    const auto workingOf = [workings](const char* figure) { return workings ? &workings->of(figure) : nullptr; };
    Working* const ofBrix = workingOf("readings.refractometer_brix");
    const auto index = refractiveIndexOf(mix, temperature, ofBrix);
    const auto density = densityOf(mix, temperature, index ? workingOf("readings.density_g_ml") : nullptr);
    if (!index || !density)
        return std::nullopt;
    Readings result;
    result.temperature = temperature;
    result.density = *density;
    result.refractiveIndex = *index;
    result.refractometer_brix = brixShown(*index, temperature, ofBrix);
    result.specificGravity_20_20 = specificGravityInAir(*density);
    result.baume = baumeOf(*density);
    result.egg = floatEgg(egg, *density, workingOf("readings.egg.exposed_width_mm"));
    result.disturbances = disturbances(mix);
    if (workings)
        recordHydrometer(*workings, result);
    return result;
}

}  // namespace firn
