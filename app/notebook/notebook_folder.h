// The folder of recipes, read and watched in the background. It only looks: nothing here changes a file.
#pragma once

#include "notebook/recipe_reading.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <memory>
#include <span>
#include <unordered_map>

namespace firn::app {

class Pantry;

class NotebookFolder : public QObject {
    Q_OBJECT

public:
    /// The pantry must outlive the folder.
    explicit NotebookFolder(const Pantry& pantry, QObject* parent = nullptr);
    ~NotebookFolder() override;

    /// Reads this folder from now on.
    void open(const QString& path);
    const QString& path() const { return m_path; }

    /// Whether the folder was there when it was last looked at.
    bool isThere() const { return m_isThere; }

    std::span<const RecipeCard> cards() const { return m_cards; }
    const RecipeCard* cardOf(const QString& file) const;

    /// Files whose titles are not known yet, and all files. Figures come a little later.
    int unread() const { return m_unread; }
    int fileCount() const { return int(m_stamps.size()); }
    bool isReading() const { return m_isLooking || m_unread > 0 || m_unanalysed > 0; }

    /// Reads no further until it is told to look again.
    void stop();
    bool isStopped() const { return m_isStopped; }

    /// Looks for files that came, went or changed.
    void look();
    /// The same every few seconds, since a folder tells of files that come and go, but not of every change in a file.
    void keepLooking(bool isWanted);

    /// Reads a file anew, though it may look unchanged.
    void readAnew(const QString& file);

    /// Shows other marks than the file has, for a recipe with changes that are not saved yet. Tells whether it showed others before.
    bool mark(const QString& file, const Recipe& recipe);

    /// Lets everybody look at the cards, soon.
    void tell();

signals:
    void changed();

private:
    using CalledOff = std::shared_ptr<std::atomic<bool>>;

    void callOff();
    void takeLook(const FolderLook& look);
    void watch(const QStringList& folders);
    void forgetFiles(const QHash<QString, FileStamp>& present);
    void read(const QList<QString>& files);
    void startReading(const QList<QString>& files, bool isFigured);
    void startAnalysing(std::vector<ReadFile> files, const CalledOff& isCalledOff);
    void take(const QString& file, const FileStamp& stamp, RecipeCard card);
    void forget(std::size_t place);

    const Pantry& m_pantry;
    QString m_path;
    bool m_isThere = true;
    bool m_isStopped = false;
    bool m_isLooking = false;
    bool m_looksAgain = false;
    int m_unread = 0;
    int m_unanalysed = 0;

    std::vector<RecipeCard> m_cards;
    std::unordered_map<std::string, std::size_t> m_places;  // of the cards, by file
    QHash<QString, FileStamp> m_stamps;

    std::shared_ptr<const Catalogue> m_catalogue;  // a copy that does not change while threads read it
    CalledOff m_isCalledOff;
    QThreadPool m_pool;
    QFileSystemWatcher m_watcher;
    QTimer m_soon;     // after the last of a flurry of changes
    QTimer m_beat;     // while somebody looks at the notebook
    QTimer m_telling;  // so that a thousand files are told of at once
};

}  // namespace firn::app
