#include "notebook/recipe_reading.h"

#include "document/recipe_file.h"
#include "exchange/plain_text.h"
#include "exchange/recipe_json.h"

#include <QDateTime>
#include <QDirIterator>

namespace firn::app {

FolderLook lookThrough(const QString& folder, const std::atomic<bool>& isCalledOff)
{
    FolderLook look;
    look.isThere = QFileInfo(folder).isDir();
    if (!look.isThere)
        return look;
    look.folders.append(folder);
    QDirIterator entries(
        folder, {QStringLiteral("*.firn")}, QDir::Files | QDir::AllDirs | QDir::NoDotAndDotDot, QDirIterator::Subdirectories);
    while (entries.hasNext() && !isCalledOff) {
        const QString path = entries.next();
        const QFileInfo about = entries.fileInfo();
        if (!about.isDir())
            look.files.insert(path, {about.size(), about.lastModified().toMSecsSinceEpoch()});
        else if (!about.isSymLink())
            look.folders.append(path);
    }
    return look;
}

ReadFile readFile(const QString& file, const FileStamp& stamp)
{
    constexpr qint64 msPerSecond = 1000;
    const std::int64_t changed_s = stamp.changed_ms / msPerSecond;
    const auto contents = contentsOf(fileSystemPath(file));
    auto recipe = contents ? recipeFromJson(withoutByteOrderMark(*contents)) : failure(contents.error());
    if (!recipe)
        return {file, stamp, unreadableCard(file.toStdString(), changed_s, std::move(recipe.error())), {}};
    RecipeCard card = cardOf(*recipe, file.toStdString(), changed_s);
    recipe->versions.clear();
    recipe->tastings.clear();
    return {file, stamp, std::move(card), std::move(*recipe)};
}

void addFigures(ReadFile& read, const Catalogue& catalogue)
{
    if (read.recipe)
        read.card = withFigures(std::move(read.card), analyse(*read.recipe, catalogue, conditionsOf(*read.recipe)));
    read.recipe.reset();
}

}  // namespace firn::app
