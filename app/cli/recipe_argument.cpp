#include "cli/recipe_argument.h"

#include "document/recipe_file.h"
#include "ingredients/catalogue.h"

#include <QFileInfo>
#include <iostream>

namespace firn::app {

namespace {

struct Operand {
    QString file;
    std::optional<std::string> version = {};
};

/// Where neither is there, the whole of it is what is missing.
Operand operandFrom(const QString& text)
{
    const qsizetype at = text.lastIndexOf(u'@');
    if (at <= 0 || QFileInfo::exists(text) || !QFileInfo::exists(text.left(at)))
        return {text};
    return {text.left(at), text.mid(at + 1).toStdString()};
}

// "-" stands for standard input, here and in the reading of its text.
Result<Recipe> wholeRecipeIn(const QString& file)
{
    const std::filesystem::path path = fileSystemPath(file);
    const auto contents = path == "-" ? contentsOf(std::cin) : contentsOf(path);
    return contents ? recipeFromContents(*contents, path) : failure(contents.error());
}

}  // namespace

Result<Recipe> recipeIn(const QString& operand)
{
    const auto [file, version] = operandFrom(operand);
    auto recipe = wholeRecipeIn(file);
    if (!recipe || !version)
        return recipe;
    auto kept = versionCandidate(*recipe, *version);
    return kept ? Result<Recipe>(std::move(kept->recipe)) : failure(kept.error());
}

Result<Candidate> candidateIn(const QString& operand)
{
    const auto [file, version] = operandFrom(operand);
    const auto recipe = wholeRecipeIn(file);
    if (!recipe)
        return failure(recipe.error());
    if (version)
        return versionCandidate(*recipe, *version);
    return benchCandidate(*recipe, recipe->title.empty() ? QFileInfo(file).fileName().toStdString() : recipe->title);
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
