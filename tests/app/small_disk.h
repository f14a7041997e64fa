// A small file system that only the test sees, to fill, to write-protect and to pull out for real.
#pragma once

#include <QFile>
#include <QTemporaryDir>
#include <functional>
#include <gtest/gtest.h>
#include <sched.h>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>

namespace firn::app {

inline constexpr int noFileSystem = 77;  // exit status where the system does not let a test mount any

/// What a child process found wrong; empty if nothing. It sees a file system of its own on `folder`.
using Check = std::function<std::string(const std::string& folder)>;

inline bool writes(const char* file, const std::string& text)
{
    QFile out(QString::fromLatin1(file));
    return out.open(QIODevice::WriteOnly | QIODevice::Unbuffered)
           && out.write(text.data(), qint64(text.size())) == qint64(text.size());
}

/// In a user namespace of its own, where whoever runs the test is root, anybody may mount.
inline bool mountsOwn(const std::string& folder)
{
    const std::string user = "0 " + std::to_string(getuid()) + " 1";
    const std::string group = "0 " + std::to_string(getgid()) + " 1";
    return unshare(CLONE_NEWUSER | CLONE_NEWNS) == 0 && writes("/proc/self/setgroups", "deny") && writes("/proc/self/uid_map", user)
           && writes("/proc/self/gid_map", group) && mount("firn", folder.c_str(), "tmpfs", 0, "size=64k") == 0;
}

/// Runs the check in a child process, since a mount belongs to a process.
inline void onSmallDisk(const Check& check)
{
    const QTemporaryDir folder;
    int pipes[2];
    ASSERT_EQ(pipe(pipes), 0);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        const std::string path = folder.path().toStdString();
        if (!mountsOwn(path))
            _exit(noFileSystem);
        const std::string wrong = check(path);
        const bool isSaid = write(pipes[1], wrong.data(), wrong.size()) == ssize_t(wrong.size());
        _exit(wrong.empty() && isSaid ? 0 : 1);
    }
    close(pipes[1]);
    std::string wrong;
    char buffer[512];
    for (ssize_t got = 0; (got = ::read(pipes[0], buffer, sizeof buffer)) > 0;)
        wrong.append(buffer, std::size_t(got));
    close(pipes[0]);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFEXITED(status)) << "the check crashed";
    if (WEXITSTATUS(status) == noFileSystem)
        GTEST_SKIP() << "this system does not let a test mount a file system of its own";
    EXPECT_EQ(wrong, "");
    EXPECT_EQ(WEXITSTATUS(status), 0);
}

inline std::string complaint(bool isFine, const char* what) { return isFine ? std::string() : std::string(what) + "\n"; }

}  // namespace firn::app
