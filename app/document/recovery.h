// What is not saved yet, kept in a file of its own, so that a crash or a power cut takes nothing away.
#pragma once

#include "document/document.h"
#include "document/file_work.h"

#include <QDateTime>
#include <QLockFile>
#include <QTimer>
#include <memory>
#include <vector>

namespace firn::app {

/// Where unsaved recipes wait: under XDG_STATE_HOME.
QString recoveryFolder();

/// Writes the open recipe to the folder a moment after each change, and at once when the program goes into the background, as long as it is not
/// saved. The file goes when the recipe is saved, replaced or closed in order; undoing everything leaves it, since it can be redone.
class Recovery : public QObject {
    Q_OBJECT

public:
    explicit Recovery(Document& document, const QString& folder = recoveryFolder(), FileWork& files = sharedFileWork());
    ~Recovery() override;

    /// Begins to, on another thread.
    void writeNow();

    /// Waits for what has begun, a few seconds at most.
    void finishWriting();

signals:
    void written();
    /// Said once until it works again: the disk is full, say.
    void failed(const firn::Sentence& sentence);

private:
    void follow();
    void remove();
    void take(const QByteArray& contents, const FileResult<void>& outcome);

    Document& m_document;
    FileWork& m_files;
    QString m_file;
    QLockFile m_lock;
    QTimer m_soon;
    QByteArray m_written;
    bool m_isWriting = false;
    bool m_isUnwanted = false;  // what is being written
    bool m_writesAgain = false;
    bool m_hasFailed = false;
};

/// An unsaved recipe that a crash left behind. As long as this exists no other Firn offers it.
struct LeftBehind {
    QString file;  // of the recovery folder
    std::unique_ptr<QLockFile> lock;
    QDateTime time;

    /// Fails where the file is torn or of a newer Firn; it stays where it is then.
    Result<UnsavedRecipe> recipe() const;

    /// It was recovered, or is not wanted.
    void discard() const;
};

/// The latest first.
std::vector<LeftBehind> leftBehind(const QString& folder = recoveryFolder());

}  // namespace firn::app
