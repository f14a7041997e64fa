// One thing that a cook can put into a mix, with what is known about it and from where.
#pragma once

#include "ingredients/composition.h"
#include "units/unit.h"

#include <optional>
#include <string>
#include <vector>

namespace firn {

/// A weighed kitchen measure: one cup, spoon or piece of the food.
struct Measure {
    Unit unit = Unit::Cup;
    Grams grams;
    std::string note;  // "sliced", "large", or nothing
    std::string source;
    friend bool operator==(const Measure&, const Measure&) = default;
};

/// How far real fruit, milk or juice strays from the table: standard deviations, grams per 100 g.
struct Spread {
    std::optional<double> water_sd;
    std::optional<double> sugars_sd;
    bool isEstimate = false;
    friend bool operator==(const Spread&, const Spread&) = default;
};

enum class Allergen {
    Milk,
    Egg,
    Gluten,
    Nuts,
    Peanut,
    Soya,
    Sesame,
    Sulphites,
    Fish,
    Crustaceans,
    Molluscs,
    Celery,
    Mustard,
    Lupin
};

/// What a caution hangs on; see analysis/cautions.h for what is said.
enum class Hazard { RawEgg, ToxicLeaves, FruitKernels, Elderberry, InfantHoney, WholeNuts, Tonka };

struct Ingredient {
    std::string id;    // lower-case words with hyphens
    std::string name;  // singular, as a table shows it
    std::vector<std::string> synonyms;
    std::vector<std::string> defaultFor;  // general words that are taken for this ingredient, and say so: "cream"
    std::string group;
    Composition composition;
    std::optional<GramsPerMillilitre> density;  // of the liquid or paste itself, never of a heap
    std::string densitySource;
    std::vector<Measure> measures;  // for each unit the first is the usual one
    Spread spread;
    std::vector<Allergen> allergens;
    std::vector<Hazard> hazards;
    std::string source;
    std::optional<double> energy_kcalPer100g = {};  // as a table prints it, which the composition is checked against
    std::string energyNote = {};  // the table, and why it differs from the sum of the parts if it does by more than 5 %
    friend bool operator==(const Ingredient&, const Ingredient&) = default;
};

std::string_view keyOf(Allergen allergen);
std::optional<Allergen> allergenNamed(std::string_view key);
std::string_view keyOf(Hazard hazard);
std::optional<Hazard> hazardNamed(std::string_view key);

}  // namespace firn
