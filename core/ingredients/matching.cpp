#include "ingredients/matching.h"

#include <algorithm>
#include <iterator>

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
    if (found.how == Recognition::ByDefault) {
        std::vector<const Ingredient*> sharing;
        for (const Catalogue* catalogue : catalogues)
            std::ranges::copy(catalogue->sharing(name), std::back_inserter(sharing));
        // Another milk before malted milk.
        std::ranges::stable_partition(sharing, [&](const Ingredient* other) { return other->group == found.ingredient->group; });
        std::ranges::for_each(sharing, offer);
    }
    if (found.how == Recognition::Unknown || (found.how == Recognition::ByDefault && match.others.empty()))
        for (const Catalogue* catalogue : catalogues)
            std::ranges::for_each(catalogue->nearest(name, mostOthers + 1), offer);
    return match;
}

}  // namespace firn
