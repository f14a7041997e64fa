// Standard deviations as they are shown.
#pragma once

namespace firn {

/// A standard deviation beside a figure with these decimals: never less than one unit of the last digit, which is all that the figure says.
/// 0.03 beside 30.4 is shown as 0.1, not as nothing, which would call the figure exact. Only what is 0 stays 0.
double shownDeviation(int decimals, double deviation);

}  // namespace firn
