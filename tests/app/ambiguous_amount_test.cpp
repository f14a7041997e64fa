// "1.015 g" is a gram to one and a kilogram to another: the table asks at the cell, in every locale.
#include "bench.h"

#include "bench/amount_question.h"
#include "locales.h"

#include <QPushButton>

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

class AskedAboutIn : public AmbiguousAmount, public testing::WithParamInterface<std::tuple<std::size_t, const char*>> {};

TEST_P(AskedAboutIn, EveryLocaleAndWithEitherMark)
{
    const QLocale locale = readersLocales().at(std::get<0>(GetParam()));
    const char* typed = std::get<1>(GetParam());
    const NumbersOf numbers(locale);
    lay("250 g water");
    enter(0, Model::AmountColumn, typed);
    EXPECT_EQ(rows(), "250 g water") << typed;
    const QString unit = QString::fromLatin1(typed).endsWith("ml") ? "mL" : "g";
    const QString whole = unit == "g" ? "1015" : "1250", decimals = unit == "g" ? "015" : "25";
    EXPECT_EQ(offered(), (QStringList{whole + u'\u202f' + unit, u'1' + locale.decimalPoint() + decimals + u'\u202f' + unit}))
        << locale.name().toStdString() << ' ' << typed;
    EXPECT_FALSE(problemShown().isEmpty());
}

INSTANTIATE_TEST_SUITE_P(Readers, AskedAboutIn,
    testing::Combine(
        testing::Range(std::size_t{0}, readersLocales().size()), testing::Values("1.015", "1,015", "1.015 g", "1,250 ml")));

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
