// All places where a smooth function of one unknown is zero. Only the files of this folder include it.
#pragma once

#include <boost/math/tools/roots.hpp>
#include <cstdint>
#include <optional>
#include <vector>

namespace firn {

/// Good to 1e-12 of the interval's ends. The function must change its sign in between.
template <class Function>
double rootBetween(Function f, double low, double high, double atLow, double atHigh)
{
    std::uintmax_t steps = 60;
    const auto [below, above] =
        boost::math::tools::toms748_solve(f, low, high, atLow, atHigh, boost::math::tools::eps_tolerance<double>(40), steps);
    return (below + above) / 2.0;
}

/// Every zero that equal parts of the interval tell apart, the least first.
template <class Function>
std::vector<double> rootsOf(Function f, double low, double high, int parts)
{
    std::vector<double> roots;
    double left = low;
    double atLeft = f(low);
    if (atLeft == 0.0)
        roots.push_back(low);
    for (int i = 1; i <= parts; ++i) {
        const double right = low + (high - low) * i / parts;
        const double atRight = f(right);
        if (atRight == 0.0)
            roots.push_back(right);
        else if (atLeft != 0.0 && (atLeft < 0.0) != (atRight < 0.0))
            roots.push_back(rootBetween(f, left, right, atLeft, atRight));
        left = right;
        atLeft = atRight;
    }
    return roots;
}

}  // namespace firn
