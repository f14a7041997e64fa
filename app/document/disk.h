// The file system as Firn uses it: whole files, read and written in one stroke.
#pragma once

#include "units/sentence.h"

#include <QByteArray>
#include <QString>

namespace firn::app {

/// Why a file could not be read or written.
enum class FileProblem { NoFile, NoFolder, NoSpace, NoPermission, ReadOnly, Unreachable, Other };

struct FileFailure {
    FileProblem problem;
    Sentence sentence;  // what is wrong, and the way out
};

template <class T>
using FileResult = tl::expected<T, FileFailure>;

/// The failure to write a file. `detail` is what the system says, for a problem that has no name here.
FileFailure notWritten(FileProblem problem, const QString& path, const QString& detail = {});

/// May be called from any thread and takes as long as the disk does, so never from the window's. Tests put one in its place that fails.
class Disk {
public:
    virtual ~Disk() = default;

    virtual FileResult<QByteArray> read(const QString& path) const;

    /// In one stroke, and down to the disk. On failure the file that was there is untouched.
    virtual FileResult<void> write(const QString& path, const QByteArray& contents) const;

    /// Together with those above it that are missing.
    virtual FileResult<void> makeFolder(const QString& path) const;

    virtual void remove(const QString& path) const;
};

}  // namespace firn::app
