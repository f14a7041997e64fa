#include "document/recipe_saving.h"

#include "document/recipe_file.h"
#include "exchange/linked_recipes.h"

#include <QCryptographicHash>
#include <QFileInfo>

namespace firn::app {

namespace {

std::filesystem::path folderOf(const QString& file) { return fileSystemPath(file).parent_path(); }

bool isMissing(const FileFailure& failure)
{
    return failure.problem == FileProblem::NoFile || failure.problem == FileProblem::NoFolder;
}

}  // namespace

QByteArray fingerprintOf(const QByteArray& contents) { return QCryptographicHash::hash(contents, QCryptographicHash::Sha256); }

FileResult<OpenedRecipe> openRecipe(const Disk& disk, const QString& path)
{
    const auto contents = disk.read(path);
    if (!contents)
        return tl::unexpected(contents.error());
    return recipeFrom(*contents, path).map_error([](const Sentence& sentence) {
        return FileFailure{FileProblem::Other, sentence};
    });
}

Result<OpenedRecipe> recipeFrom(const QByteArray& contents, const QString& path)
{
    auto recipe = recipeFromContents(contents.toStdString(), fileSystemPath(path));
    if (!recipe)
        return failure(recipe.error());
    // Saving over a text or CSV file would drop what that kind cannot hold, so only Firn's own kind is kept as the recipe's place.
    const QString absolute = QFileInfo(path).absoluteFilePath();
    return OpenedRecipe{withAbsoluteLinks(folderOf(absolute), std::move(*recipe)),
        holdsWholeRecipe(absolute) ? absolute : QString(), fingerprintOf(contents)};
}

QByteArray contentsToSave(const Recipe& recipe, const QString& path)
{
    return contentsFor(withLinksFrom(folderOf(path), withoutUnusedLinks(recipe)), path);
}

SaveOutcome saveRecipe(const Disk& disk, const RecipeToSave& wanted)
{
    if (const auto chain = chainOfLinks(fileSystemPath(wanted.path), wanted.recipe, folderOf(wanted.path)); !chain.empty())
        return NotWritten{{FileProblem::Other,
            phrase("A recipe cannot be part of itself, and this one links to {0}. Save it in another file.", chain)}};
    if (!wanted.knownFingerprint.isEmpty()) {
        const auto there = disk.read(wanted.path);
        if (there && fingerprintOf(*there) != wanted.knownFingerprint)
            return ChangedByOthers{*there};
        if (!there && !isMissing(there.error()))
            return NotWritten{there.error()};
    }
    const QByteArray contents = contentsToSave(wanted.recipe, wanted.path);
    if (auto written = disk.write(wanted.path, contents); !written)
        return NotWritten{written.error()};
    return Written{fingerprintOf(contents)};
}

FoundOnDisk lookAt(const Disk& disk, const QString& path)
{
    const auto contents = disk.read(path);
    if (contents)
        return {FoundOnDisk::AFile, *contents};
    switch (contents.error().problem) {
    case FileProblem::NoFile:
        return {FoundOnDisk::NoFile, {}};
    case FileProblem::NoFolder:
        return {FoundOnDisk::NoFolder, {}};
    default:
        return {FoundOnDisk::Unreadable, {}};
    }
}

}  // namespace firn::app
