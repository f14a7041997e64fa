#include "units/deviation.h"

#include "units/number.h"

#include <algorithm>
#include <cmath>

namespace firn {

double shownDeviation(int decimals, double deviation)
{
    return deviation > 0.0 ? std::max(roundedTo(decimals, deviation), std::pow(10.0, -decimals)) : 0.0;
}

}  // namespace firn
