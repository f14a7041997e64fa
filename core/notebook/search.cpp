#include "notebook/search.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <numeric>
#include <string_view>
#include <utility>

namespace firn {

namespace {

/// Looks for one word in one text after the other: skips ahead by what the word is made of, since the texts are long and most do not hold it.
class WordSearch {
public:
    explicit WordSearch(const std::string& word)
        : m_word(word)
        , m_search(word.begin(), word.end())
    {
    }

    bool finds(const RecipeCard& card) const
    {
        return card.beginnings.mayHold(m_word) && (isIn(card.searched) || isIn(card.searchedTags));
    }

private:
    bool isIn(const std::string& text) const { return std::search(text.begin(), text.end(), m_search) != text.end(); }

    const std::string& m_word;
    std::boyer_moore_horspool_searcher<std::string::const_iterator> m_search;
};

bool isWithin(const RecipeCard& card, const CardRange& range)
{
    const auto value = shownFigure(card, range.figure, range.unit);
    const bool isHighEnough = value && (!range.from || *value > *range.from || (range.holdsFrom && *value == *range.from));
    return isHighEnough && (!range.to || *value < *range.to || (range.holdsTo && *value == *range.to));
}

bool isOn(Shelf shelf, const RecipeCard& card)
{
    return card.isArchived ? shelf == Shelf::Archived : shelf == Shelf::All || (shelf == Shelf::Favourites && card.isFavourite);
}

/// The cards by a figure that may be missing; those with the same one stay in the order of their titles.
void orderBy(std::vector<std::size_t>& places, std::span<const RecipeCard> cards, CardFigure figure, double sign)
{
    std::ranges::stable_sort(places, {}, [&](std::size_t place) {
        const auto value = shownFigure(cards[place], figure);
        return std::pair(!value, value ? sign * *value : 0.0);
    });
}

}  // namespace

std::optional<double> shownFigure(const RecipeCard& card, CardFigure figure, TemperatureUnit unit)
{
    if (!card.figures)
        return std::nullopt;
    const auto tenths = [](double value) { return std::round(10.0 * value) / 10.0; };
    switch (figure) {
    case CardFigure::Sugar:
        return tenths(percent(card.figures->sugars));
    case CardFigure::Fat:
        return tenths(percent(card.figures->fat));
    case CardFigure::Alcohol:
        return tenths(card.figures->alcohol_percentByVolume);
    case CardFigure::FreezingPoint:
        return card.figures->freezingPoint ? std::optional(tenths(numberIn(unit, *card.figures->freezingPoint))) : std::nullopt;
    case CardFigure::Ice:
        return tenths(percent(card.figures->iceAtServing));
    case CardFigure::Sweetness:
        return tenths(card.figures->sweetness_percentSucrose);
    }
    return std::nullopt;
}

std::vector<std::size_t> ordered(std::span<const RecipeCard> cards, CardOrder order)
{
    std::vector<std::size_t> places(cards.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    // The title is the first thing in what is searched, and a line end comes before any letter.
    std::ranges::sort(places, {},
        [&](std::size_t place) { return std::pair<std::string_view, std::string_view>(cards[place].searched, cards[place].file); });
    switch (order) {
    case CardOrder::Title:
        break;
    case CardOrder::ChangedLast:
        std::ranges::stable_sort(places, std::greater(), [&](std::size_t place) { return cards[place].changed_s; });
        break;
    case CardOrder::MostSugar:
        orderBy(places, cards, CardFigure::Sugar, -1.0);
        break;
    case CardOrder::MostAlcohol:
        orderBy(places, cards, CardFigure::Alcohol, -1.0);
        break;
    case CardOrder::FreezesColdest:
        orderBy(places, cards, CardFigure::FreezingPoint, 1.0);
        break;
    }
    return places;
}

std::vector<std::size_t> found(
    std::span<const RecipeCard> cards, const std::vector<std::size_t>& places, const NotebookFilter& filter)
{
    const std::string tag = filter.tag.empty() ? std::string() : "\n " + folded(filter.tag) + " \n";
    const std::vector<WordSearch> words(filter.query.words.begin(), filter.query.words.end());
    const auto passes = [&](std::size_t place) {
        const RecipeCard& card = cards[place];
        return isOn(filter.shelf, card) && (tag.empty() || card.searchedTags.find(tag) != std::string::npos)
               && std::ranges::all_of(filter.query.ranges, [&](const CardRange& range) { return isWithin(card, range); })
               && std::ranges::all_of(words, [&](const WordSearch& word) { return word.finds(card); });
    };
    std::vector<std::size_t> passing;
    std::ranges::copy_if(places, std::back_inserter(passing), passes);
    return passing;
}

std::vector<std::string> tagsIn(std::span<const RecipeCard> cards)
{
    std::map<std::string, std::string> byFolded;
    for (const RecipeCard& card : cards) {
        for (const std::string& tag : card.tags)
            byFolded.try_emplace(folded(tag), tag);
    }
    std::vector<std::string> tags;
    for (auto& [key, tag] : byFolded)
        tags.push_back(std::move(tag));
    return tags;
}

}  // namespace firn
