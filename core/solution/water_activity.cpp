#include "solution/water_activity.h"

#include "solution/solute_activity.h"
#include "solution/water_activity_working.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace firn {

constexpr double sugarsTrustedTo_percent = 80.0;

Grams unfreezableWater(const Mix& mix)
{
    const Grams held = mix[Constituent::Protein] * 0.3 + mix[Constituent::Hydrocolloid] * 0.5;
    return std::min(held, mix[Constituent::Water]);
}

Liquid::Liquid(const Mix& mix, Working* working)
    : m_freeWater(mix[Constituent::Water] - unfreezableWater(mix))
    , m_ethanol(mix[Constituent::Ethanol])
{
    const auto kinds = sugarActivities();
    const auto salts = electrolyteActivities();
    Grams sugars;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        const Grams mass = mix[kinds[i].constituent];
        if (mass.value > 0.0)
            m_sugars.add({i, mass.value / kinds[i].molarMass_g_mol, mass});
        sugars += mass;
    }
    for (std::size_t i = 0; i < salts.size(); ++i) {
        const Grams mass = mix[salts[i].constituent];
        if (mass.value > 0.0)
            m_electrolytes.add({i, mass.value / salts[i].molarMass_g_mol, mass});
    }
    m_weakestTrustedWater_g = sugars.value * (100.0 - sugarsTrustedTo_percent) / sugarsTrustedTo_percent;
    if (working) [[unlikely]]
        recordFreeWater(*working, mix, m_freeWater);
}

LnActivity Liquid::trustedActivityOfSugars(double liquidWater_g, Working* working) const
{
    const auto kinds = sugarActivities();
    double moles = liquidWater_g / water_g_mol;
    double sugarMoles = 0.0;
    double weightedMoles = 0.0;
    for (const Solute& solute : m_sugars) {
        sugarMoles += solute.moles;
        weightedMoles += solute.moles * kinds[solute.kind].massRatio;
    }
    moles += sugarMoles;
    const double z = weightedMoles / moles;
    double sum = 0.0;
    for (const Solute& solute : m_sugars) {
        const SugarActivity& sugar = kinds[solute.kind];
        const double g = std::max(0.0, 1.0 + z * (sugar.a + z * sugar.b));
        sum += solute.moles * sugar.massRatio / moles * std::sqrt(-sugar.q_J_mol * g);
    }
    const LnActivity activity{std::log1p(-sugarMoles / moles), -sum * sum / gasConstant_J_molK};
    if (working) [[unlikely]]
        recordSugars(*working, liquidWater_g, activity, sugarMoles, z, sum);
    return activity;
}

LnActivity Liquid::activityOfSugars(double liquidWater_g, Working* working) const
{
    if (liquidWater_g >= m_weakestTrustedWater_g)
        return trustedActivityOfSugars(liquidWater_g, working);
    // Along the tangent in molality, which goes as one over the water.
    constexpr double h = 1e-4;
    std::optional<Working> withEdge;
    if (working) [[unlikely]]
        withEdge = *working;
    const LnActivity edge = trustedActivityOfSugars(m_weakestTrustedWater_g, withEdge ? &*withEdge : nullptr);
    const LnActivity weaker = trustedActivityOfSugars(m_weakestTrustedWater_g * (1.0 + h));
    const double beyond = (m_weakestTrustedWater_g / liquidWater_g - 1.0) / (1.0 - 1.0 / (1.0 + h));
    const LnActivity activity{
        edge.constant + (edge.constant - weaker.constant) * beyond, edge.perKelvin + (edge.perKelvin - weaker.perKelvin) * beyond};
    if (working) [[unlikely]] {
        addAtEdge(*working, *withEdge);
        recordBeyondTrust(*working, edge, weaker, beyond, activity);
    }
    return activity;
}

Liquid::State Liquid::with(Grams liquidWater, Working* working) const
{
    const auto kinds = sugarActivities();
    const auto salts = electrolyteActivities();
    const double perKilogram = 1000.0 / liquidWater.value;
    LnActivity activity = activityOfSugars(liquidWater.value, working);
    const LnActivity ofSugars = activity;
    std::vector<Symbol> others;
    double strength = 0.0;  // of all solutes, each against the strongest that was measured
    for (const Solute& solute : m_sugars)
        strength += solute.moles * perKilogram / kinds[solute.kind].measuredTo_mol_kg;
    for (const Solute& solute : m_electrolytes) {
        const ElectrolyteActivity& salt = salts[solute.kind];
        const double m = solute.moles * perKilogram;
        if (working) [[unlikely]]
            recordMolality(*working, salt.constituent, solute.mass, salt.molarMass_g_mol, liquidWater, m);
        const double lnActivity = lnActivityOf(salt, m, working);
        if (working) [[unlikely]]
            others.push_back(lnActivitySymbol(salt.constituent, lnActivity));
        activity.constant += lnActivity;
        strength += m / salt.measuredTo_mol_kg;
    }
    if (m_ethanol.value > 0.0) {
        const double m = m_ethanol.value / ethanol_g_mol * perKilogram;
        if (working) [[unlikely]]
            recordMolality(*working, Constituent::Ethanol, m_ethanol, ethanol_g_mol, liquidWater, m);
        const double lnActivity = lnActivityOfEthanol(m, working);
        if (working) [[unlikely]]
            others.push_back(lnActivitySymbol(Constituent::Ethanol, lnActivity));
        activity.constant += lnActivity;
        strength += m / molality(strongestEthanol_percent, ethanol_g_mol);
    }
    if (working) [[unlikely]]
        recordProduct(*working, ofSugars, others, activity);
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
