// The units in which a cook writes an amount.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace firn {

enum class Unit {
    Gram,
    Kilogram,
    Milligram,
    Ounce,
    Pound,
    Millilitre,
    Litre,
    Teaspoon,
    Tablespoon,
    Cup,
    MetricTeaspoon,
    MetricTablespoon,
    MetricCup,
    ImperialCup,
    FluidOunce,
    Pint,
    Quart,
    ImperialFluidOunce,
    ImperialPint,
    Shot,
    Dash,
    Pinch,
    Drop,
    Piece,
    PercentOfMix
};

enum class Dimension { Mass, Volume, Count, Share };

/// One unit: how it is written, and its size in the base unit of its dimension (gram, millilitre, piece, percent).
struct UnitFacts {
    Unit unit;
    Dimension dimension;
    double size;
    std::string_view symbol;  // as files store it and tables show it
    std::string_view plural;  // as a sentence has it: "2 cups"
    std::string_view source;
};

std::span<const UnitFacts> allUnits();
const UnitFacts& factsOf(Unit unit);

/// The unit that a person means by this word ("Tbsp.", "cups", "grams"), or nothing. "T" is a tablespoon and "t" a teaspoon.
std::optional<Unit> unitNamed(std::string_view word);

/// The longest unit name that `text` starts with ("fl oz sugar"), as the unit and the number of characters it takes.
struct UnitPrefix {
    Unit unit;
    std::size_t length;
};
std::optional<UnitPrefix> leadingUnit(std::string_view text);

}  // namespace firn
