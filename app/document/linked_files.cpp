#include "document/linked_files.h"

#include "document/file_work.h"
#include "document/notebook_place.h"
#include "document/places.h"
#include "document/recipe_file.h"
#include "exchange/linked_recipes.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>

namespace firn::app {

namespace {

// A program that saves a file in one stroke takes it away for a moment.
constexpr int settling_ms = 200;

const QString agreedKey = QStringLiteral("links/agreed");

std::vector<LinkedFiles::Difference> differencesOf(const std::vector<LinkedRecipe>& links,
    const std::vector<std::filesystem::path>& trustedFolders, const QStringList& agreed)
{
    std::vector<LinkedFiles::Difference> differences;
    for (std::size_t i = 0; i < links.size(); ++i) {
        const std::filesystem::path file(links[i].file);
        const bool isTrusted = agreed.contains(QString::fromStdString(links[i].file))
                               || std::ranges::any_of(trustedFolders, [&file](const auto& folder) { return liesIn(folder, file); });
        if (!isTrusted) {
            differences.push_back({.linked = i, .needsConsent = true});
            continue;
        }
        auto now = changedSinceTakenIn(links[i], {});
        if (!now)
            differences.push_back({.linked = i, .problem = now.error()});
        else if (*now)
            differences.push_back({.linked = i, .now = std::move(*now)});
    }
    return differences;
}

}  // namespace

void agreeToRead(const QString& file)
{
    QStringList agreed = settings().value(agreedKey).toStringList();
    if (!agreed.contains(file))
        settings().setValue(agreedKey, agreed << file);
}

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
    if (const QStringList watched = m_watcher.files() + m_watcher.directories(); !watched.isEmpty())
        m_watcher.removePaths(watched);
    emit differencesChanged();
    if (m_checked.empty())
        return;
    std::vector<std::filesystem::path> trustedFolders{fileSystemPath(notebookFolder())};
    if (!m_document.path().isEmpty())
        trustedFolders.push_back(fileSystemPath(QFileInfo(m_document.path()).absolutePath()));
    const auto look = [links = m_checked, trustedFolders, agreed = settings().value(agreedKey).toStringList()](const Disk&) {
        return differencesOf(links, trustedFolders, agreed);
    };
    sharedFileWork().run(QString::fromStdString(m_checked.front().file), this, look,
        [this, checked = m_checked](std::vector<Difference> differences) { take(checked, std::move(differences)); });
}

void LinkedFiles::take(const std::vector<LinkedRecipe>& checked, std::vector<Difference> differences)
{
    if (checked != m_checked)
        return;  // the links changed meanwhile; another look is under way
    m_differences = std::move(differences);
    for (std::size_t i = 0; i < m_checked.size(); ++i) {
        const bool isRead = std::ranges::none_of(
            m_differences, [i](const Difference& difference) { return difference.linked == i && difference.needsConsent; });
        if (!isRead)
            continue;
        // Folders are watched too: they tell of a file that comes back.
        const std::filesystem::path file(m_checked[i].file);
        for (const auto& path : {file, file.parent_path()})
            m_watcher.addPath(QString::fromStdString(path.string()));
    }
    emit differencesChanged();
}

}  // namespace firn::app
