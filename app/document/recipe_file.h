// Files that keep a recipe: which kinds there are, and writing them so that a failure never harms what was there.
#pragma once

#include "exchange/files.h"

#include <QByteArray>
#include <QString>
#include <filesystem>

namespace firn::app {

std::filesystem::path fileSystemPath(const QString& path);

/// Whether a file with this ending holds all that a recipe has. Text and CSV hold the rows only.
bool holdsWholeRecipe(const QString& path);

/// The recipe as the kind of file that the ending names: text, CSV, otherwise Firn's own.
QByteArray contentsFor(const Recipe& recipe, const QString& path);

/// Writes a file in one stroke. On failure the file that was there is untouched, and the sentence says why and what to do.
Result<void> writeFile(const QString& path, const QByteArray& contents);

}  // namespace firn::app
