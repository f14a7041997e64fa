#include "exchange/ingredient_files.h"

#include "exchange/catalogue_json.h"
#include "exchange/food_data_json.h"
#include "exchange/ingredient_csv.h"
#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "units/text.h"

#include <algorithm>
#include <unordered_map>

namespace firn {

namespace {

Result<std::vector<ImportedIngredient>> ingredientsFromOwnCatalogue(std::string_view text)
{
    const auto catalogue = catalogueFromJson(text);
    if (!catalogue)
        return failure(catalogue.error());
    std::vector<ImportedIngredient> result;
    for (const Ingredient& ingredient : catalogue->all())
        result.push_back({ingredient, {}, {}, {}});
    return result;
}

Result<std::vector<ImportedIngredient>> ingredientsFromAny(std::string_view text, const std::string& ending)
{
    const std::string_view start = text.substr(std::min(text.find_first_not_of(" \t\r\n"), text.size()));
    if (ending != ".json" && !start.starts_with('{') && !start.starts_with('['))
        return ingredientsFromCsv(text);
    const auto json = jsonFromText(text);
    if (!json)
        return failure(json.error());
    return json->is_object() && json->contains("format") ? ingredientsFromOwnCatalogue(text) : ingredientsFromFoodData(text);
}

}  // namespace

Result<std::vector<ImportedIngredient>> ingredientsFromContents(const std::string& contents, const std::filesystem::path& name)
{
    const bool isStandardInput = name == "-";
    auto result = ingredientsFromAny(withoutByteOrderMark(contents), lowered(name.extension().string()));
    if (!result)
        return failure(isStandardInput ? std::move(result.error()) : phrase("{0}: {1}", name.string(), english(result.error())));
    if (const std::string file = name.filename().string(); !isStandardInput && !faultOfText(file))
        for (ImportedIngredient& imported : *result)
            if (imported.ingredient.source.empty())
                imported.ingredient.source = "Read from " + file + ".";
    return result;
}

std::optional<Sentence> collisionWith(const Catalogue& catalogue, std::span<const ImportedIngredient> imported)
{
    std::unordered_map<std::string, const Ingredient*> taken;
    for (const Ingredient& ingredient : catalogue.all()) {
        taken.try_emplace(folded(ingredient.id), &ingredient);
        taken.try_emplace(folded(ingredient.name), &ingredient);
        for (const std::string& synonym : ingredient.synonyms)
            taken.try_emplace(folded(synonym), &ingredient);
    }
    for (const ImportedIngredient& each : imported)
        for (const std::string& text : {each.ingredient.id, each.ingredient.name})
            if (const auto found = taken.find(folded(text)); found != taken.end())
                return phrase(
                    "“{0}” already means {1} in the catalogue. Give the imported ingredient another id and name, or leave it out.",
                    shortened(text), found->second->name);
    return std::nullopt;
}

}  // namespace firn
