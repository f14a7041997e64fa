#include "bench/file_wait.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::FileWait)
};

}  // namespace

FileWait::FileWait(QWidget& window)
    : m_window(window)
{
}

bool FileWait::until(const std::function<bool()>& isDone, const QString& sentence)
{
    if (isWaiting())
        return false;
    return waitsAMoment(isDone) || waitsWithDialog(isDone, sentence);
}

void FileWait::wake()
{
    if (m_loop)
        m_loop->quit();
}

/// Keys and clicks stay in their queue meanwhile, so that they meet the window as it is afterwards.
bool FileWait::waitsAMoment(const std::function<bool()>& isDone)
{
    QEventLoop loop;
    m_loop = &loop;
    bool isOver = false;
    QTimer timer;
    timer.setSingleShot(true);
    QObject::connect(&timer, &QTimer::timeout, &loop, [&] {
        isOver = true;
        loop.quit();
    });
    timer.start(m_moment_ms);
    int status = 0;  // negative while the program is quitting
    while (!isDone() && !isOver && status >= 0)
        status = loop.exec(QEventLoop::ExcludeUserInputEvents);
    m_loop = nullptr;
    return isDone();
}

bool FileWait::waitsWithDialog(const std::function<bool()>& isDone, const QString& sentence)
{
    QMessageBox box(&m_window);
    box.setObjectName(QStringLiteral("fileWait"));
    box.setWindowModality(Qt::WindowModal);
    box.setTextFormat(Qt::PlainText);
    box.setWindowTitle(Words::tr("Please wait"));
    box.setText(sentence);
    box.setInformativeText(Words::tr("The disk is slow to answer."));
    box.addButton(QMessageBox::Cancel)->setText(Words::tr("Cancel"));
    QEventLoop loop;
    m_loop = &loop;
    bool isCancelled = false;
    QObject::connect(&box, &QMessageBox::finished, &loop, [&] {
        isCancelled = true;
        loop.quit();
    });
    box.show();
    int status = 0;
    while (!isDone() && !isCancelled && status >= 0)
        status = loop.exec();
    m_loop = nullptr;
    return isDone();
}

}  // namespace firn::app
