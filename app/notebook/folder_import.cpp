#include "notebook/folder_import.h"

#include "document/recipe_file.h"

#include <QDir>
#include <QDirIterator>
#include <algorithm>

namespace firn::app {

namespace {

const QStringList recipeFiles{
    QStringLiteral("*.firn"), QStringLiteral("*.txt"), QStringLiteral("*.csv"), QStringLiteral("*.jsonld")};

bool isIn(const QString& folder, const QString& other)
{
    const QString inner = QDir(folder).canonicalPath();
    const QString outer = QDir(other).canonicalPath();
    return !inner.isEmpty() && !outer.isEmpty() && (inner == outer || inner.startsWith(outer + u'/'));
}

/// Any text is a list of ingredients without amounts; a recipe has at least one amount.
bool hasAmount(const Recipe& recipe)
{
    return std::ranges::any_of(recipe.components, [](const Component& component) {
        return std::ranges::any_of(component.rows, [](const Row& row) { return row.amount.value > 0.0; });
    });
}

/// What the copy holds: a file of Firn's own as it is, so that nothing in it is lost.
Result<QByteArray> asRecipeFile(const QString& file)
{
    const auto contents = contentsOf(fileSystemPath(file));
    if (!contents)
        return failure(contents.error());
    const auto recipe = recipeFromContents(*contents, fileSystemPath(file));
    if (!recipe)
        return failure(recipe.error());
    if (holdsWholeRecipe(file))
        return QByteArray::fromStdString(*contents);
    if (!hasAmount(*recipe))
        return failure(phrase("{0}: There is no amount in it, so it was not taken for a recipe.", file.toStdString()));
    return contentsFor(*recipe, QStringLiteral("recipe.firn"));
}

/// An empty file with a free name, which nobody else can take any more; none where it cannot be made.
QString reservedFile(const QDir& folder, const QString& name)
{
    for (int number = 1;; ++number) {
        const QString file =
            folder.filePath(number == 1 ? name + QStringLiteral(".firn") : QStringLiteral("%1 %2.firn").arg(name).arg(number));
        if (QFile(file).open(QIODevice::WriteOnly | QIODevice::NewOnly))
            return file;
        if (!QFileInfo::exists(file))
            return {};
    }
}

Result<void> takeIn(const QString& file, const QDir& folder)
{
    const auto contents = asRecipeFile(file);
    if (!contents)
        return failure(contents.error());
    const QString copy = folder.mkpath(QStringLiteral(".")) ? reservedFile(folder, QFileInfo(file).completeBaseName()) : QString();
    if (!copy.isEmpty() && writeFile(copy, *contents))
        return {};
    if (!copy.isEmpty())
        QFile::remove(copy);
    return failure(
        phrase("{0}: The copy could not be written. Check that the notebook's folder may be written and its disk has room.",
            file.toStdString()));
}

}  // namespace

Result<ImportOutcome> importFolder(const QString& from, const QString& notebook, const std::atomic<bool>& isCalledOff)
{
    if (!QDir(from).exists())
        return failure(phrase("{0} is not there. Choose another folder.", from.toStdString()));
    if (!QDir().mkpath(notebook))
        return failure(phrase("The notebook's folder {0} cannot be made. Choose another one.", notebook.toStdString()));
    if (isIn(from, notebook) || isIn(notebook, from))
        return failure(
            phrase("{0} and the notebook's folder lie in one another, so its recipes are not copied. Choose another folder.",
                from.toStdString()));
    QStringList files;
    for (QDirIterator entries(from, recipeFiles, QDir::Files, QDirIterator::Subdirectories); entries.hasNext();)
        files.append(entries.next());
    files.sort();
    ImportOutcome outcome;
    for (const QString& file : std::as_const(files)) {
        if (isCalledOff)
            break;
        const QString below = QFileInfo(QDir(from).relativeFilePath(file)).path();
        if (auto taken = takeIn(file, QDir(QDir(notebook).filePath(below))))
            ++outcome.taken;
        else
            outcome.refused.push_back(std::move(taken.error()));
    }
    return outcome;
}

}  // namespace firn::app
