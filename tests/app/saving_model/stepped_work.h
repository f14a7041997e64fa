// Work on files in an order that the test draws at random, so that nobody waits for a thread. Timers and the watching of files still run by the clock.
#pragma once

#include "../failing_disk.h"

#include "document/file_work.h"

#include <QObject>
#include <deque>
#include <random>

namespace firn::app {

/// Each piece of work is done from the event loop, as the threads of FileWork hand over their results there. What a disk holds stays undone until
/// goOn() after the release.
class SteppedWork : public FileWork {
public:
    SteppedWork(const std::shared_ptr<FailingDisk>& disk, std::minstd_rand& random)
        : FileWork(disk)
        , m_disk(disk)
        , m_random(random)
    {
    }
    ~SteppedWork() override
    {
        m_disk->release();
        while (doAny())
            continue;
    }

    void goOn()
    {
        for (const auto& [folder, queue] : m_queues)
            for (std::size_t piece = 0; piece < queue.size(); ++piece)
                stepSoon();
    }

    bool waitForDone(const QString& path, std::chrono::milliseconds) override
    {
        const QString folder = folderOf(path);
        while (m_queues.contains(folder) && doAny())
            continue;
        return handedOver(!m_queues.contains(folder));
    }
    bool waitForAll(std::chrono::milliseconds) override
    {
        while (doAny())
            continue;
        return handedOver(m_queues.empty());
    }

protected:
    void add(const QString& path, std::function<void()> work) override
    {
        m_queues[folderOf(path)].push_back(std::move(work));
        stepSoon();
    }

private:
    static QString folderOf(const QString& path) { return QFileInfo(path).absolutePath(); }

    void stepSoon()
    {
        QMetaObject::invokeMethod(
            &m_context, [this] { doAny(); }, Qt::QueuedConnection);
    }

    /// False where nothing can be done.
    bool doAny()
    {
        std::vector<QString> ready;
        for (const auto& [folder, queue] : m_queues)
            if (!m_disk->isHeld(folder))
                ready.push_back(folder);
        if (ready.empty())
            return false;
        const QString folder = ready[m_random() % ready.size()];
        const std::function<void()> work = std::move(m_queues[folder].front());
        m_queues[folder].pop_front();
        if (m_queues[folder].empty())
            m_queues.erase(folder);
        work();
        return true;
    }

    static bool handedOver(bool isDone)
    {
        if (isDone)
            QCoreApplication::sendPostedEvents(qApp, QEvent::MetaCall);
        return isDone;
    }

    std::shared_ptr<FailingDisk> m_disk;
    std::minstd_rand& m_random;
    std::map<QString, std::deque<std::function<void()>>> m_queues;
    QObject m_context;
};

}  // namespace firn::app
