// The working of the water activity, step by step.
#pragma once

#include "solution/water_activity.h"

namespace firn {

void recordFreeWater(Working& working, const Mix& mix, Grams freeWater);
/// Sugars stronger than they are trusted to be described.
/// The steps that `withEdge` has beyond those of `working`: to the terms of the sugars at the strength to which they are trusted. They get
/// symbols of their own.
void addAtEdge(Working& working, const Working& withEdge);
void recordBeyondTrust(
    Working& working, const LnActivity& edge, const LnActivity& weaker, double beyond, const LnActivity& activity);
void recordMolality(Working& working, Constituent c, Grams mass, double molarMass_g_mol, Grams freeWater, double m);
/// Activities of the groups multiply: their logarithms add up.
void recordProduct(Working& working, const LnActivity& ofSugars, const std::vector<Symbol>& others, const LnActivity& activity);

/// A of the sugars, polyols and minerals alone.
Symbol sugarsConstantSymbol(const LnActivity& activity);

}  // namespace firn
