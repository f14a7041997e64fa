#include "document/linked_files.h"

#include "exchange/linked_recipes.h"

namespace firn::app {

namespace {

// A program that saves a file in one stroke takes it away for a moment.
constexpr int settling_ms = 200;

}  // namespace

LinkedFiles::LinkedFiles(Document& document)
    : m_document(document)
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(settling_ms);
    connect(&m_soon, &QTimer::timeout, this, &LinkedFiles::check);
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
    // Another recipe with the same links may find their files changed.
    connect(&document, &Document::replaced, this, [this] { m_checked.clear(); });
    connect(&document, &Document::changed, this, &LinkedFiles::follow);
    follow();
}

/// Most edits leave the links alone, and then no file is read.
void LinkedFiles::follow()
{
    if (m_document.recipe().linked != m_checked)
        check();
}

void LinkedFiles::check()
{
    m_checked = m_document.recipe().linked;
    m_differences.clear();
    // Folders are watched too: they tell of a file that comes back.
    if (const QStringList watched = m_watcher.files() + m_watcher.directories(); !watched.isEmpty())
        m_watcher.removePaths(watched);
    for (std::size_t i = 0; i < m_checked.size(); ++i) {
        auto now = changedSinceTakenIn(m_checked[i], {});
        if (!now)
            m_differences.push_back({i, {}, now.error()});
        else if (*now)
            m_differences.push_back({i, std::move(*now), {}});
        const std::filesystem::path file(m_checked[i].file);
        for (const auto& path : {file, file.parent_path()})
            m_watcher.addPath(QString::fromStdString(path.string()));
    }
    emit differencesChanged();
}

}  // namespace firn::app
