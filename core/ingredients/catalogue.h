// All ingredients, found by id, name, synonym or plural, and searched as one types.
#pragma once

#include "ingredients/ingredient.h"

#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace firn {

class Catalogue {
public:
    Catalogue() = default;
    /// Ids must be unique; where the id or name of two ingredients, or a synonym of two, is the same word, the first one keeps it. A synonym
    /// yields to ids and names.
    explicit Catalogue(std::vector<Ingredient> ingredients);

    std::span<const Ingredient> all() const { return m_ingredients; }

    /// The ingredient meant by an id, a name, a synonym, or a plural of these, whatever the case and accents. Words of preparation
    /// ("ripe", "finely chopped") may stand around it, and "sugar, brown" is brown sugar. nullptr where that names nothing: a
    /// wrong ingredient would be worse than none.
    const Ingredient* find(std::string_view text) const { return findIn({this}, text); }

    /// The same in several catalogues: of those that know the text in the least changed form, the first one has it.
    static const Ingredient* findIn(std::initializer_list<const Catalogue*> catalogues, std::string_view text);

    /// Ingredients for a type-ahead, best first: what is called just so, then names that begin with the text, then words that do, then
    /// text anywhere, and last, from four letters on, words that begin with the text but for one slip of the finger.
    std::vector<const Ingredient*> search(std::string_view text, std::size_t atMost) const;

private:
    struct Entry {
        std::string folded;
        std::size_t index;
        bool isName;
    };
    void index(std::string_view text, std::size_t index, bool isName);
    const Ingredient* findWords(const std::string& singularWords) const;

    std::vector<Ingredient> m_ingredients;
    std::vector<Entry> m_entries;
    std::unordered_map<std::string, std::size_t> m_bySingularWords;
};

/// Lower case, Latin accents taken off, runs of anything but letters and digits as one blank. Two texts that fold alike mean the
/// same.
std::string folded(std::string_view text);

}  // namespace firn
