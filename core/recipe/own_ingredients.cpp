#include "recipe/own_ingredients.h"

#include <algorithm>

namespace firn {

Recipe withOwnIngredients(Recipe recipe, const Catalogue& catalogue, std::span<const Ingredient> own)
{
    const Catalogue travelling(recipe.ingredients);
    for (const Component& component : recipe.components) {
        for (const Row& row : component.rows) {
            const Ingredient* found = own.empty() ? nullptr : Catalogue::findIn({&travelling, &catalogue}, row.ingredient);
            const auto has = [found](
                                 const auto& list) { return std::ranges::find(list, found->id, &Ingredient::id) != list.end(); };
            if (found && has(own) && !has(recipe.ingredients))
                recipe.ingredients.push_back(*found);
        }
    }
    return recipe;
}

std::vector<const Ingredient*> changedOwnIngredients(const Recipe& recipe, std::span<const Ingredient> own)
{
    std::vector<const Ingredient*> changed;
    for (const Ingredient& travelling : recipe.ingredients) {
        const auto now = std::ranges::find(own, travelling.id, &Ingredient::id);
        if (now != own.end() && *now != travelling)
            changed.push_back(&*now);
    }
    return changed;
}

}  // namespace firn
