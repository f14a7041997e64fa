// The window's tests drive real widgets without a display, with settings in a temporary folder. A modal dialog that no test asked
// for (by the property "mayAsk" of its window) would wait for ever: it is closed, and fails the test.
#include <QApplication>
#include <QDialog>
#include <QFontDatabase>
#include <QTemporaryDir>
#include <QTimer>
#include <gtest/gtest.h>

namespace {

/// A slow disk is waited for by a dialog that goes by itself.
bool goesByItself(const QObject* dialog) { return dialog->objectName() == QLatin1String("fileWait"); }

bool mayAsk(const QObject* window) { return window && window->property("mayAsk").toBool(); }

class Watchdog : public QObject {
public:
    bool eventFilter(QObject* object, QEvent* event) override
    {
        auto* dialog = qobject_cast<QDialog*>(object);
        if (dialog && event->type() == QEvent::Show && dialog->isModal() && !mayAsk(dialog->parent()) && !goesByItself(dialog)) {
            ADD_FAILURE() << "a modal dialog opened: " << dialog->windowTitle().toStdString();
            QTimer::singleShot(0, dialog, &QDialog::reject);
        }
        return false;
    }
};

}  // namespace

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QTemporaryDir folder;
    for (const char* place : {"XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "HOME"})
        qputenv(place, folder.filePath(QString::fromLatin1(place)).toLocal8Bit());
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");

    QApplication application(argc, argv);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    if (QFontDatabase::families().isEmpty()) {
        qCritical("There is no font to draw with.");
        return 1;
    }
    Watchdog watchdog;
    application.installEventFilter(&watchdog);
    return RUN_ALL_TESTS();
}
