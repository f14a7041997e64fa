// Reading the notebook's folder from disk, for threads in the background. Nothing here changes a file.
#pragma once

#include "notebook/recipe_card.h"

#include <QHash>
#include <QStringList>
#include <atomic>

namespace firn::app {

/// What tells whether a file has changed without reading it.
struct FileStamp {
    qint64 size_bytes = 0;
    qint64 changed_ms = 0;  // since 1970, UTC
    friend bool operator==(const FileStamp&, const FileStamp&) = default;
};

struct FolderLook {
    bool isThere = false;
    QStringList folders;  // it and all below it
    QHash<QString, FileStamp> files;
};

/// All recipe files in a folder and below it. Hidden ones and links to folders are passed over.
FolderLook lookThrough(const QString& folder, const std::atomic<bool>& isCalledOff);

/// A file as it was read: its card without figures, and the recipe if it could be read. Of its versions and tastings only the number is kept.
struct ReadFile {
    QString file;
    FileStamp stamp;
    RecipeCard card;
    std::optional<Recipe> recipe;
};
ReadFile readFile(const QString& file, const FileStamp& stamp);

/// Gives the card its figures, after which the recipe is not needed any more.
void addFigures(ReadFile& read, const Catalogue& catalogue);

}  // namespace firn::app
