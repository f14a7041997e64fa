// Opening and saving as it goes on beside the window: values in, values out, nothing of the document in between.
#pragma once

#include "document/disk.h"
#include "recipe/recipe.h"

#include <cstdint>
#include <variant>

namespace firn::app {

/// Stands for what a file holds: SHA-256 of its bytes.
QByteArray fingerprintOf(const QByteArray& contents);

struct OpenedRecipe {
    Recipe recipe;
    QString path;            // where it is kept: empty for text and CSV, which cannot hold all that a recipe has
    QByteArray fingerprint;  // of the file
};

/// A recipe from a file of any kind that Firn reads.
FileResult<OpenedRecipe> openRecipe(const Disk& disk, const QString& path);
/// The same from what was read already.
Result<OpenedRecipe> recipeFrom(const QByteArray& contents, const QString& path);

/// A recipe as it is at one moment, on its way to a file.
struct RecipeToSave {
    Recipe recipe;
    QString path;                 // absolute
    QByteArray knownFingerprint;  // of what the file held when it was last read or saved; empty to replace whatever is there
    std::uint64_t number;         // of the attempt, see Document
};

/// What the recipe's file holds.
QByteArray contentsToSave(const Recipe& recipe, const QString& path);

struct Written {
    QByteArray fingerprint;
};
/// Somebody else has written the file meanwhile, and it was left alone.
struct ChangedByOthers {
    QByteArray contents;
};
struct NotWritten {
    FileFailure why;
};
using SaveOutcome = std::variant<Written, ChangedByOthers, NotWritten>;

SaveOutcome saveRecipe(const Disk& disk, const RecipeToSave& wanted);

/// What is found at a recipe's place.
struct FoundOnDisk {
    enum State { AFile, NoFile, NoFolder, Unreadable };

    State state = AFile;
    QByteArray contents;  // of a file
    friend bool operator==(const FoundOnDisk&, const FoundOnDisk&) = default;
};

FoundOnDisk lookAt(const Disk& disk, const QString& path);

}  // namespace firn::app
