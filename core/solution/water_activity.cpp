#include "solution/water_activity.h"

#include "solution/ethanol_activity.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr double gasConstant_J_molK = 8.314462618;
constexpr double water_g_mol = 18.01528;
constexpr double ethanol_g_mol = 46.0684;
constexpr double strongestEthanol_percent = 68.0;  // of the handbook's table

constexpr double molality(double mass_percent, double molarMass_g_mol)
{
    return 1000.0 * mass_percent / (100.0 - mass_percent) / molarMass_g_mol;
}

struct Sugar {
    Constituent constituent;
    double molarMass_g_mol;
    double q_J_mol;
    double a;
    double b;
    double massRatio;          // M / M_ref
    double measuredTo_mol_kg;  // no measurement, of it or of what it is taken to act like, is stronger
};

// M. Starzak and S. D. Peacock, Zuckerindustrie 122 (1997) 380: constants for sucrose. With ice by Murphy and Koop they give the CRC
// Handbook's freezing points of sucrose (1 to 42 %) within 0.05 K and of lactose (to 8 %) within 0.012 K. Other disaccharides are taken to
// act as sucrose does; no freezing data of theirs went into this.
constexpr double sucrose_g_mol = 342.297;
constexpr Sugar likeSucrose(Constituent constituent, double molarMass_g_mol, double massRatio = 1.0)
{
    return {constituent, molarMass_g_mol, -17638.0, -1.0038, -0.24653, massRatio, molality(42.0, molarMass_g_mol)};
}

constexpr Sugar norrish(Constituent constituent, double molarMass_g_mol, double q_J_mol, double measuredTo_percent)
{
    return {constituent, molarMass_g_mol, q_J_mol, 0.0, 0.0, 1.0, molality(measuredTo_percent, molarMass_g_mol)};
}

// Q fitted to freezing points of the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), "Concentrative properties of aqueous
// solutions", unless another source is named; largest error in brackets. "25 °C" marks Norrish constants K from vapour pressures at 25 °C
// (table 3 of PMC2836749), Q = -K R 298.15 K, not checked against freezing points.
constexpr std::array sugarTable{
    likeSucrose(Constituent::Sucrose, sucrose_g_mol),
    likeSucrose(Constituent::Lactose, sucrose_g_mol),
    likeSucrose(Constituent::Maltose, sucrose_g_mol),
    likeSucrose(Constituent::Trehalose, sucrose_g_mol),
    likeSucrose(Constituent::Maltitol, 344.313),
    likeSucrose(Constituent::Oligosaccharides, 504.4, 504.4 / sucrose_g_mol),
    likeSucrose(Constituent::Dextrins, 4000.0, 4000.0 / sucrose_g_mol),
    norrish(Constituent::Glucose, 180.156, -6000.0, 30.0),    // [0.02 K]
    norrish(Constituent::Galactose, 180.156, -6000.0, 30.0),  // as glucose
    norrish(Constituent::Fructose, 180.156, -4395.0, 28.0),   // [0.03 K]
    norrish(Constituent::Sorbitol, 182.172, -4090.0, 30.0),   // 25 °C, K = 1.65; mannitol from the CRC gives 1.63 at 0 °C
    norrish(Constituent::Xylitol, 152.146, -4115.0, 30.0),    // 25 °C, K = 1.66
    norrish(Constituent::Erythritol, 122.12, -3322.0, 30.0),  // 25 °C, K = 1.34
    // Å. Melinder, Properties of Secondary Working Fluids (IIR 2010), 19.5 to 63 %, made 0.3 K colder: the CRC Handbook is colder by about
    // that much where both tabulate. [0.7 K against Melinder]
    Sugar{Constituent::Glycerol, 92.094, -5983.0, -1.883, 0.0, 1.0, molality(63.0, 92.094)},
    // Ideal. The mass per mole of dissolved particles is what makes whole milk (USDA SR28, NDB 01077) freeze at -0.522 °C (R. W. Henningson,
    // North American average).
    norrish(Constituent::Minerals, 71.5, 0.0, 40.0),
};
constexpr double sugarsTrustedTo_percent = 80.0;

struct Electrolyte {
    Constituent constituent;
    double molarMass_g_mol;
    double c1, c2, c3, c4;
    double measuredTo_mol_kg;  // beyond, the tangent
};

// Fitted to the same handbook; largest error in brackets.
constexpr std::array electrolyteTable{
    Electrolyte{Constituent::Salt, 58.443, -0.03428033, 0.00336143, -0.00175973, -0.00014444, molality(23.0, 58.443)},  // [0.01 K]
    Electrolyte{Constituent::Acid, 192.124, -0.01847014, 0.0, -0.00108633, 0.00048988, molality(30.0, 192.124)},  // citric [0.02 K]
};

double lnActivityOf(const Electrolyte& salt, double m)
{
    const double inside = std::min(m, salt.measuredTo_mol_kg);
    const double root = std::sqrt(inside);
    const double value = inside * (salt.c1 + salt.c2 * root + inside * (salt.c3 + inside * salt.c4));
    const double slope = salt.c1 + 1.5 * salt.c2 * root + inside * (2.0 * salt.c3 + 3.0 * inside * salt.c4);
    return value + slope * (m - inside);
}

double lnActivityOfEthanol(double m)
{
    static constexpr double strongest = molality(strongestEthanol_percent, ethanol_g_mol);
    const auto at = [](double molality_mol_kg) {
        return lnActivityOfEthanolSolution(molality_mol_kg / (molality_mol_kg + 1000.0 / water_g_mol));
    };
    if (m <= strongest)
        return at(m);
    static const double last = at(strongest);
    static const double slope = (last - at(0.97 * strongest)) / (0.03 * strongest);
    return last + slope * (m - strongest);
}

}  // namespace

Grams unfreezableWater(const Mix& mix)
{
    const Grams held = mix[Constituent::Protein] * 0.3 + mix[Constituent::Hydrocolloid] * 0.5;
    return std::min(held, mix[Constituent::Water]);
}

Liquid::Liquid(const Mix& mix)
    : m_freeWater(mix[Constituent::Water] - unfreezableWater(mix))
    , m_ethanol(mix[Constituent::Ethanol])
{
    Grams sugars;
    for (std::size_t i = 0; i < sugarTable.size(); ++i) {
        const Grams mass = mix[sugarTable[i].constituent];
        if (mass.value > 0.0)
            m_sugars.add({i, mass.value / sugarTable[i].molarMass_g_mol});
        sugars += mass;
    }
    for (std::size_t i = 0; i < electrolyteTable.size(); ++i) {
        const Grams mass = mix[electrolyteTable[i].constituent];
        if (mass.value > 0.0)
            m_electrolytes.add({i, mass.value / electrolyteTable[i].molarMass_g_mol});
    }
    m_weakestTrustedWater_g = sugars.value * (100.0 - sugarsTrustedTo_percent) / sugarsTrustedTo_percent;
}

LnActivity Liquid::trustedActivityOfSugars(double liquidWater_g) const
{
    double moles = liquidWater_g / water_g_mol;
    double sugarMoles = 0.0;
    double weightedMoles = 0.0;
    for (const Solute& solute : m_sugars) {
        sugarMoles += solute.moles;
        weightedMoles += solute.moles * sugarTable[solute.kind].massRatio;
    }
    moles += sugarMoles;
    const double z = weightedMoles / moles;
    double sum = 0.0;
    for (const Solute& solute : m_sugars) {
        const Sugar& sugar = sugarTable[solute.kind];
        const double g = std::max(0.0, 1.0 + z * (sugar.a + z * sugar.b));
        sum += solute.moles * sugar.massRatio / moles * std::sqrt(-sugar.q_J_mol * g);
    }
    return {std::log1p(-sugarMoles / moles), -sum * sum / gasConstant_J_molK};
}

LnActivity Liquid::activityOfSugars(double liquidWater_g) const
{
    if (liquidWater_g >= m_weakestTrustedWater_g)
        return trustedActivityOfSugars(liquidWater_g);
    // Along the tangent in molality, which goes as one over the water.
    constexpr double h = 1e-4;
    const LnActivity edge = trustedActivityOfSugars(m_weakestTrustedWater_g);
    const LnActivity weaker = trustedActivityOfSugars(m_weakestTrustedWater_g * (1.0 + h));
    const double beyond = (m_weakestTrustedWater_g / liquidWater_g - 1.0) / (1.0 - 1.0 / (1.0 + h));
    return {
        edge.constant + (edge.constant - weaker.constant) * beyond, edge.perKelvin + (edge.perKelvin - weaker.perKelvin) * beyond};
}

Liquid::State Liquid::with(Grams liquidWater) const
{
    const double perKilogram = 1000.0 / liquidWater.value;
    LnActivity activity = activityOfSugars(liquidWater.value);
    double strength = 0.0;  // of all solutes, each against the strongest that was measured
    for (const Solute& solute : m_sugars)
        strength += solute.moles * perKilogram / sugarTable[solute.kind].measuredTo_mol_kg;
    for (const Solute& solute : m_electrolytes) {
        const double m = solute.moles * perKilogram;
        activity.constant += lnActivityOf(electrolyteTable[solute.kind], m);
        strength += m / electrolyteTable[solute.kind].measuredTo_mol_kg;
    }
    if (m_ethanol.value > 0.0) {
        const double m = m_ethanol.value / ethanol_g_mol * perKilogram;
        activity.constant += lnActivityOfEthanol(m);
        strength += m / molality(strongestEthanol_percent, ethanol_g_mol);
    }
    constexpr double rounding = 1e-9;
    return {activity, strength > 1.0 + rounding};
}

Liquid Liquid::withEthanol(Grams ethanol) const
{
    Liquid changed = *this;
    changed.m_ethanol = ethanol;
    return changed;
}

}  // namespace firn
