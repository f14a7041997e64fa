// The working of the freezing point and of the ice on the curve.
#pragma once

#include "freezing/freezing_curve.h"
#include "solution/ice_equilibrium.h"

namespace firn {

/// How many times stronger the liquid has become: the name of its symbol in the steps to the ice.
inline constexpr const char* concentrationName = "y";

/// How the last step of a curve came about: free water at the start, how many times stronger the liquid has become, and the ice.
struct IceFormed {
    Grams freeWater;
    double concentration;
    Grams ice;
};

/// Between what the concentration was interpolated, coldest first; empty for pure water.
struct CurveKnots {
    std::vector<double> temperature_c;
    std::vector<double> concentration;
};

/// The temperature, or one so little below 0 °C that it has a reciprocal: pure water's curve begins at 0 °C, and all of it freezes in the next
/// step.
Celsius withReciprocal(Celsius temperature);

void recordFreezingPoint(Working& working, const LnActivity& activity, const FreezingPoint& found);

/// The water activity there, a figure of workings only.
void recordWaterActivity(Working& working, const LnActivity& activity, const FreezingPoint& found);

/// The temperature, ice and frozen water of the curve's last step.
void recordCurveStep(
    Workings& workings, const FreezingCurve& curve, const Mix& mix, const IceFormed& formed, const CurveKnots& knots);

void recordNoIce(Working& working, const FreezingCurve& curve, Celsius temperature);
void recordColdestIce(Working& working, const FreezingCurve& curve, Celsius temperature);
/// Ice at a temperature between two steps of the curve, of which the colder one has this index.
void recordIceBetween(Working& working, const FreezingCurve& curve, std::size_t colder, Celsius temperature, MassFraction ice);
void recordTemperatureAtStart(Working& working, const FreezingCurve& curve);
void recordTemperatureBetween(
    Working& working, const FreezingCurve& curve, std::size_t colder, MassFraction ice, Celsius temperature);

/// Ice that is asked for, in % of the mix.
Symbol iceWantedSymbol(MassFraction ice);

}  // namespace firn
