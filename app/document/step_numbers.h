// The numbers of a step as people type them, with either decimal mark and with or without their unit.
#pragma once

#include "units/sentence.h"

#include <string_view>

namespace firn::app {

/// Sugar burns before it is hotter (common practice, no source).
inline constexpr double hottestStep_c = 250.0;

/// More is a slip of the key: a year.
inline constexpr double longestStep_min = 525600.0;

/// Dried leaves soak up several times their mass (common practice, no source); more than this is a slip of the key.
inline constexpr double largestSoaking_gPerG = 100.0;

/// Each reads a whole text; fails on anything else and outside its bounds. Nothing but a temperature can be negative.
Result<double> stepTemperatureFromText(std::string_view text);  // °C, -60 to 250; without a unit in the shown one
Result<double> minutesFromText(std::string_view text);
Result<double> gramsFromText(std::string_view text);
Result<double> soakingFromText(std::string_view text);    // g per g, 0 to 100
Result<double> extractedFromText(std::string_view text);  // %, 0 to 100
Result<double> brixFromText(std::string_view text);       // °Bx, 0 to 100

}  // namespace firn::app
