// Water activity of ethanol and water along their freezing line.
#pragma once

namespace firn {

/// ln a_w at this mole fraction of ethanol, from the freezing points that the CRC Handbook prints for 0 to 68 % by mass (x 0 to 0.454),
/// monotone cubic in between; exact at the rows kept. x must lie in that range.
double lnActivityOfEthanolSolution(double ethanol_moleFraction);

}  // namespace firn
