// What an ingredient's name means, as somebody wrote it: for the table, for pasted text, for files and for the command line.
#pragma once

#include "ingredients/catalogue.h"

#include <initializer_list>
#include <string_view>
#include <vector>

namespace firn {

/// A name and what it stands for. It is never wrong in silence: a slip of the finger is only read as the ingredient that it can be a slip for
/// where there is one and no other.
struct NameMatch {
    Recognition recognition = Recognition::Unknown;
    const Ingredient* ingredient = nullptr;  // none for an unknown name
    std::vector<const Ingredient*> others =
        {};  // for a general word what else has the word in its name, for an unknown name what is nearest
};

/// Looks a name up in several catalogues, of which the first one has a name that several know. At most so many others. The ingredients last
/// as long as the catalogues do.
NameMatch matchName(std::initializer_list<const Catalogue*> catalogues, std::string_view name, std::size_t mostOthers = 3);

inline NameMatch matchName(const Catalogue& catalogue, std::string_view name, std::size_t mostOthers = 3)
{
    return matchName({&catalogue}, name, mostOthers);
}

}  // namespace firn
