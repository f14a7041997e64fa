// The files of the linked recipes, watched for changes by other programs and other windows.
#pragma once

#include "document/document.h"

#include <QFileSystemWatcher>
#include <QTimer>
#include <vector>

namespace firn::app {

class LinkedFiles : public QObject {
    Q_OBJECT

public:
    /// A linked recipe whose file is not what was taken in.
    struct Difference {
        std::size_t linked;               // in the recipe
        std::optional<Recipe> now;        // what the file holds
        std::optional<Sentence> problem;  // why it cannot be read
    };

    explicit LinkedFiles(Document& document);

    const std::vector<Difference>& differences() const { return m_differences; }

signals:
    void differencesChanged();

private:
    void follow();
    void check();

    Document& m_document;
    QFileSystemWatcher m_watcher;
    QTimer m_soon;
    std::vector<LinkedRecipe> m_checked;
    std::vector<Difference> m_differences;
};

}  // namespace firn::app
