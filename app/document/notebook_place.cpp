#include "document/notebook_place.h"

#include "document/places.h"

#include <QDir>
#include <QStandardPaths>

namespace firn::app {

namespace {

const QString folderKey = QStringLiteral("notebook/folder");
const QString seenKey = QStringLiteral("notebook/seenFolder");

}  // namespace

QString usualNotebookFolder()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath(QStringLiteral("Firn"));
}

QString notebookFolder()
{
    const QString chosen = settings().value(folderKey).toString();
    return chosen.isEmpty() ? usualNotebookFolder() : chosen;
}

void chooseNotebookFolder(const QString& folder) { settings().setValue(folderKey, QDir::cleanPath(QDir(folder).absolutePath())); }

bool wasNotebookThere(const QString& folder) { return state().value(seenKey).toString() == folder; }

void rememberNotebookIsThere(const QString& folder)
{
    if (!wasNotebookThere(folder))
        state().setValue(seenKey, folder);
}

// A chosen folder that is missing may be on a stick that is not plugged in: one of that name would be in the way of it.
FolderToSaveIn::FolderToSaveIn(const QString& instead)
    : m_path(notebookFolder())
    , m_isMade(m_path == usualNotebookFolder() && !QDir(m_path).exists() && QDir().mkpath(m_path))
{
    if (!QDir(m_path).exists())
        m_path = instead;
}

FolderToSaveIn::~FolderToSaveIn()
{
    if (m_isMade)
        QDir().rmdir(m_path);
}

}  // namespace firn::app
