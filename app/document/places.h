// Where Firn keeps what it remembers between two starts.
#pragma once

#include <QSettings>
#include <QStringList>

namespace firn::app {

/// The folder for what Firn remembers, made by nobody yet.
QString stateFolder();

/// Layout, recent files: under XDG_STATE_HOME.
QSettings state();

/// What the person chose: under XDG_CONFIG_HOME.
QSettings settings();

/// Paths of the recipes opened or saved last, the latest first. Whether they still exist is not asked, since their disks may be slow.
QStringList recentFiles();
void rememberRecentFile(const QString& path);
void forgetRecentFile(const QString& path);

}  // namespace firn::app
