#include "exchange/recipe_jsonld.h"

#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "recipe/text_line.h"

#include <algorithm>

namespace firn {

namespace {

bool isRecipe(const Json& json)
{
    const auto type = json.find("@type");
    if (type == json.end())
        return false;
    return *type == "Recipe" || (type->is_array() && std::ranges::find(*type, Json("Recipe")) != type->end());
}

/// The first recipe in lists, graphs and pages; nullptr if there is none.
const Json* findRecipe(const Json& json)
{
    if (json.is_object() && isRecipe(json))
        return &json;
    if (!json.is_structured())
        return nullptr;
    for (const Json& part : json) {
        if (const Json* recipe = findRecipe(part))
            return recipe;
    }
    return nullptr;
}

/// Every text in a step, a section of steps, or a list of either, one a line.
void addSteps(const Json& json, std::string& notes)
{
    if (json.is_string()) {
        notes += (notes.empty() ? "" : "\n") + json.get<std::string>();
    } else if (json.is_array()) {
        for (const Json& step : json)
            addSteps(step, notes);
    } else if (json.is_object()) {
        for (const char* key : {"text", "itemListElement"}) {
            if (json.contains(key))
                addSteps(json[key], notes);
        }
    }
}

}  // namespace

Result<Recipe> recipeFromJsonLd(std::string_view text)
{
    const auto json = jsonFromText(text);
    if (!json)
        return failure(json.error());
    const Json* found = findRecipe(*json);
    if (found == nullptr)
        return failure(phrase("There is no recipe in this file: nothing in it has \"@type\": \"Recipe\"."));

    Recipe recipe;
    if (const auto name = found->find("name"); name != found->end() && name->is_string())
        recipe.title = name->get<std::string>();
    if (const auto steps = found->find("recipeInstructions"); steps != found->end())
        addSteps(*steps, recipe.notes);

    auto ingredients = found->find("recipeIngredient");
    if (ingredients == found->end())
        ingredients = found->find("ingredients");
    if (ingredients == found->end())
        return failure(phrase("The recipe has no ingredients: \"recipeIngredient\" is missing."));
    const Json list = ingredients->is_array() ? *ingredients : Json::array({*ingredients});
    std::vector<Row>& rows = recipe.components.front().rows;
    for (const Json& ingredient : list) {
        if (!ingredient.is_string())
            return failure(phrase("Ingredient {0} must be text.", wholeNumber(rows.size() + 1)));
        rows.push_back(rowFromLine(ingredient.get<std::string>()));
    }
    return recipe;
}

}  // namespace firn
