// Telling when another program changes, moves or removes the open recipe's file.
#pragma once

#include "document/document.h"
#include "document/file_work.h"

#include <QTimer>

class QFileSystemWatcher;
class QThread;

namespace firn::app {

/// Watches the document's file and looks at it on another thread. Not every disk tells of changes: look() does not wait for it.
class FileWatch : public QObject {
    Q_OBJECT

public:
    FileWatch(Document& document, FileWork& files);
    ~FileWatch() override;

    /// Begins to look at the file. The document takes note of what is found, and found() follows.
    void look();

signals:
    void found(const QString& path, const firn::app::FoundOnDisk& found);

private:
    /// Looks at it, too, as soon as it is watched.
    void watch(const QString& path);

    Document& m_document;
    FileWork& m_files;
    QString m_path;
    QTimer m_soon;
    QString m_lookingAt;
    bool m_looksAgain = false;
    QThread* m_thread;  // to watch a file is to ask the disk about it
    QFileSystemWatcher* m_watcher;
};

}  // namespace firn::app
