// Water activity of the unfrozen liquid of a mix.
//
// x are mole fractions, m molalities in all of the free water, T in kelvin, R the gas constant. ln a_w is the sum of
//   sugars, polyols and minerals together   ln(1 - X) - (Sum_i z_i sqrt(-Q_i g_i))^2 / (R T), z_i = x_i M_i/M_ref,i, g_i = 1 + a_i Z + b_i Z^2
//   salt; acid                              c1 m + c2 m^1.5 + c3 m^2 + c4 m^3
//   ethanol                                 interpolated in the handbook's freezing points
// where X and Z are the sums of x_i and z_i, and M_ref is M but for the chains of glucose syrups, which act as sucrose does at equal mass.
// A single sugar has ln(1 - x) + Q z^2 g/(R T), the form of Norrish with the terms of Starzak and Peacock; several combine by Norrish's rule
// (R. S. Norrish, J. Food Technol. 1 (1966) 25), so that two like sugars count as one. The three lines multiply as activities do after K. D.
// Ross (Food Technol. 29(3) (1975) 26).
// Constants, their sources, ranges and errors stand in solute_activity.cpp and in docs/models.md. Beyond the strength to which a term is
// trusted it goes on along its tangent, so that nothing turns wild. A flag says when the solutes together, each against the strongest
// solution of it that was measured, exceed what was measured.
// Protein and gums hold water that neither freezes nor dissolves anything; fat, starch, fibre and air do nothing.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"
#include "solution/ice_equilibrium.h"

#include <array>

namespace firn {

/// Water that protein and gums keep from freezing: 0.3 g per g of protein, 0.5 g per g of gum (from memory; published values for proteins
/// range from 0.2 to 0.5).
Grams unfreezableWater(const Mix& mix);

/// The water that is left to freeze, and the liquid's ln a_w = A + B/T, as steps of a working name them.
Symbol freeWaterSymbol(Grams freeWater);
Symbol constantSymbol(const LnActivity& activity);
Symbol perKelvinSymbol(const LnActivity& activity);

/// A + B/T at a temperature in °C.
Formula lnActivityAt(const LnActivity& activity, const Symbol& temperature);

/// The solutes of a mix, ready to be evaluated at any amount of liquid water.
class Liquid {
public:
    explicit Liquid(const Mix& mix, Working* working = nullptr);

    /// Water that can freeze: all of it less the unfreezable part.
    Grams freeWater() const { return m_freeWater; }

    struct State {
        LnActivity activity;
        bool isExtrapolated = false;
    };

    /// The liquid when this much free water is left in it; must be more than 0 g.
    State with(Grams liquidWater, Working* working = nullptr) const;

    /// The same mix with another amount of ethanol.
    Liquid withEthanol(Grams ethanol) const;

private:
    struct Solute {
        std::size_t kind;  // index into the table of its group
        double moles;
        Grams mass;
    };
    /// A list that stays on the stack: analysing is done at every keystroke.
    class Solutes {
    public:
        void add(Solute solute) { m_solutes[m_count++] = solute; }
        const Solute* begin() const { return m_solutes.data(); }
        const Solute* end() const { return begin() + m_count; }

    private:
        std::array<Solute, constituentCount> m_solutes{};
        std::size_t m_count = 0;
    };

    LnActivity activityOfSugars(double liquidWater_g, Working* working) const;
    LnActivity trustedActivityOfSugars(double liquidWater_g, Working* working = nullptr) const;
    void recordSugars(
        Working& working, double liquidWater_g, const LnActivity& activity, double sugarMoles, double z, double sum) const;

    Grams m_freeWater;
    Grams m_ethanol;
    Solutes m_sugars;
    Solutes m_electrolytes;
    double m_weakestTrustedWater_g = 0.0;  // with less, the sugars are stronger than their terms are trusted to be
};

}  // namespace firn
