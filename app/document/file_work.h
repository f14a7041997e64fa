// Reading and writing beside the window, so that a slow disk never stops it.
#pragma once

#include "document/disk.h"

#include <QCoreApplication>
#include <QPointer>
#include <chrono>
#include <functional>
#include <memory>

namespace firn::app {

/// Work on files. What concerns one folder is done in the order in which it was asked for; folders do not wait for each other, since they may lie
/// on different disks. To be used from the window's thread. Tests put one in its place that decides who is next.
class FileWork {
public:
    explicit FileWork(std::shared_ptr<const Disk> disk = std::make_shared<Disk>());
    virtual ~FileWork();
    FileWork(const FileWork&) = delete;
    FileWork& operator=(const FileWork&) = delete;

    const Disk& disk() const { return *m_disk; }

    /// Calls `work` with the disk on another thread. Its result goes to `done` on the window's thread, if `context` still exists then. `path` is
    /// the file that the work is about.
    template <class Work, class Done>
    void run(const QString& path, QObject* context, Work work, Done done)
    {
        add(path, [disk = m_disk, guard = QPointer<QObject>(context), work = std::move(work), done = std::move(done)] {
            auto result = std::make_shared<decltype(work(*disk))>(work(*disk));
            QMetaObject::invokeMethod(
                qApp,
                [guard, done, result] {
                    if (guard)
                        done(*result);
                },
                Qt::QueuedConnection);
        });
    }

    /// Waits until nothing is left to do in the folder of this file, and hands over the results. False if it took too long.
    virtual bool waitForDone(const QString& path, std::chrono::milliseconds patience = std::chrono::seconds(3));

    /// The same for all folders.
    virtual bool waitForAll(std::chrono::milliseconds patience = std::chrono::seconds(3));

protected:
    virtual void add(const QString& path, std::function<void()> work);

private:
    struct Queues;

    std::shared_ptr<const Disk> m_disk;
    std::shared_ptr<Queues> m_queues;
};

/// The one that all windows share.
FileWork& sharedFileWork();

}  // namespace firn::app
