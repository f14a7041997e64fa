// All ingredients, found by id, name, synonym or plural, and searched as one types.
#pragma once

#include "ingredients/ingredient.h"

#include <initializer_list>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// How a name stands for an ingredient.
enum class Recognition {
    Unknown,
    AsWritten,  // by an id, name or synonym, whatever its case, accents, plural, order of words and words of preparation
    ByDefault,  // by a general word: "cream"
    Corrected   // but for slips of the finger, and nothing else is as near
};

struct Recognised {
    const Ingredient* ingredient = nullptr;  // none where the name is unknown
    Recognition how = Recognition::Unknown;
};

class NameIndex;

class Catalogue {
public:
    Catalogue();
    /// Ids must be unique; where the id or name of two ingredients, or a synonym of two, is the same word, the first one keeps it. A synonym
    /// yields to ids and names, and so does a general word.
    explicit Catalogue(std::vector<Ingredient> ingredients);

    std::span<const Ingredient> all() const { return m_ingredients; }

    /// The ingredient meant by a name, and how it is meant. Kinds and forms may stand in any order ("glucose syrup, dried"), words of
    /// preparation around it ("ripe", "finely chopped"), and "sugar, brown" is brown sugar. Nothing where that names nothing or could be two
    /// ingredients: a wrong ingredient would be worse than none.
    Recognised recognise(std::string_view text) const { return recogniseIn({this}, text); }

    /// The same in several catalogues: of those that know the text in the least changed form, the first one has it.
    static Recognised recogniseIn(std::initializer_list<const Catalogue*> catalogues, std::string_view text);

    /// The ingredient alone.
    const Ingredient* find(std::string_view text) const { return recognise(text).ingredient; }
    static const Ingredient* findIn(std::initializer_list<const Catalogue*> catalogues, std::string_view text)
    {
        return recogniseIn(catalogues, text).ingredient;
    }

    /// Ingredients for a type-ahead, best first: what is called just so, then names that begin with the words, then words that do, then
    /// words with the text in them, and last, from four letters on, words with a slip of the finger. All words must be there, in any order.
    std::vector<const Ingredient*> search(std::string_view text, std::size_t atMost) const;

    /// What an unknown name comes nearest to, best first.
    std::vector<const Ingredient*> nearest(std::string_view text, std::size_t atMost) const;

    /// What has all words of a general word in its name, that which is called so at the end first.
    std::vector<const Ingredient*> sharing(std::string_view text) const;

private:
    std::vector<const Ingredient*> at(const std::vector<std::size_t>& places) const;

    std::vector<Ingredient> m_ingredients;
    std::shared_ptr<const NameIndex> m_names;  // the same for every copy
};

/// Lower case, Latin accents taken off, runs of anything but letters and digits as one blank. Two texts that fold alike mean the
/// same.
std::string folded(std::string_view text);

}  // namespace firn
