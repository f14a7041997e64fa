// Temperatures and percentages as people type them.
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

#include <string_view>

namespace firn::app {

/// No freezer, kitchen or thermometer of a cook goes beyond.
inline constexpr Celsius coldestTemperature{-60.0};
inline constexpr Celsius warmestTemperature{60.0};

/// Air beyond this makes a foam, not an ice (common practice, no source).
inline constexpr double largestOverrun_percent = 300.0;

/// A whole text that is a temperature: "-12", "−12,5", "+4 °C". Fails on anything else, and outside -60 to +60 °C.
Result<Celsius> temperatureFromText(std::string_view text);

/// A whole text that is an overrun: "25", "25,5 %". Fails on anything else, and outside 0 to 300 %.
Result<double> overrunFromText(std::string_view text);

}  // namespace firn::app
