// Looking for recipes: words, phrases and ranges of figures, in one line as a person types it.
#pragma once

#include "notebook/recipe_card.h"
#include "units/temperature.h"

#include <span>

namespace firn {

enum class CardFigure { Sugar, Fat, Alcohol, FreezingPoint, Ice, Sweetness };

/// The figure with the one decimal that a list shows, so that a search finds what one reads: sugar, fat and ice at serving in % by mass,
/// alcohol in % by volume, the freezing point in this unit, sweetness in % of sucrose. None where the card has no figures.
std::optional<double> shownFigure(const RecipeCard& card, CardFigure figure, TemperatureUnit unit = TemperatureUnit::Celsius);

struct CardRange {
    CardFigure figure = CardFigure::Sugar;
    std::optional<double> from = {};
    std::optional<double> to = {};
    bool holdsFrom = true;
    bool holdsTo = true;
    TemperatureUnit unit = TemperatureUnit::Celsius;  // of a freezing point
    friend bool operator==(const CardRange&, const CardRange&) = default;
};

/// All of it has to fit.
struct CardQuery {
    std::vector<std::string> words = {};  // folded, a blank in front; one behind where the last word is whole
    std::vector<CardRange> ranges = {};
    friend bool operator==(const CardQuery&, const CardQuery&) = default;
};

/// Reads a line such as `pear "lemon juice" sugar 24..28 alcohol > 0 freezes < -3`. A word stands for all that begin with it, quotation marks
/// hold whole words together. A range has the name of a figure (sugar, fat, alcohol, freezes, ice, sweetness) and then 24..28, 24-28, 24 to 28,
/// 24.., ..28, < 28, <= 28, > 24, >= 24, under 28, over 24, or a number, which stands for all that round to it. Both decimal marks are read. A
/// freezing point is in the unit behind it ("27 F", "-3 °C") or else in `fallback`. Fails on a range that is none, with one sentence.
Result<CardQuery> queryFrom(std::string_view typed, TemperatureUnit fallback = TemperatureUnit::Celsius);

/// Archived recipes stand on a shelf of their own.
enum class Shelf { All, Favourites, Archived };

enum class CardOrder { Title, ChangedLast, MostSugar, MostAlcohol, FreezesColdest };

struct NotebookFilter {
    CardQuery query = {};
    Shelf shelf = Shelf::All;
    std::string tag = {};  // any if empty
    friend bool operator==(const NotebookFilter&, const NotebookFilter&) = default;
};

/// The places of all cards in this order. Those without the figure that they are ordered by come last.
std::vector<std::size_t> ordered(std::span<const RecipeCard> cards, CardOrder order);

/// Those of these places whose cards pass, in the order in which they were given.
std::vector<std::size_t> found(
    std::span<const RecipeCard> cards, const std::vector<std::size_t>& places, const NotebookFilter& filter);

/// Every tag once, by the alphabet.
std::vector<std::string> tagsIn(std::span<const RecipeCard> cards);

}  // namespace firn
