#include "ingredients/catalogue_filter.h"

#include "ingredients/matching.h"

#include <algorithm>

namespace firn {

namespace {

bool passes(const Ingredient& ingredient, const CatalogueFilter& filter)
{
    const auto holds = [&](Allergen allergen) {
        return std::ranges::find(ingredient.allergens, allergen) != ingredient.allergens.end();
    };
    return (filter.group.empty() || ingredient.group == filter.group) && std::ranges::all_of(filter.contains, holds)
           && std::ranges::none_of(filter.freeOf, holds);
}

}  // namespace

std::vector<const Ingredient*> filtered(const Catalogue& catalogue, const CatalogueFilter& filter)
{
    std::vector<const Ingredient*> found;
    if (folded(filter.text).empty()) {
        for (const Ingredient& ingredient : catalogue.all()) {
            found.push_back(&ingredient);
        }
    } else {
        found = catalogue.search(filter.text, catalogue.all().size());
        // What a row of a recipe would be read as comes first; "ripe strawberries, hulled" is not the beginning of any name.
        const NameMatch match = matchName(catalogue, filter.text);
        if (match.ingredient) {
            std::erase(found, match.ingredient);
            found.insert(found.begin(), match.ingredient);
        } else if (found.empty()) {
            found = match.others;
        }
    }
    std::erase_if(found, [&](const Ingredient* ingredient) { return !passes(*ingredient, filter); });
    return found;
}

std::vector<std::string> groupsOf(const Catalogue& catalogue)
{
    std::vector<std::string> groups;
    for (const Ingredient& ingredient : catalogue.all()) {
        if (!ingredient.group.empty() && std::ranges::find(groups, ingredient.group) == groups.end()) {
            groups.push_back(ingredient.group);
        }
    }
    return groups;
}

}  // namespace firn
