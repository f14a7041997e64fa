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
        const auto addSharing = [&](std::string_view word) {
            for (const Catalogue* catalogue : catalogues)
                std::ranges::copy(catalogue->sharing(word), std::back_inserter(sharing));
        };
        addSharing(name);
        // "Cooking chocolate" shares its words with nothing: the other chocolates.
        if (std::ranges::all_of(sharing, [&](const Ingredient* other) { return other == found.ingredient; }))
            std::ranges::for_each(found.ingredient->defaultFor, addSharing);
        // Another milk before malted milk.
        std::ranges::stable_partition(sharing, [&](const Ingredient* other) { return other->group == found.ingredient->group; });
        std::ranges::for_each(sharing, offer);
    }
    const auto offerNearest = [&](std::string_view text) {
        for (const Catalogue* catalogue : catalogues)
            std::ranges::for_each(catalogue->nearest(text, mostOthers + 1), offer);
    };
    if (found.how == Recognition::Unknown || (found.how == Recognition::ByDefault && match.others.empty()))
        offerNearest(name);
    if (found.how == Recognition::ByDefault && match.others.empty())
        offerNearest(found.ingredient->name);
    return match;
}

}  // namespace firn
