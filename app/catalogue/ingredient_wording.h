// What is known of an ingredient, in words.
#pragma once

#include "ingredients/ingredient.h"

#include <QString>
#include <array>

namespace firn::app {

inline constexpr std::size_t allergenCount = static_cast<std::size_t>(Allergen::Lupin) + 1;
inline constexpr std::size_t hazardCount = static_cast<std::size_t>(Hazard::Tonka) + 1;

QString nameOf(Allergen allergen);
/// What a cook is warned of: "raw egg", "poisonous leaves".
QString nameOf(Hazard hazard);

/// "milk, nuts"; empty for none.
QString namesOf(const std::vector<Allergen>& allergens);
QString namesOf(const std::vector<Hazard>& hazards);

/// "water ± 1.5 g, sugars ± 1.1 g in 100 g (estimate)"; empty where nothing is known.
QString spreadText(const Spread& spread);

/// "1 cup (sliced) weighs 166 g", one a line, with their sources.
QString measuresText(const std::vector<Measure>& measures);

/// "1.030 g/mL", with where it is from.
QString densityText(const Ingredient& ingredient);

/// "32 kcal in 100 g", with the note on it.
QString energyText(const Ingredient& ingredient);

/// Grams in 100 g with as many decimals as the smallest figure beside it needs.
QString partOf100g(Grams grams, int decimals);

QString fromCore(const std::string& text);

}  // namespace firn::app
