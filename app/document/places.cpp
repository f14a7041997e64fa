#include "document/places.h"

#include <QDir>
#include <QStandardPaths>
#include <algorithm>

namespace firn::app {

namespace {

const QString recentFilesKey = QStringLiteral("recentFiles");
constexpr int mostRecentFiles = 10;

}  // namespace

// QStandardPaths knows no state folder before Qt 6.7.
QString stateFolder()
{
    const QString chosen = qEnvironmentVariable("XDG_STATE_HOME");
    return QDir::isAbsolutePath(chosen) ? chosen : QDir::homePath() + QStringLiteral("/.local/state");
}

QSettings state() { return QSettings(stateFolder() + QStringLiteral("/firn/firn.ini"), QSettings::IniFormat); }

QSettings settings()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
    return QSettings(folder + QStringLiteral("/firn/firn.ini"), QSettings::IniFormat);
}

QStringList recentFiles() { return state().value(recentFilesKey).toStringList(); }

void rememberRecentFile(const QString& path)
{
    QStringList files = recentFiles();
    files.removeAll(path);
    files.prepend(path);
    state().setValue(recentFilesKey, files.first(std::min<qsizetype>(files.size(), mostRecentFiles)));
}

void forgetRecentFile(const QString& path)
{
    QStringList files = recentFiles();
    if (files.removeAll(path) > 0)
        state().setValue(recentFilesKey, files);
}

}  // namespace firn::app
