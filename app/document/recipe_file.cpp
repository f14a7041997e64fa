#include "document/recipe_file.h"

#include "document/disk.h"
#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QFile>
#include <QFileInfo>

namespace firn::app {

namespace {

QString endingOf(const QString& path) { return QFileInfo(path).suffix().toLower(); }

}  // namespace

std::filesystem::path fileSystemPath(const QString& path) { return QFile::encodeName(path).toStdString(); }

bool holdsWholeRecipe(const QString& path)
{
    const QString ending = endingOf(path);
    return ending == QLatin1String("firn") || ending == QLatin1String("json");
}

QByteArray contentsFor(const Recipe& recipe, const QString& path)
{
    const QString ending = endingOf(path);
    if (ending == QLatin1String("txt"))
        return QByteArray::fromStdString(recipeToText(recipe));
    if (ending == QLatin1String("csv"))
        return QByteArray::fromStdString(recipeToCsv(recipe));
    return QByteArray::fromStdString(recipeToJson(recipe));
}

Result<void> writeFile(const QString& path, const QByteArray& contents)
{
    return Disk().write(path, contents).map_error([](const FileFailure& failure) { return failure.sentence; });
}

}  // namespace firn::app
