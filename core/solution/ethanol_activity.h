// Water activity of ethanol and water along their freezing line.
#pragma once

#include <utility>

namespace firn {

/// A row of the handbook's table.
struct EthanolRow {
    double ethanol_percent;  // by mass, of alcohol and water
    double depression_k;
};

/// The two rows that a mole fraction lies between.
std::pair<EthanolRow, EthanolRow> ethanolRowsAround(double ethanol_moleFraction);

/// ln a_w at this mole fraction of ethanol, from the freezing points that the CRC Handbook prints for 0 to 68 % by mass (x 0 to 0.454),
/// monotone cubic in between; exact at the rows kept. x must lie in that range.
double lnActivityOfEthanolSolution(double ethanol_moleFraction);

}  // namespace firn
