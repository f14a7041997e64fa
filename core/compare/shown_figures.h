// Figures as a reader sees them, with so many decimals: what is shown beside each other must agree to the last digit.
#pragma once

namespace firn {

/// Whether it is 0 in the digits shown.
bool isShownAsZero(double value, int decimals);

/// The difference that a reader finds who subtracts the one figure shown from the other.
double shownChange(double from, double to, int decimals);

}  // namespace firn
