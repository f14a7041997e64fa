// From what a nutrition table or label prints to the constituents that the models tell apart.
#pragma once

#include "ingredients/composition.h"
#include "units/sentence.h"

#include <array>
#include <optional>
#include <vector>

namespace firn {

/// Whether the carbohydrate of a table holds the fibre too: in the United States, where it is what is left over, it does; in Regulation
/// (EU) 1169/2011, annex I, fibre is told apart.
enum class CarbohydrateKind { WithoutFibre, WithFibre };

/// What a table says that 100 g of a food hold; nothing where it is silent.
struct NutritionTable {
    std::array<std::optional<double>, constituentCount> constituents_g{};
    std::optional<double> sugars_g;        // of all kinds together
    std::optional<double> carbohydrate_g;  // of all kinds together
    std::optional<CarbohydrateKind> carbohydrateKind;
    std::optional<double> ash_g;  // minerals and salt together
    std::optional<double> sodium_mg;
    std::optional<double> alcoholByVolume_percent;  // instead of grams of ethanol

    std::optional<double>& operator[](Constituent c) { return constituents_g[static_cast<std::size_t>(c)]; }
    const std::optional<double>& operator[](Constituent c) const { return constituents_g[static_cast<std::size_t>(c)]; }
};

/// Sugars that a table does not tell apart are those of milk, or those of fruit.
enum class SugarsOf { Milk, Fruit };

/// The composition that the table means, closing to 100 g within 1 g. What it leaves open is filled in, and each filling adds a sentence
/// to `guessed`. Alcohol in % vol becomes grams by the density of the whole. Fails on a table that gives no amount at all, and on amounts that add up to more than 101 g, with their sum.
Result<Amounts> amountsFrom(const NutritionTable& table, SugarsOf sugarsOf, std::vector<Sentence>& guessed);

/// The most energy that a food can have, in kcal per 100 g: USDA SR28 gives fats 902 (9.02 kcal/g).
inline constexpr double mostEnergy_kcal = 902.0;

/// Says that an energy is beyond that.
Sentence tooMuchEnergy();

}  // namespace firn
