#include "bench.h"

#include "document/file_work.h"

#include "bench/message_bar.h"
#include "document/built_in.h"
#include "exchange/recipe_text.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPrinter>
#include <QTest>

void PrintTo(const QString& text, std::ostream* stream) { *stream << '"' << text.toStdString() << '"'; }

namespace firn::app {

const Catalogue& shippedCatalogue()
{
    static const Catalogue catalogue = builtInCatalogue().value();
    return catalogue;
}

bool Answers::mayPrint(QWidget*, QPrinter& printer)
{
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(printTo);
    return !printTo.isEmpty();
}

void settle()
{
    EXPECT_TRUE(sharedFileWork().waitForAll());
}

Bench::Bench()
    : pantry(shippedCatalogue(), folder.filePath(QStringLiteral("own/ingredients.json")))
    , window(pantry, answers)
    , table(*window.findChild<IngredientTable*>())
{
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 768);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
}

QString Bench::rows() { return QString::fromStdString(rowsToText(recipe().components.front().rows)).trimmed(); }

QString Bench::messageShown() { return window.messages().isVisible() ? window.messages().sentence() : QString(); }

QString Bench::problemShown()
{
    const auto* label = window.findChild<QLabel*>(QStringLiteral("problem"));
    return label->isVisible() ? label->text() : QString();
}

void Bench::press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    QApplication::processEvents();
}

void Bench::type(const QString& text)
{
    for (const QChar letter : text)
        QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
}

void Bench::enter(int row, int column, const QString& text)
{
    goTo(row, column);
    type(text);
    press(Qt::Key_Return);
}

void Bench::lay(const std::string& lines)
{
    window.document().startWith(recipeFromText(lines).value());
    table.setFocus();
}

QString Bench::written(const QString& name, const QByteArray& contents)
{
    QFile file(inFolder(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(contents) == contents.size());
    return file.fileName();
}

}  // namespace firn::app
