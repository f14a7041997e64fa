// The files of the linked recipes, watched for changes by other programs and other windows.
#pragma once

#include "document/document.h"

#include <QFileSystemWatcher>
#include <QTimer>
#include <vector>

namespace firn::app {

/// The person agreed that this file, wherever it lies, is read for links.
void agreeToRead(const QString& file);

/// Looks at the linked files in the background. Files in the recipe's folder, in the notebook's, or below them are read without asking; others
/// only once the person has agreed, since a recipe from somewhere else may name any file of this machine.
class LinkedFiles : public QObject {
    Q_OBJECT

public:
    /// A linked recipe whose file is not what was added, or may not be read yet.
    struct Difference {
        std::size_t linked;                    // in the recipe
        std::optional<Recipe> now = {};        // what the file holds
        std::optional<Sentence> problem = {};  // why it cannot be read
        bool needsConsent = false;
    };

    explicit LinkedFiles(Document& document);

    const std::vector<Difference>& differences() const { return m_differences; }

    /// Looks at all of them again.
    void check();

signals:
    void differencesChanged();

private:
    void follow();
    void take(const std::vector<LinkedRecipe>& checked, std::vector<Difference> differences);

    Document& m_document;
    QFileSystemWatcher m_watcher;
    QTimer m_soon;
    std::vector<LinkedRecipe> m_checked;
    std::vector<Difference> m_differences;
};

}  // namespace firn::app
