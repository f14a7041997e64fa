#include "exchange/unique_ids.h"

#include "ingredients/ingredient_id.h"

#include <string>
#include <unordered_map>
#include <unordered_set>

namespace firn {

void fillMissingIds(std::span<ImportedIngredient> imported)
{
    std::unordered_set<std::string> taken;
    for (const ImportedIngredient& each : imported)
        taken.insert(each.ingredient.id);
    std::unordered_map<std::string, int>
        used;  // how often an id was asked for, so that many foods of one name take no square of time
    for (ImportedIngredient& each : imported) {
        std::string& id = each.ingredient.id;
        if (!id.empty())
            continue;
        const std::string plain = ingredientIdFrom(each.ingredient.name);
        id = plain;
        for (int& number = used[plain]; !taken.insert(id).second;)
            id = plain + "-" + std::to_string(++number + 1);
    }
}

}  // namespace firn
