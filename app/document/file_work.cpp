#include "document/file_work.h"

#include <QFileInfo>
#include <condition_variable>
#include <deque>
#include <map>
#include <mutex>
#include <thread>

namespace firn::app {

namespace {

using Work = std::function<void()>;

QString folderOf(const QString& path) { return QFileInfo(path).absolutePath(); }

}  // namespace

/// The work of each folder, the one that is being done at its front. A folder is here, and has a thread, as long as there is some.
struct FileWork::Queues {
    std::mutex mutex;
    std::condition_variable isDone;
    std::map<QString, std::deque<Work>> work;

    void doAllOf(const QString& folder)
    {
        std::unique_lock lock(mutex);
        std::deque<Work>& queue = work[folder];
        while (!queue.empty()) {
            const Work& next = queue.front();
            lock.unlock();
            next();
            lock.lock();
            queue.pop_front();
        }
        work.erase(folder);
        isDone.notify_all();
    }
};

FileWork::FileWork(std::shared_ptr<const Disk> disk)
    : m_disk(std::move(disk))
    , m_queues(std::make_shared<Queues>())
{
}

/// A disk that never answers must not keep the program from ending.
FileWork::~FileWork()
{
    constexpr std::chrono::seconds patience(3);
    std::unique_lock lock(m_queues->mutex);
    m_queues->isDone.wait_for(lock, patience, [this] { return m_queues->work.empty(); });
}

void FileWork::add(const QString& path, std::function<void()> work)
{
    const QString folder = folderOf(path);
    const std::lock_guard lock(m_queues->mutex);
    std::deque<Work>& queue = m_queues->work[folder];
    queue.push_back(std::move(work));
    if (queue.size() == 1)
        std::thread([queues = m_queues, folder] { queues->doAllOf(folder); }).detach();
}

bool FileWork::waitForDone(const QString& path, std::chrono::milliseconds patience)
{
    {
        std::unique_lock lock(m_queues->mutex);
        if (!m_queues->isDone.wait_for(
                lock, patience, [this, folder = folderOf(path)] { return !m_queues->work.contains(folder); }))
            return false;
    }
    QCoreApplication::sendPostedEvents(qApp, QEvent::MetaCall);
    return true;
}

bool FileWork::waitForAll(std::chrono::milliseconds patience)
{
    {
        std::unique_lock lock(m_queues->mutex);
        if (!m_queues->isDone.wait_for(lock, patience, [this] { return m_queues->work.empty(); }))
            return false;
    }
    QCoreApplication::sendPostedEvents(qApp, QEvent::MetaCall);
    return true;
}

FileWork& sharedFileWork()
{
    static FileWork work;
    return work;
}

}  // namespace firn::app
