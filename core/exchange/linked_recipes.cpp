#include "exchange/linked_recipes.h"

#include "exchange/files.h"
#include "exchange/plain_text.h"
#include "ingredients/catalogue.h"
#include "recipe/versions.h"

#include <algorithm>

namespace firn {

namespace {

namespace fs = std::filesystem;

/// One form for all ways of writing a path; as it is where the file system cannot say.
fs::path plain(const fs::path& path)
{
    std::error_code error;
    const fs::path canonical = fs::weakly_canonical(path, error);
    return error ? path.lexically_normal() : canonical;
}

Result<Recipe> recipeIn(const fs::path& file)
{
    const auto contents = contentsOf(file);
    return contents ? recipeFromContents(*contents, file) : failure(contents.error());
}

std::size_t chainUnder(const Recipe& recipe)
{
    std::size_t longest = 0;
    for (const LinkedRecipe& linked : recipe.linked)
        longest = std::max(longest, 1 + chainUnder(linked.recipe));
    return longest;
}

/// Calls `change` with every file that the recipe names: links, those of its versions, and photos of tastings.
template <class Change>
void forEachFile(Recipe& recipe, Change change)
{
    for (LinkedRecipe& linked : recipe.linked)
        change(linked.file);
    for (Version& version : recipe.versions)
        for (LinkedRecipe& linked : version.recipe.linked)
            change(linked.file);
    for (Tasting& tasting : recipe.tastings)
        if (!tasting.photo.empty())
            change(tasting.photo);
}

}  // namespace

std::string chainOfLinks(const fs::path& sought, const Recipe& recipe, const fs::path& folder)
{
    for (const LinkedRecipe& linked : recipe.linked) {
        const fs::path file = plain(folder / linked.file);
        if (file == plain(sought))
            return linked.name;
        if (const std::string chain = chainOfLinks(sought, linked.recipe, file.parent_path()); !chain.empty())
            return linked.name + " → " + chain;
    }
    return {};
}

bool liesIn(const fs::path& folder, const fs::path& file)
{
    const fs::path relative = plain(file).lexically_relative(plain(folder));
    return !relative.empty() && *relative.begin() != "..";
}

Result<LinkedRecipe> takenIn(const fs::path& file, const fs::path& home)
{
    const fs::path itsFile = plain(file);
    auto recipe = recipeIn(itsFile);
    if (!recipe)
        return failure(recipe.error());
    const std::string name = recipe->title.empty() ? itsFile.stem().string() : recipe->title;
    if (!home.empty()) {
        const std::string chain = itsFile == plain(home) ? name : chainOfLinks(home, *recipe, itsFile.parent_path());
        if (!chain.empty())
            return failure(phrase("A recipe cannot be part of itself: {0}. Link another recipe.", name + " → " + chain));
    }
    if (1 + chainUnder(*recipe) > longestChainOfLinks)
        return failure(phrase("“{0}” links to recipes that link to recipes, more than {1} deep. Link one further down.", name,
            wholeNumber(longestChainOfLinks)));
    return LinkedRecipe{name, itsFile.string(), alone(*recipe)};
}

Result<std::optional<Recipe>> changedSinceTakenIn(const LinkedRecipe& linked, const fs::path& folder)
{
    auto now = recipeIn(folder / linked.file);
    if (!now)
        return failure(
            phrase("The linked recipe “{0}” could not be read again, so the saved copy is used: {1}", linked.name, english(now.error())));
    Recipe taken = alone(*now);
    if (taken == alone(linked.recipe))
        return std::optional<Recipe>();
    return std::optional(std::move(taken));
}

bool isNamedInRows(const LinkedRecipe& linked, const Recipe& recipe)
{
    const std::string name = folded(linked.name);
    return std::ranges::any_of(recipe.components, [&name](const Component& component) {
        return std::ranges::any_of(component.rows, [&name](const Row& row) { return folded(row.ingredient) == name; });
    });
}

Recipe withoutUnusedLinks(Recipe recipe)
{
    auto links = std::move(recipe.linked);
    std::erase_if(links, [&recipe](const LinkedRecipe& linked) { return !isNamedInRows(linked, recipe); });
    recipe.linked = std::move(links);
    return recipe;
}

Recipe withLinksFrom(const fs::path& folder, Recipe recipe)
{
    forEachFile(recipe, [&folder](std::string& file) {
        const fs::path relative = fs::path(file).lexically_relative(folder);
        if (!relative.empty() && *relative.begin() != "..")
            file = relative.string();
    });
    return recipe;
}

Recipe withAbsoluteLinks(const fs::path& folder, Recipe recipe)
{
    forEachFile(recipe, [&folder](std::string& file) { file = (folder / file).lexically_normal().string(); });
    return recipe;
}

}  // namespace firn
