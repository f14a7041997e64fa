// A disk that fails as it is told, for tests of saving: full, gone, forbidden, torn, hanging, or dying with the program.
#pragma once

#include "document/disk.h"

#include <QFile>
#include <QFileInfo>
#include <condition_variable>
#include <map>
#include <mutex>
#include <optional>

namespace firn::app {

class FailingDisk : public Disk {
public:
    enum class Mood { Fine, NoSpace, NoPermission, ReadOnly, Unreachable, Torn };

    void setMood(const QString& folder, Mood mood)
    {
        const std::lock_guard lock(m_mutex);
        m_moods[folder] = mood;
    }
    Mood moodOf(const QString& folder) const
    {
        const std::lock_guard lock(m_mutex);
        const auto found = m_moods.find(folder);
        return found == m_moods.end() ? Mood::Fine : found->second;
    }

    /// As if the program was killed after so many more changes of the disk: from then on nothing happens there.
    void dieAfter(int changes)
    {
        const std::lock_guard lock(m_mutex);
        m_changesLeft = changes;
    }
    bool isDead() const
    {
        const std::lock_guard lock(m_mutex);
        return m_changesLeft == 0;
    }

    /// Whatever concerns this folder hangs until it is released.
    void hold(const QString& folder)
    {
        const std::lock_guard lock(m_mutex);
        m_held = folder;
    }
    void release()
    {
        const std::lock_guard lock(m_mutex);
        m_held.reset();
        m_isReleased.notify_all();
    }
    bool isHeld(const QString& folder) const
    {
        const std::lock_guard lock(m_mutex);
        return m_held == folder;
    }
    /// Whether somebody hangs there now.
    bool isHanging() const
    {
        const std::lock_guard lock(m_mutex);
        return m_hanging > 0;
    }

    FileResult<QByteArray> read(const QString& path) const override
    {
        const Mood mood = enter(path);
        if (mood == Mood::Unreachable)
            return tl::unexpected(notWritten(FileProblem::Unreachable, path));
        return Disk::read(path);
    }
    FileResult<void> write(const QString& path, const QByteArray& contents) const override
    {
        const auto refused = [&path](FileProblem problem) {
            return tl::unexpected(notWritten(problem, path, QStringLiteral("on purpose")));
        };
        switch (enter(path)) {
        case Mood::NoSpace:
            return refused(FileProblem::NoSpace);
        case Mood::NoPermission:
            return refused(FileProblem::NoPermission);
        case Mood::ReadOnly:
            return refused(FileProblem::ReadOnly);
        case Mood::Unreachable:
            return refused(FileProblem::Unreachable);
        case Mood::Torn:
            return tear(path + QStringLiteral(".part"), contents), refused(FileProblem::Other);
        case Mood::Fine:
            break;
        }
        return mayChange() ? Disk::write(path, contents) : refused(FileProblem::Other);
    }
    FileResult<void> makeFolder(const QString& path) const override
    {
        enter(path + u'/');
        if (!mayChange())
            return tl::unexpected(notWritten(FileProblem::Other, path));
        return Disk::makeFolder(path);
    }
    void remove(const QString& path) const override
    {
        enter(path);
        if (mayChange())
            Disk::remove(path);
    }

private:
    Mood enter(const QString& path) const
    {
        const QString folder = QFileInfo(path).path();
        std::unique_lock lock(m_mutex);
        ++m_hanging;
        m_isReleased.wait(lock, [this, &folder] { return m_held != folder; });
        --m_hanging;
        const auto found = m_moods.find(folder);
        return found == m_moods.end() ? Mood::Fine : found->second;
    }
    bool mayChange() const
    {
        const std::lock_guard lock(m_mutex);
        if (m_changesLeft == 0)
            return false;
        if (m_changesLeft)
            --*m_changesLeft;
        return true;
    }
    static void tear(const QString& path, const QByteArray& contents)
    {
        QFile file(path);
        if (file.open(QIODevice::WriteOnly))
            file.write(contents.first(contents.size() / 2));
    }

    mutable std::mutex m_mutex;
    mutable std::condition_variable m_isReleased;
    std::map<QString, Mood> m_moods;
    mutable std::optional<int> m_changesLeft;
    std::optional<QString> m_held;
    mutable int m_hanging = 0;
};

}  // namespace firn::app
