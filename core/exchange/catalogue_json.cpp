#include "exchange/catalogue_json.h"

#include "exchange/ingredient_json.h"
#include "exchange/json_fields.h"

#include <unordered_set>

namespace firn {

namespace {

/// The ingredient's id where it has one, and its number in the list where not.
std::string placeOf(const Json& object, std::size_t index)
{
    const bool hasId = object.is_object() && object.contains("id") && object.at("id").is_string();
    return "catalogue, ingredient " + (hasId ? object.at("id").get<std::string>() : std::to_string(index + 1));
}

}  // namespace

Result<Catalogue> catalogueFromJson(std::string_view text)
{
    const auto json = jsonFromText(text);
    if (!json) {
        return failure(json.error());
    }
    Fields fields(*json, "catalogue");
    fields.allow({"format", "version", "about", "ingredients"});
    if (fields.text("format") != "firn-catalogue" || fields.number("version") != 1.0) {
        fields.refuse(phrase(
            "This is not a catalogue of version 1. Choose a file that says \"format\": \"firn-catalogue\" and \"version\": 1."));
    }
    if (fields.field("ingredients") == nullptr) {
        fields.refuse(phrase("catalogue: \"ingredients\" is missing. Add the list."));
    }
    std::vector<Ingredient> ingredients;
    std::unordered_set<std::string> ids;
    fields.forEach("ingredients", [&](const Json& object) {
        auto ingredient = ingredientFromJson(object, placeOf(object, ingredients.size()));
        if (!ingredient) {
            fields.refuse(ingredient.error());
            return;
        }
        if (!ids.insert(ingredient->id).second) {
            fields.refuse(phrase("catalogue: two ingredients have the id {0}. Give one of them another.", ingredient->id));
        }
        ingredients.push_back(std::move(*ingredient));
    });
    if (fields.problem()) {
        return failure(*fields.problem());
    }
    return Catalogue(std::move(ingredients));
}

std::string catalogueToJson(std::span<const Ingredient> ingredients)
{
    std::string out = "{\"format\": \"firn-catalogue\", \"version\": 1,\n\"ingredients\": [";
    for (const Ingredient& ingredient : ingredients) {
        out += &ingredient == ingredients.data() ? "\n" : ",\n";
        out += ingredientToJson(ingredient);
    }
    return out + "\n]}\n";
}

}  // namespace firn
