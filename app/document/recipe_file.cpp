#include "document/recipe_file.h"

#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

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
    QSaveFile file(path);
    const bool isWritten = file.open(QIODevice::WriteOnly) && file.write(contents) == contents.size() && file.commit();
    if (isWritten)
        return {};
    return failure(phrase("{0} could not be written ({1}): free some space or save it in another place; nothing is lost.",
        path.toStdString(), file.errorString().toStdString()));
}

}  // namespace firn::app
