#include "cli/recipe_argument.h"

#include "document/recipe_file.h"
#include "ingredients/catalogue.h"

#include <iostream>

namespace firn::app {

// "-" stands for standard input, here and in the reading of its text.
Result<Recipe> recipeIn(const QString& file)
{
    const std::filesystem::path path = fileSystemPath(file);
    const auto contents = path == "-" ? contentsOf(std::cin) : contentsOf(path);
    return contents ? recipeFromContents(*contents, path) : failure(contents.error());
}

Result<std::optional<std::size_t>> componentIn(const Recipe& recipe, const std::string& name)
{
    if (name.empty())
        return std::optional<std::size_t>();
    for (std::size_t i = 0; i < recipe.components.size(); ++i) {
        if (folded(recipe.components[i].name) == folded(name))
            return std::optional(i);
    }
    return failure(phrase("“{0}” has no component “{1}”.", recipe.title, name));
}

}  // namespace firn::app
