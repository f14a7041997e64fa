#include "syrup/scales.h"

#include "mix/symbols.h"
#include "readings/hydrometer.h"
#include "solution/sucrose.h"
#include "syrup/syrup.h"

#include <array>
#include <boost/math/tools/roots.hpp>
#include <cstdint>
#include <string>

namespace firn {

namespace {

constexpr GramsPerMillilitre heapOfSugar{200.0 / 236.5882365};  // USDA SR28, NDB 19335: a US cup of granulated sugar weighs 200 g

constexpr std::string_view nbs = "ICUMSA SPS-4 densities; NBS Circular 440 prints the same";

constexpr std::array scales{
    SyrupScaleFacts{SyrupScale::Brix, "°Bx (% by mass)", "°Bx", 1, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::SpecificGravity, "Specific gravity 20/20 °C", "", 4, strongestOfKnownDensity, nbs},
    SyrupScaleFacts{SyrupScale::Baume, "°Bé (modulus 145)", "°Bé", 1, strongestOfKnownDensity, nbs},
    SyrupScaleFacts{
        SyrupScale::GramsPerLitre, "Sugar in a litre of syrup, 20 °C", "g/L", 0, strongestOfKnownDensity, "ICUMSA SPS-4 densities"},
    SyrupScaleFacts{
        SyrupScale::GramsPerLitreOfWater, "Sugar to a litre of water, 20 °C", "g/L", 0, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::PartsByMass, "Parts of sugar to one of water, by mass", "", 3, strongestSyrup, "by definition"},
    SyrupScaleFacts{SyrupScale::PartsByVolume, "Cups of dry sugar to one cup of water", "", 2, strongestSyrup,
        "a cup of sugar 200 g, USDA SR28, NDB 19335; packing moves it by a tenth (judgement)"},
};

constexpr Celsius room{20.0};
constexpr double litre_mL = 1000.0;

double shownOn(SyrupScale scale, MassFraction sucrose)
{
    const double w = sucrose.value;
    const double perGramOfWater = w / (1.0 - w);
    const GramsPerMillilitre density = sucroseSolutionDensity(sucrose, room);
    switch (scale) {
    case SyrupScale::Brix:
        return percent(sucrose);
    case SyrupScale::SpecificGravity:
        return specificGravityInAir(density);
    case SyrupScale::Baume:
        return baumeOf(density);
    case SyrupScale::GramsPerLitre:
        return litre_mL * w * density.value;
    case SyrupScale::GramsPerLitreOfWater:
        return litre_mL * waterDensity(room).value * perGramOfWater;
    case SyrupScale::PartsByMass:
        return perGramOfWater;
    case SyrupScale::PartsByVolume:
        return perGramOfWater * (waterDensity(room) / heapOfSugar);
    }
    return 0.0;
}

bool isOfDensity(SyrupScale scale)
{
    return scale == SyrupScale::SpecificGravity || scale == SyrupScale::Baume || scale == SyrupScale::GramsPerLitre;
}

bool isByVolumeOfWater(SyrupScale scale) { return scale == SyrupScale::GramsPerLitreOfWater || scale == SyrupScale::PartsByVolume; }

void record(Working& working, SyrupScale scale, MassFraction sucrose, double shown)
{
    const Symbol w{"W", "", sucrose.value, "", phrase("sugar in a gram of syrup")};
    const Symbol water = waterDensitySymbol(room), t = temperatureSymbol(room);
    const Symbol density{"ρ", "", sucroseSolutionDensity(sucrose, room).value, "g/mL", phrase("density of the syrup"), {}, 5};
    const Symbol ratio{"r", "", sucrose.value / (1.0 - sucrose.value), "", phrase("grams of sugar to one gram of water")};
    if (isOfDensity(scale) || isByVolumeOfWater(scale))
        recordWaterDensity(working, water, t);
    if (isOfDensity(scale))
        recordSucroseDensity(working, density, w, water, t);
    if (isByVolumeOfWater(scale))
        working.found(ratio, w / (1.0 - Formula(w)), Source::Definition);
    const SyrupScaleFacts& facts = factsOf(scale);
    const auto found = [&](const char* name, Formula right, Source source) -> WorkingStep& {
        Symbol result{name, "", shown, std::string(facts.unit), phrase("the syrup on the scale “{0}”", std::string(facts.name))};
        if (scale == SyrupScale::SpecificGravity)
            result.decimals = facts.decimals;
        return working.found(std::move(result), std::move(right), source);
    };
    switch (scale) {
    case SyrupScale::Brix:
        found("B", Formula(Number{100.0, "°Bx"}) * w, Source::Definition);
        return;
    case SyrupScale::SpecificGravity: {
        const Symbol air{"ρ", "air", densityOfAir.value, "g/mL", phrase("density of air")};
        found("SG", (density - Formula(air)) / (water - Formula(air)), Source::SpecificGravity);
        return;
    }
    case SyrupScale::Baume:
        found("Bé", Formula(Number{baumeModulus, "°Bé"}) * (1.0 - water / density), Source::Baume);
        return;
    case SyrupScale::GramsPerLitre:
        found("c", Formula(Number{litre_mL, "mL/L"}) * w * density, Source::Definition);
        return;
    case SyrupScale::GramsPerLitreOfWater:
        found("c", Formula(Number{litre_mL, "mL/L"}) * water * ratio, Source::Definition);
        return;
    case SyrupScale::PartsByMass:
        found("r", w / (1.0 - Formula(w)), Source::Definition);
        return;
    case SyrupScale::PartsByVolume: {
        const Symbol heap{"ρ", "heap", heapOfSugar.value, "g/mL", phrase("density of granulated sugar in a cup")};
        WorkingStep& step = found("n", ratio * (water / heap), Source::KitchenUnits);
        step.origin = phrase("a cup of sugar 200 g, USDA SR28, NDB 19335");
        step.uncertainty = phrase("Packing moves it by a tenth (judgement).");
        return;
    }
    }
}

}  // namespace

std::span<const SyrupScaleFacts> allSyrupScales() { return scales; }

const SyrupScaleFacts& factsOf(SyrupScale scale) { return scales[static_cast<std::size_t>(scale)]; }

Result<double> valueOn(SyrupScale scale, MassFraction sucrose, Working* working)
{
    const SyrupScaleFacts& facts = factsOf(scale);
    if (!(sucrose.value >= 0.0 && sucrose <= facts.strongest))
        return failure(phrase("“{0}” is known from 0 to {1} % sugar by mass, not at {2} %.", std::string(facts.name),
            Figure{percent(facts.strongest), 0}, Figure{percent(sucrose), 1}));
    const double shown = shownOn(scale, sucrose);
    if (working)
        record(*working, scale, sucrose, shown);
    return shown;
}

Result<MassFraction> strengthFrom(SyrupScale scale, double value)
{
    const SyrupScaleFacts& facts = factsOf(scale);
    const double lowest = shownOn(scale, {0.0});
    const double highest = shownOn(scale, facts.strongest);
    if (!(value >= lowest && value <= highest))
        return failure(
            phrase("No syrup has {0} on the scale “{1}”: it goes from {2}, which is water, to {3}.", Figure{value, facts.decimals},
                std::string(facts.name), Figure{lowest, facts.decimals}, Figure{highest, facts.decimals}));
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::toms748_solve([&](double w) { return shownOn(scale, {w}) - value; }, 0.0,
        facts.strongest.value, boost::math::tools::eps_tolerance<double>(50), steps);
    return MassFraction{(low + high) / 2.0};
}

}  // namespace firn
