#include "solution/solute_activity.h"

#include "mix/symbols.h"
#include "solution/ethanol_activity.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

// M. Starzak and S. D. Peacock, Zuckerindustrie 122 (1997) 380: constants for sucrose. With ice by Murphy and Koop they give the CRC
// Handbook's freezing points of sucrose (1 to 42 %) within 0.05 K and of lactose (to 8 %) within 0.012 K. Other disaccharides are taken to
// act as sucrose does; no freezing data of theirs went into this.
constexpr double sucrose_g_mol = 342.297;
constexpr SugarActivity likeSucrose(Constituent constituent, double molarMass_g_mol, double massRatio = 1.0)
{
    return {constituent, molarMass_g_mol, -17638.0, -1.0038, -0.24653, massRatio, molality(42.0, molarMass_g_mol)};
}

constexpr SugarActivity norrish(Constituent constituent, double molarMass_g_mol, double q_J_mol, double measuredTo_percent)
{
    return {constituent, molarMass_g_mol, q_J_mol, 0.0, 0.0, 1.0, molality(measuredTo_percent, molarMass_g_mol)};
}

// Q fitted to freezing points of the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), "Concentrative properties of aqueous
// solutions", unless another source is named; largest error in brackets. "25 °C" marks Norrish constants K from vapour pressures at 25 °C
// (table 3 of PMC2836749), Q = -K R 298.15 K, not checked against freezing points.
constexpr std::array sugarTable{
    likeSucrose(Constituent::Sucrose, sucrose_g_mol),
    likeSucrose(Constituent::Lactose, sucrose_g_mol),
    norrish(Constituent::Maltose, 342.296, -14550.0, 40.0),  // smallest share of the depression from 3 % up: [1.9 %, 0.08 K]
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
    SugarActivity{Constituent::Glycerol, 92.094, -5983.0, -1.883, 0.0, 1.0, molality(63.0, 92.094)},
    // Ideal. The mass per mole of dissolved particles is what makes whole milk (USDA SR28, NDB 01077) freeze at -0.522 °C (R. W. Henningson,
    // North American average).
    norrish(Constituent::Minerals, 71.5, 0.0, 40.0),
};
// Fitted to the same handbook; largest error in brackets.
constexpr std::array electrolyteTable{
    ElectrolyteActivity{
        Constituent::Salt, 58.443, -0.03428033, 0.00336143, -0.00175973, -0.00014444, molality(23.0, 58.443)},  // [0.01 K]
    ElectrolyteActivity{
        Constituent::Acid, 192.124, -0.01847014, 0.0, -0.00108633, 0.00048988, molality(30.0, 192.124)},  // citric [0.02 K]
};

double moleFractionOfEthanol(double m) { return m / (m + 1000.0 / water_g_mol); }

/// The strongest solution that was measured, in mol/kg, and ln a_w and its slope there.
struct Edge {
    double strongest, value, slope;
};

const Edge& edgeOfEthanol()
{
    static const Edge edge = [] {
        constexpr double strongest = molality(strongestEthanol_percent, ethanol_g_mol);
        const auto at = [](double m) { return lnActivityOfEthanolSolution(moleFractionOfEthanol(m)); };
        return Edge{strongest, at(strongest), (at(strongest) - at(0.97 * strongest)) / (0.03 * strongest)};
    }();
    return edge;
}

void recordTangent(Working& working, Constituent c, double m, const Edge& edge, double result, Source source)
{
    const std::string& name = partOf(c).subscript;
    const Symbol last{"L", name + ",edge", edge.value, "", phrase("the same at the strongest solution that was measured")};
    const Symbol steepness{"D", name, edge.slope, "kg/mol", phrase("slope there")};
    const Symbol strongest{"b", name + ",edge", edge.strongest, "mol/kg", phrase("strongest solution that was measured")};
    working.found(lnActivitySymbol(c, result), last + Formula(steepness) * (molalitySymbol(c, m) - Formula(strongest)), source)
        .range = phrase("Stronger than anything that was measured: the tangent goes on.");
}

void recordElectrolyte(Working& working, const ElectrolyteActivity& salt, double m, const Edge& edge, double result)
{
    if (m > edge.strongest) {
        recordTangent(working, salt.constituent, m, edge, result, Source::SaltActivity);
        return;
    }
    const Formula b = molalitySymbol(salt.constituent, m);
    const auto coefficient = [](double size, const char* unit) { return Formula(Number{size, unit}); };
    Formula sum = -(coefficient(-salt.c1, "kg/mol") * b);
    struct Term {
        double factor, exponent;
        const char* unit;
    };
    for (const Term& term : {Term{salt.c2, 1.5, "√(kg³/mol³)"}, Term{salt.c3, 2.0, "kg²/mol²"}, Term{salt.c4, 3.0, "kg³/mol³"}}) {
        Formula next = coefficient(std::abs(term.factor), term.unit) * power(b, term.exponent);
        if (term.factor != 0.0)
            sum = term.factor > 0.0 ? std::move(sum) + std::move(next) : std::move(sum) - std::move(next);
    }
    working.found(lnActivitySymbol(salt.constituent, result), std::move(sum), Source::SaltActivity).uncertainty =
        phrase("0.02 K in the freezing point of its solutions.");
}

void recordEthanol(Working& working, double m, double x, double result)
{
    const Symbol fraction{"X", "ethanol", x, "", phrase("mole fraction of the alcohol"), {}, 5};
    const Formula b = molalitySymbol(Constituent::Ethanol, m);
    working.found(fraction, b / (b + Number{1000.0, "g/kg"} / Formula(Number{water_g_mol, "g/mol"})), Source::Definition);
    WorkingStep& step = working.found(lnActivitySymbol(Constituent::Ethanol, result),
        function("CRC", {fraction},
            phrase("logarithm of the water activity of alcohol and water of that mole fraction where the CRC Handbook has them "
                   "freeze")),
        Source::EthanolActivity);
    const auto [weaker, stronger] = ethanolRowsAround(x);
    step.method =
        phrase("Between two rows of the handbook's table, {0} % alcohol by mass, which freezes at {1} °C, and {2} %, at {3} °C, "
               "along a monotone cubic.",
            Figure{weaker.ethanol_percent, 0}, Figure{-weaker.depression_k, 2}, Figure{stronger.ethanol_percent, 0},
            Figure{-stronger.depression_k, 2});
    step.uncertainty = phrase("0.01 K in the freezing point at the rows of the table.");
}

}  // namespace

std::span<const SugarActivity> sugarActivities() { return sugarTable; }
std::span<const ElectrolyteActivity> electrolyteActivities() { return electrolyteTable; }

double lnActivityOf(const ElectrolyteActivity& salt, double m, Working* working)
{
    const double inside = std::min(m, salt.measuredTo_mol_kg);
    const double root = std::sqrt(inside);
    const double value = inside * (salt.c1 + salt.c2 * root + inside * (salt.c3 + inside * salt.c4));
    const double slope = salt.c1 + 1.5 * salt.c2 * root + inside * (2.0 * salt.c3 + 3.0 * inside * salt.c4);
    const double result = value + slope * (m - inside);
    if (working) [[unlikely]]
        recordElectrolyte(*working, salt, m, {inside, value, slope}, result);
    return result;
}

double lnActivityOfEthanol(double m, Working* working)
{
    constexpr double strongest = molality(strongestEthanol_percent, ethanol_g_mol);
    if (m > strongest) {
        const Edge& edge = edgeOfEthanol();
        const double result = edge.value + edge.slope * (m - strongest);
        if (working)
            recordTangent(*working, Constituent::Ethanol, m, edge, result, Source::EthanolActivity);
        return result;
    }
    const double x = moleFractionOfEthanol(m);
    const double result = lnActivityOfEthanolSolution(x);
    if (working) [[unlikely]]
        recordEthanol(*working, m, x, result);
    return result;
}

Symbol molalitySymbol(Constituent c, double m)
{
    return {"b", partOf(c).subscript, m, "mol/kg", phrase("{0} in a kilogram of the free water", lowered(partOf(c).label))};
}

Symbol lnActivitySymbol(Constituent c, double value)
{
    return {
        "L", partOf(c).subscript, value, "", phrase("effect of {0} on water activity (part of ln a_w)", lowered(partOf(c).label))};
}

}  // namespace firn
