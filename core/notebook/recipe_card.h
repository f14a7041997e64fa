// What the notebook knows of one recipe file, so that thousands can be listed and searched without holding the recipes.
#pragma once

#include "analysis/analysis.h"

#include <bitset>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace firn {

/// What an analysis of the whole dessert says, as far as a list shows it.
struct CardFigures {
    TextureClass textureClass = TextureClass::Nothing;
    Process process = Process::Churned;
    Ribbon ribbon{};
    MassFraction sugars;
    MassFraction fat;
    MassFraction iceAtServing;
    double alcohol_percentByVolume = 0.0;
    double sweetness_percentSucrose = 0.0;
    std::optional<Celsius> freezingPoint;  // none without water
};

/// Which pairs of letters the words of a card begin with, several pairs to a mark: most cards are passed over by that alone.
class WordBeginnings {
public:
    /// Marks all words of a text as cards hold it.
    void add(std::string_view searched);
    /// Whether a word as queries hold it, with a blank in front, may be there.
    bool mayHold(std::string_view word) const { return word.size() < 3 || m_marks[markOf(word)]; }

private:
    static constexpr std::size_t markCount = 512;
    /// Of the two letters behind the blank.
    static std::size_t markOf(std::string_view word);

    std::bitset<markCount> m_marks;
};

struct RecipeCard {
    std::string file;            // its path
    std::int64_t changed_s = 0;  // when the file was, in seconds since 1970, UTC
    std::string title;           // the file's name where the recipe has none
    std::vector<std::string> ingredients = {};
    std::vector<std::string> tags = {};
    bool isFavourite = false;
    bool isArchived = false;
    std::size_t versions = 0;
    std::size_t tastings = 0;
    std::optional<CardFigures> figures = {};  // none until it is analysed, and for a file that cannot be read
    std::optional<Sentence> fault = {};       // why the file cannot be read

    /// What is searched, folded once for all searches: each text as " word word " on a line of its own, the title first.
    std::string searched = {};
    std::string searchedTags = {};  // apart, since tags change without the rest
    WordBeginnings beginnings = {};
};

/// The card of a recipe that is not analysed yet. Without a title it goes by the file's name.
RecipeCard cardOf(const Recipe& recipe, std::string file, std::int64_t changed_s);

/// The card with its figures, and with what the catalogue and the texture call things among what is searched.
RecipeCard withFigures(RecipeCard card, const Analysis& analysis);

/// The card of a file that cannot be read.
RecipeCard unreadableCard(std::string file, std::int64_t changed_s, Sentence why);

void setTags(RecipeCard& card, std::vector<std::string> tags);

/// Tags as a person types them, parted by commas: without blanks around them, each once.
std::vector<std::string> tagsFrom(std::string_view typed);

}  // namespace firn
