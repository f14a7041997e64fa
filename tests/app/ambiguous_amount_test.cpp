// "1.015 g" is a gram to one and a kilogram to another: the table asks at the cell, in every locale.
#include "bench.h"

#include "bench/amount_question.h"
#include "locales.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QPushButton>
#include <QScrollBar>

namespace firn::app {
namespace {

using Model = IngredientModel;

class AmbiguousAmount : public Bench {
protected:
    AmountQuestion& question() { return *table.findChild<AmountQuestion*>(); }
    QStringList offered()
    {
        QStringList texts;
        for (const QPushButton* button : question().findChildren<QPushButton*>())
            texts << button->text();
        return question().isVisible() ? texts : QStringList();
    }
    void choose(int meaning) { question().findChildren<QPushButton*>().at(meaning)->click(); }
    Amount amount() { return recipe().components.front().rows.front().amount; }
};

TEST_F(AmbiguousAmount, IsAskedAboutInEveryLocaleWithEitherMarkAndTypingGoesOn)
{
    for (const QLocale& locale : readersLocales()) {
        const NumbersOf numbers(locale);
        for (const char* typed : {"1.015", "1,015", "1.015 g", "1,250 ml", "1.250 ml", "2,015 g"}) {
            const std::string where = locale.name().toStdString() + ' ' + typed;
            lay("250 g water");
            enter(0, Model::AmountColumn, typed);
            ASSERT_EQ(QApplication::focusWidget(), &table) << where;
            EXPECT_EQ(rows(), "250 g water") << where;
            const QString text = QString::fromLatin1(typed), first = text.left(1);
            const QString unit = text.endsWith("ml") ? "mL" : "g", decimals = text.mid(2, 3);
            const QString written = decimals == "250" ? "25" : decimals;
            EXPECT_EQ(offered(),
                (QStringList{first + decimals + u'\u202f' + unit, first + locale.decimalPoint() + written + u'\u202f' + unit}))
                << where;
            EXPECT_TRUE(problemShown().contains(first + locale.decimalPoint() + written)) << where << problemShown().toStdString();
        }
    }
}

TEST_F(AmbiguousAmount, EachButtonMeansWhatItSays)
{
    lay("250 g water");
    enter(0, Model::AmountColumn, "1.015");
    choose(0);
    EXPECT_EQ(amount(), (Amount{1015, Unit::Gram}));
    EXPECT_EQ(history().count(), 1);
    EXPECT_EQ(problemShown(), "");
    EXPECT_FALSE(question().isVisible());

    enter(0, Model::AmountColumn, "1,015");
    choose(1);
    EXPECT_EQ(amount(), (Amount{1.015, Unit::Gram}));
    EXPECT_EQ(textAt(0, Model::AmountColumn), "1.0150") << "with a digit more, so that it is certain";
    EXPECT_FALSE(question().isVisible());
    // What the cell shows is taken as it is.
    enter(0, Model::AmountColumn, textAt(0, Model::AmountColumn));
    EXPECT_EQ(amount(), (Amount{1.015, Unit::Gram}));
    EXPECT_FALSE(question().isVisible());
}

TEST_F(AmbiguousAmount, IsAskedAboutWhileItIsTypedAndMovesNoGauge)
{
    lay("250 g water");
    goTo(0, Model::AmountColumn);
    type("1.01");
    EXPECT_FALSE(question().isVisible());
    type("5");
    ASSERT_TRUE(question().isVisible());
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 1.01) << "the last that could be read";
    choose(0);
    EXPECT_EQ(amount(), (Amount{1015, Unit::Gram}));
    EXPECT_FALSE(window.document().isTyping());

    goTo(0, Model::AmountColumn);
    type("1.015");
    type("5");
    EXPECT_FALSE(question().isVisible()) << "four digits are decimals";
    press(Qt::Key_Escape);
    EXPECT_EQ(amount(), (Amount{1015, Unit::Gram}));
}

TEST_F(AmbiguousAmount, EscapeDropsTheQuestionWithTheText)
{
    lay("250 g water\n100 g sugar");
    enter(0, Model::AmountColumn, "1.015");
    ASSERT_TRUE(question().isVisible());
    // It stands at its cell, and waits while another is typed into.
    enter(1, Model::AmountColumn, "120");
    EXPECT_TRUE(question().isVisible());
    EXPECT_EQ(rows(), "250 g water\n120 g sugar");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_Escape);
    EXPECT_FALSE(question().isVisible());
    EXPECT_EQ(textAt(0, Model::AmountColumn), "250");
}

TEST_F(AmbiguousAmount, StandsBesideItsCellWhereTheNextRowsStayFree)
{
    lay("250 g water\n100 g sugar");
    enter(0, Model::AmountColumn, "1.015");
    const QRect asked = table.visualRect(cell(0, Model::AmountColumn));
    EXPECT_GE(question().geometry().left(), asked.right());
    EXPECT_FALSE(question().geometry().intersects(table.visualRect(cell(1, Model::AmountColumn))));
    EXPECT_TRUE(table.viewport()->rect().contains(question().geometry()));
}

TEST_F(AmbiguousAmount, StaysBesideItsCellWhenTheTableScrollsUnderTheTyping)
{
    std::string lines;
    for (int row = 0; row < 60; ++row)
        lines += "250 g water\n";
    lay(lines);
    for (const bool isTyping : {true, false}) {
        goTo(5, Model::AmountColumn);
        type("1.015");
        if (!isTyping)
            press(Qt::Key_Return);
        for (const int pixels : {40, 90, 20}) {
            table.verticalScrollBar()->setValue(pixels);
            const QRect asked = table.visualRect(cell(5, Model::AmountColumn));
            EXPECT_EQ(question().geometry().topLeft(), asked.topRight() + QPoint(1, 0)) << isTyping << ' ' << pixels;
        }
        table.horizontalHeader()->resizeSection(Model::AmountColumn, 150);
        QApplication::processEvents();
        EXPECT_EQ(question().geometry().left(), table.visualRect(cell(5, Model::AmountColumn)).right() + 1);
        goTo(5, Model::AmountColumn);
        press(Qt::Key_Escape);
        press(Qt::Key_Escape);
    }
}

TEST_F(AmbiguousAmount, IsAskedAboutInALineThatWasPasted)
{
    lay("250 g water");
    QGuiApplication::clipboard()->setText("1.015 g sugar\n20 g salt");
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(rowCount(), 3U);
    ASSERT_EQ(offered().size(), 2);
    choose(1);
    EXPECT_EQ(recipe().components.front().rows.at(1).amount, (Amount{1.015, Unit::Gram}));
    EXPECT_EQ(recipe().components.front().rows.at(1).ingredient, "sugar");
    EXPECT_FALSE(question().isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &table);
}

TEST_F(AmbiguousAmount, IsAskedAboutInANewLineToo)
{
    type("1.015 g sugar");
    press(Qt::Key_Return);
    EXPECT_EQ(rowCount(), 0U);
    ASSERT_EQ(offered().size(), 2);
    choose(0);
    EXPECT_EQ(rows(), "1015 g sugar");
    EXPECT_FALSE(question().isVisible());
}

TEST_F(AmbiguousAmount, OfALineIsKeptWhenTheNextOneIsTyped)
{
    for (const char* line : {"1,000 g water", "1.250 g milk", "-5 g sugar", "1e308 kg water"}) {
        window.document().startWith({});
        type(line);
        press(Qt::Key_Return);
        type("100 g cream");
        press(Qt::Key_Return);
        ASSERT_EQ(rowCount(), 2U) << line;
        EXPECT_EQ(recipe().components.front().rows.at(0).ingredient, line);
        EXPECT_EQ(recipe().components.front().rows.at(1).amount, (Amount{100.0, Unit::Gram}));
        EXPECT_EQ(QApplication::focusWidget(), &table);
    }
}

TEST_F(AmbiguousAmount, OfALineThatWasKeptIsStillAskedAbout)
{
    type("1,000 g water");
    press(Qt::Key_Return);
    type("100 g cream");
    press(Qt::Key_Return);
    ASSERT_EQ(offered().size(), 2);
    choose(0);
    EXPECT_EQ(rows(), "1000 g water\n100 g cream");
}

TEST_F(AmbiguousAmount, IsNotAskedAboutInKilogramsAndLitres)
{
    lay("1 kg water");
    enter(0, Model::AmountColumn, "1.015");
    EXPECT_EQ(amount(), (Amount{1.015, Unit::Kilogram}));
    EXPECT_EQ(textAt(0, Model::AmountColumn), "1.015");
    enter(0, Model::AmountColumn, "0,125 l");
    EXPECT_EQ(amount(), (Amount{0.125, Unit::Litre}));
    EXPECT_FALSE(question().isVisible());
}

}  // namespace
}  // namespace firn::app
