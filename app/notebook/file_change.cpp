#include "notebook/file_change.h"

#include "document/recipe_file.h"

#include <QFileInfo>

namespace firn::app {

Result<void> changeInFile(const QString& file, const std::function<void(Recipe&)>& change)
{
    const std::filesystem::path path = fileSystemPath(file);
    const auto before = contentsOf(path);
    if (!before)
        return failure(before.error());
    auto recipe = recipeFromContents(*before, path);
    if (!recipe)
        return failure(recipe.error());
    change(*recipe);
    const QByteArray after = contentsFor(*recipe, file);
    if (after.toStdString() == *before)
        return {};
    if (contentsOf(path) != before)
        return failure(phrase("{0} was changed by another program just now, so nothing was written. Try again.", file.toStdString()));
    if (!QFileInfo(file).isWritable() || !writeFile(file, after))
        return failure(
            phrase("{0} could not be changed. Check that you have permission to write it and that its disk has room.", file.toStdString()));
    return {};
}

}  // namespace firn::app
