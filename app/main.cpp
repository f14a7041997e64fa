#include "bench/appearance.h"
#include "bench/file_actions.h"
#include "bench/icons.h"
#include "bench/main_window.h"
#include "bench/message_bar.h"
#include "bench/questions.h"
#include "catalogue/catalogue_window.h"
#include "cli/command_line.h"
#include "document/built_in.h"
#include "document/pantry.h"
#include "gauges/wording.h"

#include <QApplication>
#include <memory>
#include <vector>

namespace {

using namespace firn::app;

bool hasDisplay()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY")
           || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int runWindows(QStringList files)
{
    QGuiApplication::setDesktopFileName(QStringLiteral("org.firn_workbench.firn"));
    QApplication::setWindowIcon(programIcon());
    useClearFrames();
    dress(chosenAppearance());
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return fail(QString::fromStdString(english(catalogue.error())));

    Pantry pantry(*catalogue);
    Questions questions;
    CatalogueWindow catalogueWindow(pantry, questions);
    std::vector<std::unique_ptr<MainWindow>> windows;
    const bool isNamed = !files.isEmpty();
    if (!isNamed)
        files.append(QString());
    for (const QString& file : std::as_const(files)) {
        MainWindow& window = *windows.emplace_back(std::make_unique<MainWindow>(pantry, questions));
        QObject::connect(&window, &MainWindow::catalogueWanted, &catalogueWindow,
            [&catalogueWindow, opener = &window] { catalogueWindow.openFor(*opener); });
        if (isNamed)
            window.files().openFile(file);
        else
            window.files().greet();
        window.show();
    }
    // There is room for one sentence: an unsaved recipe is more than ingredients that can be mended at any time.
    if (auto unsaved = leftBehind(); !unsaved.empty())
        windows.front()->files().offer(std::move(unsaved));
    else if (pantry.trouble())
        windows.front()->messages().say(translated(*pantry.trouble()));
    return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("firn"));
    QCoreApplication::setApplicationVersion(QStringLiteral(FIRN_VERSION));

    QStringList arguments;
    for (int i = 0; i < argc; ++i)
        arguments.append(QString::fromLocal8Bit(argv[i]));
    if (const auto status = runCommand(arguments))
        return *status;
    if (!hasDisplay())
        return fail(
            QStringLiteral("There is no display to open a window on. firn report, compare, ingredients and picture need none."));

    const QApplication application(argc, argv);
    return runWindows(application.arguments().mid(1));
}
