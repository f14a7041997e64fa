#include "solution/sucrose.h"

#include <array>
#include <cmath>
#include <span>

namespace firn {

namespace {

// Of 1, t, t^2, … in °C, kg/m3: numerator and denominator.
constexpr std::array waterAbove{999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12};
constexpr double waterBelow = 16.887236e-3;

// Of w, w^2, … at 20 °C, kg/m3; then what each power of (t - 20)/100 adds.
constexpr std::array at20{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890};
constexpr std::array first{-46.2720, -7.1720, 1.1597, 5.1126, 17.5254};
constexpr std::array second{59.7712, 7.2491, 12.3630, -35.4791};
constexpr std::array third{-47.2207, -21.6977, 27.6301};
constexpr std::array fourth{18.3184, 12.3081};

/// c[0] x + c[1] x^2 + …
double withoutConstant(std::span<const double> coefficients, double x)
{
    double sum = 0.0;
    for (std::size_t i = coefficients.size(); i-- > 0;)
        sum = x * (coefficients[i] + sum);
    return sum;
}

Formula withoutConstant(std::span<const double> coefficients, const Symbol& x)
{
    std::vector<double> all{0.0};
    all.insert(all.end(), coefficients.begin(), coefficients.end());
    return polynomial(all, x);
}

}  // namespace

GramsPerMillilitre waterDensity(Celsius temperature)
{
    const double t = temperature.value;
    double above = 0.0;
    for (std::size_t i = waterAbove.size(); i-- > 0;)
        above = above * t + waterAbove[i];
    return {above / (1.0 + waterBelow * t) / 1000.0};
}

GramsPerMillilitre sucroseSolutionDensity(MassFraction sucrose, Celsius temperature)
{
    const double w = sucrose.value;
    const double t = (temperature.value - 20.0) / 100.0;
    double excess_kg_m3 = withoutConstant(at20, w);
    if (t != 0.0)
        excess_kg_m3 += t
                        * (withoutConstant(first, w)
                            + t * (withoutConstant(second, w) + t * (withoutConstant(third, w) + t * withoutConstant(fourth, w))));
    return waterDensity(temperature) + GramsPerMillilitre{excess_kg_m3 / 1000.0};
}

Symbol waterDensitySymbol(Celsius temperature)
{
    const int decimals = temperature.value == std::round(temperature.value) ? 0 : 1;
    return {"ρ", "w", waterDensity(temperature).value, "g/mL",
        phrase("density of water at {0} °C", Figure{temperature.value, decimals}), {}, 5};
}

void recordWaterDensity(Working& working, const Symbol& density, const Symbol& temperature)
{
    const std::vector<double> above(waterAbove.begin(), waterAbove.end());
    WorkingStep& step = working.found(
        density, polynomial(above, temperature) / (1000.0 * (1.0 + inPowersOfTen(waterBelow) * temperature)), Source::SugarDensity);
    step.range = phrase("From 0 to 100 °C.");
    step.isInNumbers = true;
}

void recordSucroseDensity(
    Working& working, const Symbol& density, const Symbol& sucrose, const Symbol& water, const Symbol& temperature)
{
    Formula excess = withoutConstant(at20, sucrose);
    if (temperature.value != 20.0) {
        const Symbol tau{
            "τ", "", (temperature.value - 20.0) / 100.0, "", phrase("how far from 20 °C, in hundreds of kelvins"), {}, 4};
        working.found(tau, (temperature - Formula(Number{20.0, "°C"})) / Number{100.0, "K"}, Source::SugarDensity);
        const auto part = [&](const char* number, std::span<const double> coefficients) {
            Symbol symbol{"E", number, withoutConstant(coefficients, sucrose.value), "",
                phrase("what that power of τ adds at this strength"), {}, 4};
            working.found(symbol, withoutConstant(coefficients, sucrose), Source::SugarDensity);
            return symbol;
        };
        const Formula c1 = part("1", first), c2 = part("2", second), c3 = part("3", third), c4 = part("4", fourth);
        excess = std::move(excess) + tau * c1 + power(tau, 2.0) * c2 + power(tau, 3.0) * c3 + power(tau, 4.0) * c4;
    }
    WorkingStep& step = working.found(density, water + std::move(excess) / 1000.0, Source::SugarDensity);
    step.range = phrase("From 0 to 100 °C, to 75 % sucrose.");
    step.isInNumbers = true;
}

}  // namespace firn
