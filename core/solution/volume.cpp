#include "solution/volume.h"

#include "mix/symbols.h"
#include "solution/ethanol.h"
#include "solution/solute_optics.h"
#include "solution/sucrose.h"

#include <algorithm>

namespace firn {

namespace {

/// Volume per gram that a solute seems to take when the solution's density is rho at this mass fraction.
double apparentVolume_mL_g(double massFraction, GramsPerMillilitre solution, GramsPerMillilitre water)
{
    return (1.0 / solution.value - (1.0 - massFraction) / water.value) / massFraction;
}

// Below this strength the difference of two densities is all rounding; the apparent volume no longer changes there.
constexpr double weakest = 1e-4;
constexpr double strongestSucrose = 0.84;

/// A solution of one solute, whose density the source gives.
struct PureSolution {
    std::string solute;
    Symbol strength;
    double used;  // the strength within the limits of the source
    GramsPerMillilitre density;
    double volume_mL_g;
    Source source;
};

/// The density, then the volume that a gram takes. The density of water stands before.
void recordApparentVolume(Working& working, const PureSolution& solution, Celsius temperature)
{
    Symbol within = solution.strength;
    if (solution.used != within.value) {
        within = {
            within.name, solution.solute + ",used", solution.used, "", phrase("the same within the limits of the source"), {}, 5};
        working.found(within, solution.used, solution.source).range =
            phrase("Strengths below {0} count as that, and sugars beyond {1}.", Figure{weakest, 4}, Figure{strongestSucrose, 2});
    }
    const std::string& name = solution.solute;
    const Symbol rho{
        "ρ", name, solution.density.value, "g/mL", phrase("density of a solution of {0} of that strength", name), {}, 5};
    const Symbol water = waterDensitySymbol(temperature), t = temperatureSymbol(temperature);
    if (solution.source == Source::SugarDensity)
        recordSucroseDensity(working, rho, within, water, t);
    else
        recordEthanolDensity(working, rho, within, t);
    working.found({"v", name, solution.volume_mL_g, "mL/g", phrase("volume that a gram of {0} takes in it", name), {}, 4},
        (1.0 / Formula(rho) - (1.0 - Formula(within)) / water) / within, Source::Definition);
}

double sucroseVolume_mL_g(MassFraction strength, Celsius temperature, Working* working = nullptr)
{
    const double w = std::clamp(strength.value, weakest, strongestSucrose);
    const GramsPerMillilitre solution = sucroseSolutionDensity({w}, temperature);
    const GramsPerMillilitre water = waterDensity(temperature);
    const double volume_mL_g = apparentVolume_mL_g(w, solution, water);
    if (working) [[unlikely]]
        recordApparentVolume(*working,
            {"sucrose", solidsStrengthSymbol({strength, {}}), w, solution, volume_mL_g, Source::SugarDensity}, temperature);
    return volume_mL_g;
}

double ethanolVolume_mL_g(MassFraction strength, Celsius temperature, Working* working = nullptr)
{
    const double p = std::max(strength.value, weakest);
    const GramsPerMillilitre solution = ethanolSolutionDensity({p}, temperature);
    const GramsPerMillilitre water = waterDensity(temperature);
    const double volume_mL_g = apparentVolume_mL_g(p, solution, water);
    if (working) [[unlikely]]
        recordApparentVolume(*working,
            {"ethanol", ethanolStrengthSymbol({{}, strength}), p, solution, volume_mL_g, Source::EthanolDensity}, temperature);
    return volume_mL_g;
}

constexpr double proteinVolume_mL_g = 0.735;  // milk proteins in solution, from memory

// Choi and Okos 1986: densities in kg/m3 against t in °C, -40 to 150 °C, given there as straight lines.
double fatVolume_mL_g(double t_c) { return 1000.0 / (925.59 - 0.41757 * t_c); }
double carbohydrateVolume_mL_g(double t_c) { return 1000.0 / (1599.1 - 0.31046 * t_c); }
double fibreVolume_mL_g(double t_c) { return 1000.0 / (1311.5 - 0.36589 * t_c); }

void recordStrength(Working& working, const Mix& mix, Grams solids, const Strength& strength)
{
    const Symbol water = massOf(Constituent::Water, mix, working);
    std::vector<SeriesTerm> terms;
    for (const DissolvedSolid& solid : dissolvedSolids()) {
        if (mix[solid.constituent].value > 0.0)
            terms.push_back({partOf(solid.constituent).label, massOf(solid.constituent, mix, working)});
    }
    if (solids.value > 0.0) {
        const Symbol dissolved{"m", "dissolved", solids.value, "g", phrase("all that is dissolved in the water")};
        working.found(dissolved, series("i", generalMass(), std::move(terms)), Source::Definition);
        working.found(solidsStrengthSymbol(strength), dissolved / (Formula(dissolved) + water), Source::Definition);
    }
    const Symbol ethanol = massOf(Constituent::Ethanol, mix, working);
    if (ethanol.value > 0.0)
        working.found(ethanolStrengthSymbol(strength), ethanol / (Formula(ethanol) + water), Source::Definition);
}

/// Grams times millilitres a gram, added up.
class VolumeSum {
public:
    VolumeSum(const Mix& mix, const Working* working)
        : m_mix(mix)
        , m_working(working)
    {
    }

    void addWater(Celsius temperature)
    {
        const double water_g = m_mix[Constituent::Water].value;
        m_volume_mL += water_g / waterDensity(temperature).value;
        if (m_working && water_g > 0.0) [[unlikely]]
            m_terms.push_back({partOf(Constituent::Water).label,
                massOf(Constituent::Water, m_mix, *m_working) / waterDensitySymbol(temperature)});
    }

    void add(Constituent c, double volume_mL_g)
    {
        const double grams = m_mix[c].value;
        m_volume_mL += grams * volume_mL_g;
        if (m_working && grams > 0.0) [[unlikely]]
            m_terms.push_back({partOf(c).label,
                massOf(c, m_mix, *m_working)
                    * Symbol{"v", partOf(c).subscript, volume_mL_g, "mL/g", phrase("volume that a gram of it takes here"), {}, 4}});
    }

    double volume_mL() const { return m_volume_mL; }
    Formula formula()
    {
        return series(
            "i", generalMass() * Symbol{"v", "i", 0.0, "mL/g", phrase("volume that a gram of each takes")}, std::move(m_terms));
    }

private:
    const Mix& m_mix;
    const Working* m_working;
    double m_volume_mL = 0.0;
    std::vector<SeriesTerm> m_terms;
};

}  // namespace

Strength strengthOf(const Mix& mix, Working* working)
{
    const Grams water = mix[Constituent::Water];
    Grams solids;
    for (const DissolvedSolid& solid : dissolvedSolids())
        solids += mix[solid.constituent];
    const Grams ethanol = mix[Constituent::Ethanol];
    const auto share = [&](Grams part) { return MassFraction{part.value > 0.0 ? part / (part + water) : 0.0}; };
    const Strength strength{share(solids), share(ethanol)};
    if (working) [[unlikely]]
        recordStrength(*working, mix, solids, strength);
    return strength;
}

Millilitres liquidVolumeOf(const Mix& mix, Celsius temperature, Working* working)
{
    const Strength strength = strengthOf(mix, working);
    if (working) [[unlikely]]
        recordWaterDensity(*working, waterDensitySymbol(temperature), temperatureSymbol(temperature));
    const bool hasSolids = strength.dissolvedSolids.value > 0.0;
    // Other solids expand with warmth as sucrose does at the same strength.
    const double ofSucrose_mL_g = sucroseVolume_mL_g(strength.dissolvedSolids, temperature, hasSolids ? working : nullptr);
    const double expansion_mL_g =
        temperature == Celsius{20.0} ? 0.0 : ofSucrose_mL_g - sucroseVolume_mL_g(strength.dissolvedSolids, {20.0});
    VolumeSum sum(mix, working);
    sum.addWater(temperature);
    for (const DissolvedSolid& solid : dissolvedSolids()) {
        if (mix[solid.constituent].value > 0.0)
            sum.add(solid.constituent,
                solid.hasVolumeOfSucrose ? ofSucrose_mL_g : solid.volume_mL_g.at(strength.dissolvedSolids) + expansion_mL_g);
    }
    if (mix[Constituent::Ethanol].value > 0.0)
        sum.add(Constituent::Ethanol, ethanolVolume_mL_g(strength.ethanol, temperature, working));
    sum.add(Constituent::Protein, proteinVolume_mL_g);
    const Millilitres volume{sum.volume_mL()};
    if (working) [[unlikely]]
        working->found(volumeSymbol(volume, "liquid", temperature), sum.formula(), Source::SoluteVolumes).uncertainty =
            phrase("0.0007 g/mL at most for solutions of one solute; sugar and alcohol together are simply added.");
    return volume;
}

Millilitres volumeOf(const Mix& mix, Celsius temperature, Working* working)
{
    const double t_c = temperature.value;
    const Millilitres liquid = liquidVolumeOf(mix, temperature, working);
    VolumeSum beside(mix, working);
    beside.add(Constituent::Fat, fatVolume_mL_g(t_c));
    beside.add(Constituent::Fibre, fibreVolume_mL_g(t_c));
    beside.add(Constituent::Starch, carbohydrateVolume_mL_g(t_c));
    beside.add(Constituent::Other, carbohydrateVolume_mL_g(t_c));
    const Millilitres volume = liquid + Millilitres{beside.volume_mL()};
    if (working) [[unlikely]] {
        WorkingStep& step = working->found(volumeSymbol(volume, "mix", temperature),
            volumeSymbol(liquid, "liquid", temperature) + beside.formula(), Source::FoodVolumes);
        step.range = phrase("From 0 to 40 °C, without air; down to -20 °C with growing error.");
    }
    return volume;
}

std::optional<GramsPerMillilitre> densityOf(const Mix& mix, Celsius temperature, Working* working)
{
    if (mix.isEmpty())
        return std::nullopt;
    const Millilitres volume = volumeOf(mix, temperature, working);
    const GramsPerMillilitre density{mix.mass().value / volume.value};
    if (working) [[unlikely]]
        working->found({"ρ", "mix", density.value, "g/mL", phrase("density of the mix without air"), {}, 4},
            massOfMix(mix, *working) / volumeSymbol(volume, "mix", temperature), Source::Definition);
    return density;
}

Symbol volumeSymbol(Millilitres volume, std::string subscript, Celsius temperature)
{
    return {"V", std::move(subscript), volume.value, "mL", phrase("volume at {0} °C", Figure{temperature.value, 0})};
}

Symbol solidsStrengthSymbol(const Strength& strength)
{
    return {"W", "", strength.dissolvedSolids.value, "", phrase("strength of the dissolved solids in the water"), {}, 5};
}

Symbol ethanolStrengthSymbol(const Strength& strength)
{
    return {"W", "ethanol", strength.ethanol.value, "", phrase("strength of the alcohol in the water"), {}, 5};
}

}  // namespace firn
