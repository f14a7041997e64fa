#include "document/file_watch.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QFileSystemWatcher>
#include <QPointer>
#include <QThread>
#include <utility>

namespace firn::app {

namespace {

constexpr int settling_ms = 200;  // a program that saves in one stroke takes the file away for a moment
constexpr int patience_ms = 1000;

}  // namespace

FileWatch::FileWatch(Document& document, FileWork& files)
    : m_document(document)
    , m_files(files)
    , m_thread(new QThread)
    , m_watcher(new QFileSystemWatcher)
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(settling_ms);
    // A file that was replaced is another one to the system, and has to be watched from then on.
    connect(&m_soon, &QTimer::timeout, this, [this] { watch(m_path); });
    m_watcher->moveToThread(m_thread);
    connect(m_watcher, &QFileSystemWatcher::fileChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_watcher, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(&document, &Document::pathChanged, this, [this] {
        if (m_document.path() != m_path)
            watch(m_document.path());
    });
}

FileWatch::~FileWatch()
{
    m_thread->quit();
    // A disk that never answers keeps the thread, and must not keep the window.
    if (!m_thread->wait(patience_ms))
        return;
    delete m_watcher;
    delete m_thread;
}

void FileWatch::watch(const QString& path)
{
    m_path = path;
    if (!m_thread->isRunning()) {
        if (path.isEmpty())
            return;
        m_thread->start();
    }
    QMetaObject::invokeMethod(m_watcher, [watcher = m_watcher, path, guard = QPointer<FileWatch>(this)] {
        if (const QStringList before = watcher->files() + watcher->directories(); !before.isEmpty())
            watcher->removePaths(before);
        // The folder tells of a file that goes or comes back, and the one above it of the folder.
        const QString folder = QFileInfo(path).path();
        for (const QString& each : {path, folder, QFileInfo(folder).path()})
            if (!path.isEmpty() && QFileInfo::exists(each))
                watcher->addPath(each);
        // What happened before it was watched has not been told.
        QMetaObject::invokeMethod(
            qApp,
            [guard] {
                if (guard)
                    guard->look();
            },
            Qt::QueuedConnection);
    });
}

void FileWatch::look()
{
    const QString path = m_document.path();
    if (path.isEmpty())
        return;
    if (path == m_lookingAt) {
        m_looksAgain = true;
        return;
    }
    m_lookingAt = path;
    m_files.run(
        path, this, [path](const Disk& disk) { return lookAt(disk, path); },
        [this, path](const FoundOnDisk& onDisk) {
            if (m_lookingAt == path)
                m_lookingAt.clear();
            if (path == m_document.path() && !m_document.isBeingSaved()) {
                m_document.see(path, onDisk);
                emit found(path, onDisk);
            }
            if (std::exchange(m_looksAgain, false))
                look();
        });
}

}  // namespace firn::app
