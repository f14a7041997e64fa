// The names of a catalogue's ingredients, prepared for finding: what a text names, and what it may be meant to name.
#pragma once

#include "ingredients/ingredient.h"
#include "ingredients/sought_name.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace firn {

/// An ingredient by its place in the catalogue.
struct NameHit {
    std::size_t ingredient = 0;
    bool isByDefault = false;  // the text is a general word that the ingredient is the default for
    friend bool operator==(const NameHit&, const NameHit&) = default;
};

class NameIndex {
public:
    NameIndex() = default;
    /// Of two that claim the same text the first keeps it: ids and names before general words, these before synonyms.
    explicit NameIndex(std::span<const Ingredient> ingredients);

    /// A text exactly as an id, a name or another label has it, or in small letters without signs: the quickest way, and the usual one.
    std::optional<NameHit> written(std::string_view text) const;

    std::optional<NameHit> underKey(const std::string& key) const;

    /// The ingredient whose labels have all the words between them, one label alone being among them: "green cardamom pods" where "green cardamom"
    /// and "cardamom pod" are labels. None where that is true of two.
    std::optional<NameHit> underSeveralLabels(const SoughtName& name) const;

    /// The ingredient that is found without some of the words, where its kind says them anyway: "frozen raspberries". The fewest are left out.
    std::optional<NameHit> withoutWordsSaidAnyway(const SoughtName& name) const;

    /// Names that the text may be a slip for: words that nothing in the catalogue has are replaced by every word that lies one slip away, two in
    /// long words. Empty where a word has no such neighbour, or is short enough to be a neighbour of anything.
    std::vector<NameHit> withinSlips(const SoughtName& name) const;

    /// Places of ingredients for a type-ahead, best first; see Catalogue::search.
    std::vector<std::size_t> search(const Words& query, std::size_t atMost) const;

    /// Places of ingredients that an unknown name comes nearest to, best first; none that has no word near one of the name's.
    std::vector<std::size_t> nearest(const SoughtName& name, std::size_t atMost) const;

    /// Places of ingredients that have all words of a general word in one label, those first whose name ends with it ("double cream" before
    /// "cream cheese" for "cream"), then those with such a synonym.
    std::vector<std::size_t> sharing(const Words& words) const;

private:
    enum class Claim { Id, Name, General, Synonym };
    struct Label {
        std::size_t ingredient;
        Claim claim;
        std::vector<std::uint32_t> words;
        bool isGeneral = false;
        std::size_t head = 0;  // place of the last word before a comma and before figures
    };
    struct Word {
        std::string text;
        std::uint64_t letters;
        std::vector<std::uint32_t> labels;
    };
    struct Entry {
        NameHit hit;
        bool isWhole = true;       // of all words of a label, not only of those that are no fillers
        bool isAmbiguous = false;  // of two ingredients
    };

    void add(std::string_view text, std::size_t ingredient, Claim claim);
    void addKey(const std::string& key, Entry entry);
    std::vector<std::uint32_t> labelsOf(const std::vector<std::uint32_t>& words, std::size_t ingredient) const;
    std::uint32_t wordNumber(const std::string& text);
    /// How well each word of the catalogue answers a typed one, by number of the word: 0 not at all, then from best to worst.
    template <class Quality>
    std::vector<std::pair<std::uint32_t, int>> answers(const std::string& typed, const Quality& quality) const;

    std::vector<std::size_t> m_nameLengths;  // of each ingredient's name
    std::vector<Words> m_saidAnyway;         // of each ingredient
    std::vector<Label> m_labels;
    std::vector<Word> m_words;
    std::unordered_map<std::string, std::uint32_t> m_wordNumbers;
    struct TextHash {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
    };
    std::unordered_map<std::string, NameHit, TextHash, std::equal_to<>> m_written;
    std::unordered_map<std::string, Entry> m_keys;
};

}  // namespace firn
