// How much of the water of an ice cream is ice. Nordic Sugar, technical page: at -5 °C about 50 % of the water, ± 10. A Ukrainian textbook of dairy
// technology: the largest effective heat capacity, between -3 and -5 °C, kJ/(kg K), 2 decimals, ± 10 %: milk ice cream 55.84, cream ice cream
// 41.15. Compositions are from memory (milk: 3.5 % fat, 10 % milk solids-not-fat, 15.5 % sucrose; cream: 10, 10 and 14). Latent heat of ice
// 333.6 kJ/kg at 0 °C, 2.1 less a kelvin below; 3.3 kJ/(kg K) for the mix without freezing.

#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Mix iceCream(double fat, double milkSolidsNotFat, double sucrose)
{
    Mix mix;
    mix.amounts[Constituent::Fat] = {fat};
    mix.amounts[Constituent::Lactose] = {milkSolidsNotFat * 0.545};
    mix.amounts[Constituent::Protein] = {milkSolidsNotFat * 0.37};
    mix.amounts[Constituent::Minerals] = {milkSolidsNotFat * 0.085};
    mix.amounts[Constituent::Sucrose] = {sucrose};
    mix.amounts[Constituent::Water] = {100.0 - fat - milkSolidsNotFat - sucrose};
    return mix;
}

/// What a kilogram takes up for each kelvin, most of it the melting of ice.
double heatCapacity_kJ_kgK(const FreezingCurve& curve, double t_c)
{
    constexpr double half_k = 0.25;
    const double icePerKelvin = (curve.iceAt({t_c - half_k}).value - curve.iceAt({t_c + half_k}).value) / (2.0 * half_k);
    return 3.3 + (333.6 + 2.1 * t_c) * icePerKelvin;
}

// The printed value has to be met somewhere from -3 to -5 °C.
TEST(IceAndHeat, LargestHeatCapacityIsMetBetweenMinusThreeAndMinusFive)
{
    struct Row {
        Mix mix;
        double heatCapacity_kJ_kgK;
    };
    for (const Row& row : {Row{iceCream(3.5, 10.0, 15.5), 55.84}, Row{iceCream(10.0, 10.0, 14.0), 41.15}}) {
        const FreezingCurve curve = freezingCurve(row.mix);
        EXPECT_GE(heatCapacity_kJ_kgK(curve, -3.0), 0.9 * row.heatCapacity_kJ_kgK);
        EXPECT_LE(heatCapacity_kJ_kgK(curve, -5.0), 1.1 * row.heatCapacity_kJ_kgK);
    }
}

TEST(IceAndHeat, HalfOfTheWaterAtMinusFive)
{
    const FreezingCurve curve = freezingCurve(iceCream(10.0, 10.0, 14.0));
    EXPECT_NEAR(100.0 * curve.iceAt({-5.0}).value / 0.66, 50.0, 10.0);
}

}  // namespace
}  // namespace firn
