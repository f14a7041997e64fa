// Reading ingredients from a file of whatever kind.
#pragma once

#include "exchange/imported_ingredient.h"
#include "ingredients/catalogue.h"

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace firn {

/// Ingredients from text of the kind that it begins with: a brace or bracket is JSON, which says "format" if it is a catalogue of Firn's
/// and otherwise has foods of FoodData Central; anything else is CSV. `name` is the file's name, for the sentence if it cannot be read and
/// for the source of ingredients that give none; "-" is standard input. All or nothing.
Result<std::vector<ImportedIngredient>> ingredientsFromContents(const std::string& contents, const std::filesystem::path& name);

/// Why these cannot be added to the catalogue: one has the id of an ingredient there, or a name that already means one there. Nothing if
/// they can.
std::optional<Sentence> collisionWith(const Catalogue& catalogue, std::span<const ImportedIngredient> imported);

}  // namespace firn
