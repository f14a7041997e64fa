// What each solute does to the water activity: constants fitted to published freezing data, and the terms made of them.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

#include <span>

namespace firn {

inline constexpr double gasConstant_J_molK = 8.314462618;  // CODATA 2018
inline constexpr double water_g_mol = 18.01528;
inline constexpr double ethanol_g_mol = 46.0684;
inline constexpr double strongestEthanol_percent = 68.0;  // of the handbook's table

constexpr double molality(double mass_percent, double molarMass_g_mol)
{
    return 1000.0 * mass_percent / (100.0 - mass_percent) / molarMass_g_mol;
}

/// A sugar, a polyol or minerals, which combine by Norrish's rule; see water_activity.h.
struct SugarActivity {
    Constituent constituent;
    double molarMass_g_mol;
    double q_J_mol;
    double a;
    double b;
    double massRatio;          // M / M_ref
    double measuredTo_mol_kg;  // no measurement, of it or of what it is taken to act like, is stronger
};
std::span<const SugarActivity> sugarActivities();

/// Salt or acid: ln a_w = c1 m + c2 m^1.5 + c3 m^2 + c4 m^3.
struct ElectrolyteActivity {
    Constituent constituent;
    double molarMass_g_mol;
    double c1, c2, c3, c4;
    double measuredTo_mol_kg;  // beyond, the tangent
};
std::span<const ElectrolyteActivity> electrolyteActivities();

/// ln a_w at this molality in all of the free water; beyond what was measured along the tangent.
double lnActivityOf(const ElectrolyteActivity& salt, double m, Working* working = nullptr);
double lnActivityOfEthanol(double m, Working* working = nullptr);

/// A term as steps of a working name it.
Symbol lnActivitySymbol(Constituent c, double value);
Symbol molalitySymbol(Constituent c, double m);

}  // namespace firn
