#include "ingredients/catalogue.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace firn {

namespace {

// What a cook writes around an ingredient without changing what it is, in the singular. Not here: dried, frozen, whole, raw (raw
// sugar), strained (strained yogurt) and other words that make another ingredient of it.
constexpr auto preparationWords = std::to_array<std::string_view>({"and", "at", "beaten", "boiling", "chilled", "chopped", "chunk",
    "coarsely", "cold", "cool", "cored", "crushed", "cube", "cubed", "cut", "deseeded", "diced", "drained", "fine", "finely",
    "fresh", "freshly", "grated", "halved", "hot", "hulled", "in", "into", "large", "lightly", "medium", "melted", "of", "optional",
    "organic", "peeled", "picked", "piece", "pitted", "pure", "quartered", "rinsed", "ripe", "room", "roughly", "scraped", "seeded",
    "separated", "sifted", "slice", "sliced", "small", "softened", "split", "squeezed", "stoned", "taste", "temperature", "the",
    "thinly", "to", "trimmed", "unwaxed", "warm", "washed", "well"});

// Plurals that the rules below would get wrong.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> irregularPlurals{
    {{"leaves", "leaf"}, {"halves", "half"}, {"kiwis", "kiwi"}, {"litchis", "litchi"}}};

/// One form for an English word and its plural. It need not be a word itself: "molasses" becomes "molass", always.
std::string singular(std::string_view word)
{
    const auto* irregular = std::ranges::find(irregularPlurals, word, [](const auto& pair) { return pair.first; });
    if (irregular != irregularPlurals.end()) {
        return std::string(irregular->second);
    }
    const auto without = [word](std::size_t letters) { return std::string(word.substr(0, word.size() - letters)); };
    const auto endsWith = [word](auto... ends) { return (word.ends_with(ends) || ...); };
    if (word.size() <= 3 || endsWith("ss", "us", "is")) {
        return std::string(word);
    }
    if (endsWith("ies", "ie")) {
        return without(word.ends_with('s') ? 3 : 2) + "y";
    }
    if (endsWith("oes", "sses", "xes", "ches", "shes")) {
        return without(2);
    }
    return endsWith("s") ? without(1) : std::string(word);
}

using Words = std::vector<std::string>;

Words singularWords(std::string_view text)
{
    const std::string words = folded(text);
    Words result;
    for (std::size_t begin = 0; begin < words.size();) {
        const std::size_t end = std::min(words.find(' ', begin), words.size());
        result.push_back(singular(std::string_view(words).substr(begin, end - begin)));
        begin = end + 1;
    }
    return result;
}

std::string joined(const Words& words)
{
    std::string result;
    for (const auto& word : words) {
        result += (result.empty() ? "" : " ") + word;
    }
    return result;
}

Words withoutPreparation(Words words)
{
    std::erase_if(
        words, [](const std::string& word) { return std::ranges::find(preparationWords, word) != preparationWords.end(); });
    return words;
}

enum class Match { Exact, NameBegins, WordBegins, Anywhere, OneSlip, None };

/// Whether `text` begins with `query` after one letter was changed, left out, added, or swapped with the next.
bool nearlyBeginsWith(std::string_view text, std::string_view query)
{
    const auto length = std::min(text.size(), query.size());
    std::size_t same = 0;
    while (same < length && text[same] == query[same]) {
        ++same;
    }
    text.remove_prefix(same);
    query.remove_prefix(same);
    if (query.size() <= 1) {
        return true;
    }
    const auto rest = query.substr(1);
    const bool isSwapped =
        text.size() > 1 && text[0] == query[1] && text[1] == query[0] && text.substr(2).starts_with(query.substr(2));
    return text.starts_with(rest) || isSwapped
           || (!text.empty() && (text.substr(1).starts_with(rest) || text.substr(1).starts_with(query)));
}

bool hasWordThatNearlyBeginsWith(std::string_view text, std::string_view query)
{
    for (std::size_t begin = 0; begin < text.size(); begin = std::min(text.find(' ', begin), text.size() - 1) + 1) {
        if (nearlyBeginsWith(text.substr(begin), query)) {
            return true;
        }
    }
    return false;
}

Match matchOf(std::string_view text, bool isName, std::string_view query)
{
    const std::size_t at = text.find(query);
    if (at == std::string_view::npos) {
        constexpr std::size_t fewestLettersForSlips = 4;
        return query.size() >= fewestLettersForSlips && hasWordThatNearlyBeginsWith(text, query) ? Match::OneSlip : Match::None;
    }
    if (at == 0) {
        return text.size() == query.size() ? Match::Exact : isName ? Match::NameBegins : Match::WordBegins;
    }
    for (std::size_t word = at; word != std::string_view::npos; word = text.find(query, word + 1)) {
        if (text[word - 1] == ' ') {
            return Match::WordBegins;
        }
    }
    return Match::Anywhere;
}

}  // namespace

Catalogue::Catalogue(std::vector<Ingredient> ingredients)
    : m_ingredients(std::move(ingredients))
{
    for (std::size_t i = 0; i < m_ingredients.size(); ++i) {
        index(m_ingredients[i].id, i, false);
        index(m_ingredients[i].name, i, true);
    }
    for (std::size_t i = 0; i < m_ingredients.size(); ++i) {
        for (const auto& synonym : m_ingredients[i].synonyms) {
            index(synonym, i, false);
        }
    }
}

void Catalogue::index(std::string_view text, std::size_t index, bool isName)
{
    m_entries.push_back({folded(text), index, isName});
    m_bySingularWords.try_emplace(joined(singularWords(text)), index);
}

const Ingredient* Catalogue::findWords(const std::string& singularWords) const
{
    const auto found = m_bySingularWords.find(singularWords);
    return found == m_bySingularWords.end() ? nullptr : &m_ingredients[found->second];
}

const Ingredient* Catalogue::findIn(std::initializer_list<const Catalogue*> catalogues, std::string_view text)
{
    const auto findWords = [&catalogues](const Words& words) -> const Ingredient* {
        const std::string key = joined(words);
        for (const Catalogue* catalogue : catalogues)
            if (const Ingredient* found = words.empty() ? nullptr : catalogue->findWords(key))
                return found;
        return nullptr;
    };
    const Words words = singularWords(text);
    if (const auto* ingredient = findWords(words)) {
        return ingredient;
    }
    if (const auto* ingredient = findWords(withoutPreparation(words))) {
        return ingredient;
    }
    // "butter, unsalted, softened" and "butter (unsalted)" are unsalted butter.
    const std::size_t comma = text.find_first_of(",(");
    if (comma == std::string_view::npos) {
        return nullptr;
    }
    Words inverted = withoutPreparation(singularWords(text.substr(comma)));
    std::ranges::copy(withoutPreparation(singularWords(text.substr(0, comma))), std::back_inserter(inverted));
    return findWords(inverted);
}

std::vector<const Ingredient*> Catalogue::search(std::string_view text, std::size_t atMost) const
{
    const std::string query = folded(text);
    std::vector<Match> best(m_ingredients.size(), Match::None);
    for (const auto& entry : m_entries) {
        best[entry.index] = std::min(best[entry.index], matchOf(entry.folded, entry.isName, query));
    }
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < best.size(); ++i) {
        if (best[i] != Match::None) {
            found.push_back(i);
        }
    }
    // Of two names that match alike the shorter one is meant: "sal" is salt before salted butter.
    std::ranges::stable_sort(found, {}, [&](std::size_t i) { return std::pair(best[i], m_ingredients[i].name.size()); });
    std::vector<const Ingredient*> result;
    for (std::size_t i = 0; i < found.size() && i < atMost; ++i) {
        result.push_back(&m_ingredients[found[i]]);
    }
    return result;
}

}  // namespace firn
