// Quantities whose unit is part of their type, so that grams never pass for millilitres nor a temperature for a difference.
#pragma once

#include <compare>

namespace firn {

/// A number with its unit in the type. Nothing converts by itself; `value` is the number in that unit.
template <class Unit>
struct Quantity {
    double value = 0.0;

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.value + b.value}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.value - b.value}; }
    friend constexpr Quantity operator*(Quantity a, double factor) { return {a.value * factor}; }
    friend constexpr Quantity operator*(double factor, Quantity a) { return {a.value * factor}; }
    friend constexpr Quantity operator/(Quantity a, double divisor) { return {a.value / divisor}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value / b.value; }
    constexpr Quantity& operator+=(Quantity other)
    {
        value += other.value;
        return *this;
    }
};

using Grams = Quantity<struct GramUnit>;
using Millilitres = Quantity<struct MillilitreUnit>;
using GramsPerMillilitre = Quantity<struct GramPerMillilitreUnit>;
using MassFraction = Quantity<struct MassFractionUnit>;  // gram per gram, 0 to 1
using Millimetres = Quantity<struct MillimetreUnit>;
using KelvinDifference = Quantity<struct KelvinDifferenceUnit>;
using Hectopascals = Quantity<struct HectopascalUnit>;  // also called millibar

/// A temperature in degrees Celsius. Two temperatures have a difference, but no sum.
struct Celsius {
    double value = 0.0;

    friend constexpr auto operator<=>(Celsius, Celsius) = default;
    friend constexpr KelvinDifference operator-(Celsius a, Celsius b) { return {a.value - b.value}; }
    friend constexpr Celsius operator+(Celsius a, KelvinDifference b) { return {a.value + b.value}; }
    friend constexpr Celsius operator-(Celsius a, KelvinDifference b) { return {a.value - b.value}; }
};

constexpr double kelvin(Celsius t) { return t.value + 273.15; }

/// Percent exists only where people read or write it.
constexpr double percent(MassFraction fraction) { return 100.0 * fraction.value; }
constexpr MassFraction fromPercent(double percent) { return {percent / 100.0}; }

}  // namespace firn
