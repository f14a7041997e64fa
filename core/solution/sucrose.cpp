#include "solution/sucrose.h"

#include <array>

namespace firn {

namespace {

/// Of w, w^2, … at 20 °C, kg/m3: ICUMSA SPS-4.
constexpr std::array at20{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890};

}  // namespace

GramsPerMillilitre waterDensity(Celsius temperature)
{
    const double t = temperature.value;
    const double rho_kg_m3 =
        (999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12)))))
        / (1.0 + 16.887236e-3 * t);
    return {rho_kg_m3 / 1000.0};
}

GramsPerMillilitre sucroseSolutionDensity(MassFraction sucrose, Celsius temperature)
{
    const double w = sucrose.value;
    const double t = (temperature.value - 20.0) / 100.0;
    const double a = w * (at20[0] + w * (at20[1] + w * (at20[2] + w * (at20[3] + w * (at20[4] + w * at20[5])))));
    const double b = w * (-46.2720 + w * (-7.1720 + w * (1.1597 + w * (5.1126 + w * 17.5254))));
    const double c = w * (59.7712 + w * (7.2491 + w * (12.3630 - w * 35.4791)));
    const double d = w * (-47.2207 + w * (-21.6977 + w * 27.6301));
    const double e = w * (18.3184 + w * 12.3081);
    const double excess_kg_m3 = a + t * (b + t * (c + t * (d + t * e)));
    return waterDensity(temperature) + GramsPerMillilitre{excess_kg_m3 / 1000.0};
}

Formula sucroseSolutionDensityAt20(const Symbol& sucrose, const Symbol& densityOfWater)
{
    std::vector<double> coefficients{0.0};
    coefficients.insert(coefficients.end(), at20.begin(), at20.end());
    return densityOfWater + polynomial(coefficients, sucrose) / Formula(1000.0);
}

}  // namespace firn
