// The edits of a recipe's versions: like those of edits.h, each is one named step of the undo history, or none where nothing would change.
#pragma once

#include "recipe/recipe.h"

#include <QDate>

namespace firn::app {

class Document;

/// What is on the bench becomes a further version, kept now.
void keepVersion(Document& document, const std::string& name, const std::string& note);

/// Puts a version on the bench. What was there is kept first; true if that made a further version.
bool goBackTo(Document& document, const std::string& id);

void renameVersion(Document& document, const std::string& id, const std::string& name);
void changeVersionNote(Document& document, const std::string& id, const std::string& note);
/// The time of day stays.
void changeVersionDate(Document& document, const std::string& id, QDate date);

/// Takes its readings and tastings along.
void removeVersion(Document& document, const std::string& id);

/// What a list calls a version: its name, else "Version 3".
QString nameOf(const Version& version);

/// The same by its id, for what is on the bench (an empty id), and for a version that is gone.
QString nameOfVersion(const Recipe& recipe, const std::string& id);

/// Day and time as a file has them.
std::string now();

/// What is on the bench as a file would have it: with the own ingredients that it uses, without links that nothing names, so that saving makes
/// no difference between it and the version that was kept of it.
Recipe benchToKeep(const Document& document);

}  // namespace firn::app
