// Temperatures as people write them: "-12", "−12,5 °C", "14F", "14 °F".
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

#include <optional>
#include <string_view>

namespace firn {

enum class TemperatureUnit { Celsius, Fahrenheit };

/// "°C" or "°F".
std::string_view symbolOf(TemperatureUnit unit);

/// By definition: 32 °F is 0 °C, and 1.8 °F are as far apart as 1 °C.
constexpr double numberIn(TemperatureUnit unit, Celsius temperature)
{
    return unit == TemperatureUnit::Celsius ? temperature.value : 1.8 * temperature.value + 32.0;
}
constexpr double numberIn(TemperatureUnit unit, KelvinDifference difference)
{
    return unit == TemperatureUnit::Celsius ? difference.value : 1.8 * difference.value;
}
constexpr Celsius temperatureFrom(TemperatureUnit unit, double number)
{
    return {unit == TemperatureUnit::Celsius ? number : (number - 32.0) / 1.8};
}

/// A temperature that somebody chose or noted, with the tenths that it was given with: "-12 °C", "-4.5 °C".
Figure chosenTemperatureFigure(Celsius temperature);

/// What stands behind a number that is a temperature: a unit, or a mere degree sign.
struct LeadingTemperatureUnit {
    std::optional<TemperatureUnit> unit;
    std::size_t length;  // bytes of the text that it takes
};

/// The unit that `text` starts with, after blanks: "°F", "° F", "F", "fahrenheit", "°"; none where something else stands there ("fig").
std::optional<LeadingTemperatureUnit> leadingTemperatureUnit(std::string_view text);

/// A whole text that is a temperature, with its sign and unit or, lacking one, in `fallback`. Fails on anything else.
Result<Celsius> temperatureFrom(std::string_view text, TemperatureUnit fallback);

}  // namespace firn
