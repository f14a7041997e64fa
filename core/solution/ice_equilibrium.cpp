#include "solution/ice_equilibrium.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

double lnVapourPressureRatio(double t_k)
{
    const double lnIce = 9.550426 - 5723.265 / t_k + 3.53068 * std::log(t_k) - 0.00728332 * t_k;
    const double lnLiquid =
        54.842763 - 6763.22 / t_k - 4.210 * std::log(t_k) + 0.000367 * t_k
        + std::tanh(0.0415 * (t_k - 218.8)) * (53.878 - 1331.22 / t_k - 9.44523 * std::log(t_k) + 0.014025 * t_k);
    return lnIce - lnLiquid;
}

/// The equilibrium tabulated every half kelvin, for one lookup instead of four logarithms and a tanh. Cubic Hermite between the nodes:
/// its error is below 1e-9 in ln a_w, 1e-7 K.
class Table {
public:
    struct Point {
        double value;
        double slope_perK;
    };

    Table()
    {
        for (std::size_t i = 0; i < nodeCount; ++i) {
            const double t_c = coldest_c + step_k * static_cast<double>(i);
            constexpr double h_k = 1e-3;
            m_nodes[i] = {lnWaterActivityOverIce({t_c}),
                (lnWaterActivityOverIce({t_c + h_k}) - lnWaterActivityOverIce({t_c - h_k})) / (2.0 * h_k)};
        }
    }

    Point at(double t_c) const
    {
        const double position = (t_c - coldest_c) / step_k;
        const auto i = static_cast<std::size_t>(std::clamp(position, 0.0, static_cast<double>(nodeCount - 2)));
        const double s = position - static_cast<double>(i);
        const auto& [y0, d0] = m_nodes[i];
        const auto& [y1, d1] = m_nodes[i + 1];
        const double a = d0 * step_k - (y1 - y0);
        const double b = (y1 - y0) - d1 * step_k;
        const double bend = a * (1.0 - s) + b * s;
        return {y0 + s * (y1 - y0) + s * (1.0 - s) * bend, ((y1 - y0) + (1.0 - 2.0 * s) * bend + s * (1.0 - s) * (b - a)) / step_k};
    }

private:
    static constexpr double coldest_c = coldestEquilibrium.value - 2.0;
    static constexpr double step_k = 0.5;
    static constexpr std::size_t nodeCount = 127;  // to +1 °C
    std::array<Point, nodeCount> m_nodes{};
};

}  // namespace

double lnWaterActivityOverIce(Celsius temperature)
{
    static const double atIcePoint = lnVapourPressureRatio(273.15);
    return lnVapourPressureRatio(kelvin(temperature)) - atIcePoint;
}

Celsius equilibriumTemperature(const LnActivity& activity)
{
    static const Table table;
    // How far the liquid's ln a_w lies below the ice's: negative where it would freeze. Very strong liquids nowhere do.
    const auto belowIce = [&activity](const Table::Point& ice, double t_c) { return ice.value - activity.at({t_c}); };
    double cold_c = coldestEquilibrium.value;
    double warm_c = 0.0;
    if (belowIce(table.at(cold_c), cold_c) >= 0.0)
        return coldestEquilibrium;
    if (belowIce(table.at(warm_c), warm_c) <= 0.0)
        return {warm_c};

    // Newton from the ideal slope of the ice line near 0 °C, kept inside a bracket; four steps reach 1e-9 K.
    constexpr double slopeNearZero_perK = 0.00969;
    double t_c = std::max(activity.at({0.0}) / slopeNearZero_perK, cold_c);
    for (int step = 0; step < 60; ++step) {
        const auto ice = table.at(t_c);
        const double residual = belowIce(ice, t_c);
        (residual > 0.0 ? warm_c : cold_c) = t_c;
        const double t_k = kelvin({t_c});
        const double newton_c = t_c - residual / (ice.slope_perK + activity.perKelvin / (t_k * t_k));
        const double next_c = newton_c > cold_c && newton_c < warm_c ? newton_c : (cold_c + warm_c) / 2.0;
        const double change_k = std::abs(next_c - t_c);
        t_c = next_c;
        if (change_k < 1e-8)
            break;
    }
    return {t_c};
}

}  // namespace firn
