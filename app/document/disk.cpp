#include "document/disk.h"

#include "document/recipe_file.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace firn::app {

namespace {

FileProblem problemOf(int error)
{
    switch (error) {
    case ENOENT:
    case ENOTDIR:
        return FileProblem::NoFolder;
    case ENOSPC:
    case EDQUOT:
        return FileProblem::NoSpace;
    case EACCES:
    case EPERM:
        return FileProblem::NoPermission;
    case EROFS:
        return FileProblem::ReadOnly;
    case EIO:
    case ENODEV:
    case ENXIO:
    case ESTALE:
    case ENOTCONN:
    case EHOSTDOWN:
    case EHOSTUNREACH:
    case ETIMEDOUT:
        return FileProblem::Unreachable;
    default:
        return FileProblem::Other;
    }
}

QByteArray folderOf(const QString& path) { return QFile::encodeName(QFileInfo(path).absolutePath()); }

/// What stands in the way of writing a file, as the system numbers it; 0 for nothing.
int obstacleTo(const QString& path)
{
    if (access(folderOf(path).constData(), F_OK | W_OK) != 0)
        return errno;
    const bool isRefused = access(QFile::encodeName(path).constData(), W_OK) != 0 && errno != ENOENT;
    return isRefused ? errno : 0;
}

FileProblem problemOfReading(const QString& path)
{
    struct stat unused {};
    const bool isThere = stat(QFile::encodeName(path).constData(), &unused) == 0;
    if (isThere)
        return access(QFile::encodeName(path).constData(), R_OK) == 0 ? FileProblem::Other : problemOf(errno);
    const FileProblem problem = problemOf(errno);
    const bool hasFolder = problem == FileProblem::NoFolder && stat(folderOf(path).constData(), &unused) == 0;
    return hasFolder ? FileProblem::NoFile : problem;
}

/// The name of a new file is safe only when its folder is. Some file systems cannot do this, and then nothing can.
void syncFolderOf(const QString& path)
{
    const int folder = ::open(folderOf(path).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return;
    fsync(folder);
    ::close(folder);
}

}  // namespace

FileFailure notWritten(FileProblem problem, const QString& path, const QString& detail)
{
    const std::string name = path.toStdString();
    const auto sentence = [&]() -> Sentence {
        switch (problem) {
        case FileProblem::NoFolder:
            return phrase("{0} could not be saved because its folder is missing. Create the folder, or save elsewhere.", name);
        case FileProblem::NoSpace:
            return phrase("{0} could not be saved because the disk is full. Free some space, or save elsewhere.", name);
        case FileProblem::NoPermission:
            return phrase("{0} could not be saved because you do not have permission to write there. Save elsewhere.", name);
        case FileProblem::ReadOnly:
            return phrase("{0} could not be saved because the disk is read-only. Save elsewhere.", name);
        case FileProblem::Unreachable:
            return phrase("{0} could not be saved because the disk does not respond. Connect it again, or save elsewhere.", name);
        case FileProblem::NoFile:
        case FileProblem::Other:
            break;
        }
        return phrase("{0} could not be saved ({1}). Try again, or save elsewhere.", name, detail.toStdString());
    };
    return {problem, sentence()};
}

FileResult<QByteArray> Disk::read(const QString& path) const
{
    const auto contents = contentsOf(fileSystemPath(path));
    if (!contents)
        return tl::unexpected(FileFailure{problemOfReading(path), contents.error()});
    return QByteArray::fromStdString(*contents);
}

FileResult<void> Disk::write(const QString& path, const QByteArray& contents) const
{
    // Unbuffered, so that the number of an error is still that of the step that failed.
    QSaveFile file(path);
    const bool isOpen = file.open(QIODevice::WriteOnly | QIODevice::Unbuffered);
    errno = 0;
    if (isOpen && file.write(contents) == contents.size() && file.commit()) {
        syncFolderOf(path);
        return {};
    }
    const int error = isOpen ? errno : obstacleTo(path);
    const bool isFull = file.error() == QFileDevice::ResourceError;
    return tl::unexpected(notWritten(error == 0 && isFull ? FileProblem::NoSpace : problemOf(error), path,
        error == 0 ? file.errorString() : QString::fromLocal8Bit(std::strerror(error))));
}

FileResult<void> Disk::makeFolder(const QString& path) const
{
    errno = 0;
    if (QDir().mkpath(path))
        return {};
    const int error = errno;
    return tl::unexpected(FileFailure{problemOf(error), phrase("The folder {0} could not be created ({1}). Save elsewhere.",
                                                            path.toStdString(), std::string(std::strerror(error)))});
}

void Disk::remove(const QString& path) const { QFile::remove(path); }

}  // namespace firn::app
