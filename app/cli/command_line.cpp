#include "cli/command_line.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <cstdio>

namespace firn::app {

namespace {

constexpr auto help = R"(Firn, a workbench for formulating frozen desserts.

firn [FILE...]                opens the window, one for each file
firn report FILE...           prints what a recipe amounts to
firn compare FILE FILE...     compares recipes, or versions of one
firn explain FIGURE FILE      explains a figure, step by step
firn exercises FILE           prints exercises on a recipe
firn ingredients [SEARCH]     lists the catalogue
firn read --brix B --sg S     says what a measured mix is
firn picture FILE.png         draws the window into a picture

FILE is a recipe (.firn), text with one ingredient a line (.txt), or a table (.csv).
FILE@VERSION is a version kept in a recipe, by its number or its name: pear.firn@2.
Each command says more with --help. Firn --version prints the version.
)";

void printTo(std::FILE* stream, const QString& text)
{
    const QByteArray bytes = text.toUtf8();
    std::fwrite(bytes.constData(), 1, std::size_t(bytes.size()), stream);
}

/// What keeps the arguments from naming files for a window. A single dash leads an option of Qt's own, such as -platform, which may
/// have a value after it.
std::optional<QString> faultOfWindowArguments(const QStringList& arguments)
{
    const auto isOption = [](const QString& argument) { return argument.startsWith(u'-'); };
    if (!arguments.isEmpty() && !isOption(arguments.front()) && !QFileInfo::exists(arguments.front()))
        return QStringLiteral("There is no command or file “%1”. Run “firn --help” for usage.").arg(arguments.front());
    for (const QString& argument : arguments)
        if (argument.startsWith(QLatin1String("--")))
            return QStringLiteral("There is no option %1. Run “firn --help” for usage.").arg(argument);
    return std::nullopt;
}

}  // namespace

std::optional<int> runCommand(const QStringList& arguments)
{
    const QString command = arguments.value(1);
    const QStringList rest = arguments.mid(1);
    if (command == QLatin1String("report"))
        return reportCommand(rest);
    if (command == QLatin1String("compare"))
        return compareCommand(rest);
    if (command == QLatin1String("explain"))
        return explainCommand(rest);
    if (command == QLatin1String("exercises"))
        return exercisesCommand(rest);
    if (command == QLatin1String("ingredients"))
        return ingredientsCommand(rest);
    if (command == QLatin1String("read"))
        return readCommand(rest);
    if (command == QLatin1String("picture"))
        return pictureCommand(rest);
    if (command == QLatin1String("--help") || command == QLatin1String("-h")) {
        print(QString::fromUtf8(help));
        return 0;
    }
    if (command == QLatin1String("--version") || command == QLatin1String("-v")) {
        print(QStringLiteral("firn %1\n").arg(QCoreApplication::applicationVersion()));
        return 0;
    }
    if (const auto fault = faultOfWindowArguments(rest))
        return fail(*fault);
    return std::nullopt;
}

int fail(const QString& sentence)
{
    printTo(stderr, QStringLiteral("firn: %1\n").arg(sentence.simplified()));
    return failedStatus;
}

void print(const QString& text) { printTo(stdout, text); }

int answer(Arguments& arguments, const QStringList& words, Result<std::string> (*textFor)(const Arguments&))
{
    if (const auto isRead = arguments.read(words); !isRead)
        return fail(QString::fromStdString(english(isRead.error())));
    if (arguments.wantsHelp()) {
        print(arguments.help());
        return 0;
    }
    const auto text = textFor(arguments);
    if (!text)
        return fail(QString::fromStdString(english(text.error())));
    print(QString::fromStdString(*text));
    return 0;
}

}  // namespace firn::app
