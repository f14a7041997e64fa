// Temperatures and percentages as people type them.
#pragma once

#include "units/quantity.h"
#include "units/temperature.h"

#include <string_view>

namespace firn::app {

/// No freezer, kitchen or thermometer of a cook goes beyond.
inline constexpr Celsius coldestTemperature{-60.0};
inline constexpr Celsius warmestTemperature{60.0};

/// Air beyond this makes a foam, not an ice (common practice, no source).
inline constexpr double largestOverrun_percent = 300.0;

/// Lighter than oil and heavier than any syrup: nothing that is poured is outside.
inline constexpr double lightestFood_gPerMl = 0.5;
inline constexpr double heaviestFood_gPerMl = 2.0;

/// Pure fat, 9 kcal/g (Regulation (EU) 1169/2011, Annex XIV), and a little room, since some tables print 902.
inline constexpr double largestEnergy_kcalPer100g = 910.0;

/// A whole text that is a number, with a sign if need be: "19", "19,4", "-0.3". Fails on anything else.
Result<double> numberFromText(std::string_view text);

/// A whole text that is a temperature: "-12", "−12,5", "+4 °C", "14F"; without a unit it is in `fallback`. Fails on anything else, below
/// -60 °C, and above `warmest`.
Result<Celsius> temperatureFromText(std::string_view text, TemperatureUnit fallback, Celsius warmest = warmestTemperature);

/// The same for a frozen dessert on the plate. A temperature above 0 °C needs its sign, since a minus is easily left out.
Result<Celsius> servedAtFromText(std::string_view text, TemperatureUnit fallback);

/// A whole text that is an overrun: "25", "25,5 %". Fails on anything else, and outside 0 to 300 %.
Result<double> overrunFromText(std::string_view text);

/// A whole text that is a part of 100 g: "12.5", "12,5 g". Fails on anything else, and outside 0 to 100 g.
Result<double> partOf100gFromText(std::string_view text);

/// A whole text that is a density: "1.03", "1,03 g/mL". Fails on anything else, and outside what food has.
Result<double> densityFromText(std::string_view text);

/// A whole text that is the mass of a kitchen measure in grams: "166", "4,2 g", "0.2 kg". Fails on anything else, and on nothing.
Result<double> measureFromText(std::string_view text);

/// A whole text that is an energy: "32", "32.5 kcal". Fails on anything else, and above that of pure fat.
Result<double> energyFromText(std::string_view text);

}  // namespace firn::app
