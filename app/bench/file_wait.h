// Waiting for a disk with the window alive.
#pragma once

#include <QPointer>
#include <functional>

class QEventLoop;
class QWidget;

namespace firn::app {

/// Waits for work on a file that goes on elsewhere. Where the disk takes its time, a dialog says what is being done, with a button to wait no longer;
/// the work itself goes on then.
class FileWait {
public:
    explicit FileWait(QWidget& window);

    /// How long it waits without saying so.
    void setMoment(int milliseconds) { m_moment_ms = milliseconds; }

    /// Whether it was done before the person cancelled. `sentence` says what is being done.
    bool until(const std::function<bool()>& isDone, const QString& sentence);

    /// To be called whenever something was done.
    void wake();

    bool isWaiting() const { return !m_loop.isNull(); }

private:
    bool waitsAMoment(const std::function<bool()>& isDone);
    bool waitsWithDialog(const std::function<bool()>& isDone, const QString& sentence);

    QWidget& m_window;
    QPointer<QEventLoop> m_loop;
    int m_moment_ms = 300;  // shorter waits are not worth a dialog
};

}  // namespace firn::app
