// How much of a dessert is wanted, and what factor makes that much of it.
#pragma once

#include "ingredients/catalogue.h"
#include "recipe/recipe.h"
#include "recipe/rounding.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace firn {

struct ByFactor {
    double factor;
    friend bool operator==(const ByFactor&, const ByFactor&) = default;
};

/// Of the whole dessert, after all steps.
struct ByMass {
    Grams mass;
    friend bool operator==(const ByMass&, const ByMass&) = default;
};

/// Finished: at 20 °C, with the air of each component's overrun.
struct ByVolume {
    Millilitres volume;
    friend bool operator==(const ByVolume&, const ByVolume&) = default;
};

struct ByPortions {
    double count;
    std::variant<Grams, Millilitres> each;  // a volume is a finished one
    friend bool operator==(const ByPortions&, const ByPortions&) = default;
};

/// A box of these inner sizes, filled to this depth with the finished dessert.
struct ByPan {
    Millimetres length, width, depth;
    friend bool operator==(const ByPan&, const ByPan&) = default;
};

/// As much as this row's ingredient, once weighed ready to use, is enough for.
struct ByIngredient {
    std::size_t component, row;
    Grams available;
    friend bool operator==(const ByIngredient&, const ByIngredient&) = default;
};

using BatchSize = std::variant<ByFactor, ByMass, ByVolume, ByPortions, ByPan, ByIngredient>;

/// A factor beyond this is a slip of the key.
inline constexpr double largestBatchFactor = 1e6;

/// What every amount of the recipe has to be multiplied by. Fails where nothing in the recipe has a weight, nothing or less is
/// wanted, the row asked for has no weight, the factor is beyond largestBatchFactor, or an amount would be beyond largestAmount.
Result<double> factorFor(const BatchSize& size, const Recipe& recipe, const Catalogue& catalogue);

/// What rounding did to a component, or to the whole dessert: the rounded recipe less the exact one.
struct RoundingEffect {
    std::optional<KelvinDifference> freezingPoint;  // none for a dessert without water
    double sugars_percentPoints = 0.0;              // of the mix's mass
    Grams mass;
    friend bool operator==(const RoundingEffect&, const RoundingEffect&) = default;
};

RoundingEffect roundingEffect(
    const Recipe& exact, const Recipe& rounded, const Catalogue& catalogue, std::optional<std::size_t> component = {});

/// What becomes of one row.
struct BatchRow {
    std::size_t component, row;
    std::string ingredient;  // by its name, not its id
    Amount before;
    RoundedAmount after;
    friend bool operator==(const BatchRow&, const BatchRow&) = default;
};

/// A recipe in the size wanted, with amounts that can be weighed, and what it makes.
struct Batch {
    double factor = 1.0;
    Recipe recipe;
    std::vector<BatchRow> rows;  // of all components, in the order of the recipe
    Grams mass;
    Millilitres finishedVolume;  // at 20 °C, with the air of each component's overrun
    RoundingEffect rounding;
};

/// Fails as factorFor does. What rounding did is told of this component, or of the whole dessert where none is named.
Result<Batch> batchOf(const BatchSize& size, const Rounding& rounding, const Recipe& recipe, const Catalogue& catalogue,
    std::optional<std::size_t> component = {});

}  // namespace firn
