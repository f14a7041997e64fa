// The built program, run without a display, for the tests of its commands.
#pragma once

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace firn::app {

struct ProgramRun {
    int status = -1;
    QString output;
    QString error;

    QJsonObject json() const { return QJsonDocument::fromJson(output.toUtf8()).object(); }
};

/// Runs the built program, without a display.
inline ProgramRun runFirn(const QStringList& arguments, const QByteArray& input = {})
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        environment.remove(QString::fromLatin1(name));
    environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), QStringLiteral("/nowhere"));
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(FIRN_EXECUTABLE), arguments);
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(30000))
        return {};
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1,
        QString::fromUtf8(process.readAllStandardOutput()), QString::fromUtf8(process.readAllStandardError())};
}

/// Files for the program to read, and what every refusal of it is like.
class CommandLineTest : public testing::Test {
protected:
    QString written(const QString& name, const QByteArray& contents)
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(contents) == contents.size());
        return file.fileName();
    }
    static void expectRefusal(const ProgramRun& run, const QString& naming)
    {
        EXPECT_EQ(run.status, 2);
        EXPECT_EQ(run.output.toStdString(), "");
        EXPECT_EQ(run.error.count('\n'), 1) << run.error.toStdString();
        EXPECT_TRUE(run.error.contains(naming)) << run.error.toStdString();
    }

    QTemporaryDir folder;
};

}  // namespace firn::app
