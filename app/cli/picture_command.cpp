#include "bench/appearance.h"
#include "bench/main_window.h"
#include "bench/questions.h"
#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "document/built_in.h"
#include "document/pantry.h"

#include <QApplication>
#include <QFileInfo>
#include <QImage>
#include <QLoggingCategory>

namespace firn::app {

namespace {

constexpr QSize usualSize{1366, 768};
constexpr int smallestSide = 200;
constexpr int largestSide = 8000;

/// "1366x768".
std::optional<QSize> sizeFromText(const QString& text)
{
    const QStringList sides = text.split(QLatin1Char('x'));
    const QSize size(sides.value(0).toInt(), sides.value(1).toInt());
    const auto isUsable = [](int side) { return side >= smallestSide && side <= largestSide; };
    return sides.size() == 2 && isUsable(size.width()) && isUsable(size.height()) ? std::optional(size) : std::nullopt;
}

/// An application of its own, which draws without a display.
struct Drawing {
    Drawing()
    {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        // Without a display Qt warns of what it cannot tell a window manager.
        QLoggingCategory::setFilterRules(QStringLiteral("default.warning=false"));
        static int count = 1;
        static char name[] = "firn";
        static char* values[] = {name, nullptr};
        m_application.emplace(count, values);
    }

private:
    std::optional<QApplication> m_application;
};

}  // namespace

int pictureCommand(const QStringList& words)
{
    Arguments arguments(QStringLiteral("picture FILE.png [FILE[@VERSION]] [--size WxH] [--dark]"),
        QStringLiteral("Draws the window with a recipe, or with the first sample, into a PNG picture. Needs no display."),
        {
            {QStringLiteral("size"), QStringLiteral("The picture's size in pixels; 1366x768."), QStringLiteral("WxH")},
            {QStringLiteral("dark"), QStringLiteral("Draws light on dark.")},
        });
    if (const auto isRead = arguments.read(words); !isRead)
        return fail(QString::fromStdString(english(isRead.error())));
    if (arguments.wantsHelp()) {
        print(arguments.help());
        return 0;
    }
    const QStringList files = arguments.operands();
    if (files.isEmpty() || files.size() > 2)
        return fail(QStringLiteral("Name the picture to write, and at most one recipe. Run firn picture --help for how."));
    const auto size = arguments.has(QStringLiteral("size")) ? sizeFromText(arguments.text(QStringLiteral("size"))) : usualSize;
    if (!size)
        return fail(
            QStringLiteral("The size must be written as in 1366x768, each side from %1 to %2.").arg(smallestSide).arg(largestSide));
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return fail(QString::fromStdString(english(catalogue.error())));

    const Drawing drawing;
    useClearFrames();
    dress(arguments.has(QStringLiteral("dark")) ? Appearance::Dark : Appearance::Light);
    Questions questions;
    Pantry pantry(*catalogue);
    MainWindow window(pantry, questions);
    if (files.size() == 2 && QFileInfo::exists(files.back())) {
        if (const auto opened = window.document().open(files.back()); !opened)
            return fail(QString::fromStdString(english(opened.error())));
    } else {
        auto recipe = files.size() == 2 ? recipeIn(files.back()) : greetingSample();
        if (!recipe)
            return fail(QString::fromStdString(english(recipe.error())));
        window.document().startWith(std::move(*recipe));
    }
    window.setWindowState(Qt::WindowNoState);
    window.resize(*size);
    window.layOutAfresh();
    window.setAttribute(Qt::WA_DontShowOnScreen);
    window.show();
    QApplication::processEvents();
    // Rendered rather than grabbed, so that the size is in pixels of the picture whatever the screen's scale.
    QImage picture(*size, QImage::Format_RGB32);
    window.render(&picture);
    if (!picture.save(files.front(), "PNG"))
        return fail(QStringLiteral("%1 could not be written. Name a place where you may write.").arg(files.front()));
    return 0;
}

}  // namespace firn::app
