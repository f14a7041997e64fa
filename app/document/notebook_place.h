// The folder that the notebook is: the person's choice, else one among their documents.
#pragma once

#include <QString>

namespace firn::app {

/// "Firn" among the person's documents. Nothing makes it before a recipe is saved there.
QString usualNotebookFolder();

QString notebookFolder();
/// Whether this folder was there once: if it is missing now, it has gone rather than not been made yet.
bool wasNotebookThere(const QString& folder);
void rememberNotebookIsThere(const QString& folder);

void chooseNotebookFolder(const QString& folder);

/// A folder for a dialog to start in when a new recipe is to be saved: the notebook's, or `instead` where that is not there. The usual one is
/// made, and goes again with this object if it is still empty then.
class FolderToSaveIn {
public:
    explicit FolderToSaveIn(const QString& instead);
    ~FolderToSaveIn();
    FolderToSaveIn(const FolderToSaveIn&) = delete;
    FolderToSaveIn& operator=(const FolderToSaveIn&) = delete;

    const QString& path() const { return m_path; }

private:
    QString m_path;
    bool m_isMade;
};

}  // namespace firn::app
