#include "solution/ethanol.h"

#include <array>
#include <fmt/format.h>
#include <span>

namespace firn {

namespace {

// Coefficients in kg/m3 as OIML R 22 prints them: A in powers of the mass fraction p at 20 °C, B in powers of t - 20, and C in powers of
// both, one row for each power of t - 20.
constexpr std::array a{998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234,
    747017.2998, -547846.1354, 223446.0334, -39032.85426};

constexpr std::array b{-0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11};

constexpr std::array c1{0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045,
    -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137, 1285.617841998974};

constexpr std::array c2{-0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014,
    109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783};

constexpr std::array c3{-0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638,
    4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812};

constexpr std::array c4{4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06};

constexpr std::array c5{-2.788074354782409e-08, 1.345612883493354e-08};

/// c[0] + c[1] x + c[2] x^2 + …
double polynomial(std::span<const double> coefficients, double x)
{
    double sum = 0.0;
    for (std::size_t i = coefficients.size(); i-- > 0;)
        sum = sum * x + coefficients[i];
    return sum;
}

/// The same as a sum over the powers, which a reader can fold.
Formula powerSeries(std::span<const double> coefficients, const Symbol& x, const std::string& name)
{
    std::vector<SeriesTerm> terms;
    for (std::size_t i = 0; i < coefficients.size(); ++i) {
        const Formula coefficient = inPowersOfTen(coefficients[i]);
        terms.push_back({fmt::format("k = {}", i), i == 0   ? coefficient
                                                   : i == 1 ? coefficient * x
                                                            : coefficient * power(x, double(i))});
    }
    const Symbol k{"k", "", 0.0, "", {}};
    return series("k", Symbol{name, "k", 0.0, "", phrase("a number that the source prints")} * power(x, k), std::move(terms));
}

}  // namespace

GramsPerMillilitre ethanolSolutionDensity(MassFraction ethanol, Celsius temperature)
{
    const double p = ethanol.value;
    const double dt_k = temperature.value - 20.0;
    const std::array mixed{polynomial(c1, p), polynomial(c2, p), polynomial(c3, p), polynomial(c4, p), polynomial(c5, p)};
    const double rho_kg_m3 = polynomial(a, p) + dt_k * (polynomial(b, dt_k) + p * polynomial(mixed, dt_k));
    return {rho_kg_m3 / 1000.0};
}

void recordEthanolDensity(Working& working, const Symbol& density, const Symbol& ethanol, const Symbol& temperature)
{
    const double p = ethanol.value;
    const Symbol at20{"A", "20", polynomial(a, p), "kg/m³", phrase("density at 20 °C"), {}, 3};
    working.found(at20, powerSeries(a, ethanol, "a"), Source::EthanolDensity).isInNumbers = true;
    Formula rho_kg_m3 = at20;
    if (temperature.value != 20.0) {
        const Symbol away{"Δ", "", temperature.value - 20.0, "K", phrase("how far from 20 °C")};
        working.found(away, temperature - Formula(Number{20.0, "°C"}), Source::EthanolDensity);
        const Symbol ofWater{"C", "w", polynomial(b, away.value), "", phrase("what each kelvin does to the water"), {}, 5};
        working.found(ofWater, powerSeries(b, away, "b"), Source::EthanolDensity).isInNumbers = true;
        Formula mixed = 0.0;
        int number = 0;
        for (const std::span<const double> coefficients : std::initializer_list<std::span<const double>>{c1, c2, c3, c4, c5}) {
            const Symbol part{"C", std::to_string(number + 1), polynomial(coefficients, p), "",
                phrase("what that power of Δ does to the alcohol at this strength")};
            working.found(part, powerSeries(coefficients, ethanol, "c" + part.subscript), Source::EthanolDensity).isInNumbers =
                true;
            mixed = number == 0 ? Formula(part)
                                : std::move(mixed) + (number == 1 ? away * Formula(part) : power(away, double(number)) * part);
            ++number;
        }
        rho_kg_m3 = std::move(rho_kg_m3) + away * (ofWater + ethanol * std::move(mixed));
    }
    WorkingStep& step = working.found(density, std::move(rho_kg_m3) / 1000.0, Source::EthanolDensity);
    step.range = phrase("From −20 to 40 °C, any strength.");
    step.isInNumbers = true;
}

}  // namespace firn
