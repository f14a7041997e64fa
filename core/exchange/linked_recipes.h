// Recipes that are ingredients of another one: taking them in, and seeing whether they have changed since.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <filesystem>
#include <optional>
#include <string>

namespace firn {

/// How many recipes may hang one under the other: deeper ones would not fit into a recipe file's JSON.
inline constexpr std::size_t longestChainOfLinks = 8;

/// The recipe in `file`, taken in as it is now. `home` is the file of the recipe that will name it, empty where none keeps it yet. Fails
/// where the file cannot be read, where the chain of links is too long, and where `home` is the file itself or hangs under it, since a recipe
/// cannot be part of itself; the sentence names the chain.
Result<LinkedRecipe> takenIn(const std::filesystem::path& file, const std::filesystem::path& home);

/// The names from the recipe down to the one in the file `sought`, such as "Cream → Sauce"; empty where that is no part of it. `folder` is the
/// recipe's own.
std::string chainOfLinks(const std::filesystem::path& sought, const Recipe& recipe, const std::filesystem::path& folder);

/// Whether the file lies in the folder or below it, after following symbolic links: one that leads elsewhere does not.
bool liesIn(const std::filesystem::path& folder, const std::filesystem::path& file);

/// What the linked recipe's file holds now, if that is another recipe than the one taken in. Fails where the file is missing or cannot be
/// read; the recipe taken in still counts then, and the sentence says so. `folder` is that of the recipe with the link.
Result<std::optional<Recipe>> changedSinceTakenIn(const LinkedRecipe& linked, const std::filesystem::path& folder);

/// Whether a row of the recipe stands for this link; after its row was deleted none does.
bool isNamedInRows(const LinkedRecipe& linked, const Recipe& recipe);
Recipe withoutUnusedLinks(Recipe recipe);

/// The recipe with the files of its links, its versions' links and its tastings' photos as paths from this folder where they lie in it or below,
/// for a file that can move together with them; and the same as absolute paths again.
Recipe withLinksFrom(const std::filesystem::path& folder, Recipe recipe);
Recipe withAbsoluteLinks(const std::filesystem::path& folder, Recipe recipe);

}  // namespace firn
