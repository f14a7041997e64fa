#include "ingredients/matching.h"

#include <algorithm>

namespace firn {

NameMatch matchName(std::initializer_list<const Catalogue*> catalogues, std::string_view name, std::size_t mostOthers)
{
    const Recognised found = Catalogue::recogniseIn(catalogues, name);
    NameMatch match{found.how, found.ingredient};
    const auto offer = [&](const Ingredient* ingredient) {
        const bool isThere = std::ranges::find(match.others, ingredient->id, &Ingredient::id) != match.others.end();
        const bool isTaken = found.ingredient && found.ingredient->id == ingredient->id;
        if (!isThere && !isTaken && match.others.size() < mostOthers)
            match.others.push_back(ingredient);
    };
    for (const Catalogue* catalogue : catalogues) {
        if (found.how == Recognition::ByDefault)
            std::ranges::for_each(catalogue->sharing(name), offer);
        else if (found.how == Recognition::Unknown)
            std::ranges::for_each(catalogue->nearest(name, mostOthers), offer);
    }
    return match;
}

}  // namespace firn
