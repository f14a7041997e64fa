// The window with exercises: typing answers, hints one by one, the solution, other sheets, and that it keeps up with the recipe.
#include "bench.h"
#include "document/edits.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"
#include "locales.h"
#include "teach/exercise_sheet.h"
#include "teach/exercises_window.h"
#include "teach/figure_link.h"
#include "teach/step_view.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

namespace firn::app {

namespace {

const std::string simpleSorbet = "500 g raspberries\n150 g sucrose\n30 g glucose\n200 g water\n40 g gin";

class ExercisesWindowTest : public Bench {
protected:
    ExercisesWindowTest()
    {
        lay(simpleSorbet);
        QTest::keyClick(&window, Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
        exercises = window.findChild<ExercisesWindow*>();
        EXPECT_TRUE(exercises);
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return exercises->isActiveWindow() && QApplication::focusWidget() == field("answer"); }));
    }

    QLineEdit* field(const char* name) const { return exercises->findChild<QLineEdit*>(QLatin1String(name)); }
    QPushButton* button(const char* name) const { return exercises->findChild<QPushButton*>(QLatin1String(name)); }
    QListWidget* list() const { return exercises->findChild<QListWidget*>(); }
    QString label(const char* name) const
    {
        QApplication::processEvents();
        const auto* found = exercises->findChild<QLabel*>(QLatin1String(name));
        return found && found->isVisibleTo(exercises) ? found->text() : QString();
    }
    const Exercise& current() const { return exercises->sheet().exercises.at(std::size_t(list()->currentRow())); }
    QString rightAfter(const QString& praise) const
    {
        return praise + " It is " + answerIn("%.1f %%") + ", and ± 0.5 percentage points count as right.";
    }
    QString answerIn(const char* pattern) const { return QString::asprintf(pattern, current().answer.value); }
    QString verdictOn(const QString& typed)
    {
        field("answer")->setText(typed);
        QTest::keyClick(field("answer"), Qt::Key_Return);
        return label("verdict");
    }

    ExercisesWindow* exercises = nullptr;
};

}  // namespace

TEST_F(ExercisesWindowTest, AnAnswerIsTypedWithEitherMarkWithAndWithoutUnit)
{
    EXPECT_EQ(verdictOn(answerIn("%.1f %%")), rightAfter("Right."));
    EXPECT_EQ(verdictOn(answerIn("%.1f %%").replace('.', ',')), rightAfter("Right."));
    EXPECT_EQ(verdictOn(answerIn("%.1f")), rightAfter("Right, in %."));
    EXPECT_EQ(verdictOn(answerIn("%.1f g")), "The answer should be in %.");
    EXPECT_EQ(verdictOn("3 %"), "Too low.");
    EXPECT_EQ(verdictOn("88 %"), "Too high.");
    EXPECT_TRUE(verdictOn("<b>much</b>").startsWith("“<b>much</b>” is not an answer"));
    EXPECT_TRUE(verdictOn("") == "Type an answer first.");
}

TEST_F(ExercisesWindowTest, AnAnswerInAnotherUnitIsConvertedAndASlipNamed)
{
    const auto choose = [this](ExerciseKind kind) {
        for (int row = 0; row < list()->count(); ++row)
            if (exercises->sheet().exercises.at(std::size_t(row)).kind == kind)
                list()->setCurrentRow(row);
    };
    choose(ExerciseKind::FreezingPoint);
    const double point_c = current().answer.value;
    EXPECT_TRUE(verdictOn(QString::asprintf("%.1f K", point_c + 273.15)).startsWith("Right: that is "))
        << label("verdict").toStdString();
    EXPECT_TRUE(verdictOn(QString::asprintf("%.1f °F", 32.0 + 1.8 * point_c)).startsWith("Right: that is "));
    choose(ExerciseKind::SugarsByMass);
    const Mix& mix = exercises->sheet().mix;
    EXPECT_EQ(verdictOn(QString::asprintf("%.1f %%", 100.0 * (sugars(mix) / mix[Constituent::Water]))),
        "That is sugars per 100 g of water. Divide by the mass of the whole mix.");
}

TEST_F(ExercisesWindowTest, WhatIsGivenInATableStandsInOne)
{
    for (int row = 0; row < list()->count(); ++row) {
        list()->setCurrentRow(row);
        QApplication::processEvents();
        EXPECT_EQ(exercises->findChildren<QWidget*>("table").size(), qsizetype(current().tables.size()));
    }
}

TEST_F(ExercisesWindowTest, WhatWasSolvedIsMarkedAndKept)
{
    const QString name = list()->item(0)->text();
    verdictOn(answerIn("%.1f %%"));
    EXPECT_EQ(list()->item(0)->text(), name + " ✓");
    const QString typed = field("answer")->text();
    list()->setCurrentRow(1);
    EXPECT_EQ(field("answer")->text(), "");
    EXPECT_EQ(label("verdict"), "");
    list()->setCurrentRow(0);
    EXPECT_EQ(field("answer")->text(), typed);
    EXPECT_EQ(label("verdict"), rightAfter("Right."));
    QTest::keyClick(field("answer"), Qt::Key_1);
    EXPECT_EQ(label("verdict"), "");
    EXPECT_EQ(list()->item(0)->text(), name);
}

TEST_F(ExercisesWindowTest, HintsComeOneAfterTheOther)
{
    const std::vector<Sentence> hints = current().hints;
    ASSERT_GE(hints.size(), 2u);
    for (std::size_t i = 0; i < hints.size(); ++i) {
        EXPECT_EQ(label(QByteArray("hint") + QByteArray::number(int(i) + 1)), "");
        button("hint")->click();
        EXPECT_TRUE(label(QByteArray("hint") + QByteArray::number(int(i) + 1)).endsWith(translated(hints[i])));
    }
    EXPECT_FALSE(button("hint")->isEnabled());
}

TEST_F(ExercisesWindowTest, EverySolutionEndsWithTheExpectedAnswerAndIsHiddenAgain)
{
    ASSERT_GE(list()->count(), 7);
    for (int row = 0; row < list()->count(); ++row) {
        list()->setCurrentRow(row);
        EXPECT_TRUE(exercises->findChildren<StepView*>().isEmpty());
        button("solution")->click();
        EXPECT_EQ(exercises->findChildren<StepView*>().size(), qsizetype(current().solution.size()));
        EXPECT_EQ(label("lastLine"), "Answer: " + answerText(current().answer));
        button("solution")->click();
        EXPECT_EQ(label("lastLine"), "");
    }
}

TEST_F(ExercisesWindowTest, AnotherSheetHasOtherNumbersAndTheSameOneTheSame)
{
    const QString question = label("question"), rows = label("rows");
    EXPECT_TRUE(rows.contains("150 g sugar (sucrose)")) << rows.toStdString();
    button("another")->click();
    EXPECT_EQ(field("sheetNumber")->text(), "1");
    EXPECT_NE(label("question"), question);
    EXPECT_NE(label("rows"), rows);
    field("sheetNumber")->setText("0");
    QTest::keyClick(field("sheetNumber"), Qt::Key_Return);
    EXPECT_EQ(label("question"), question);
    EXPECT_EQ(label("message"), "");
    field("sheetNumber")->setText("first");
    QTest::keyClick(field("sheetNumber"), Qt::Key_Return);
    EXPECT_EQ(label("message"), "Enter a sheet number, for example 7.");
    EXPECT_EQ(label("question"), question);
}

TEST_F(ExercisesWindowTest, WorksByKeyboardAlone)
{
    list()->setFocus();
    press(Qt::Key_Down);
    EXPECT_EQ(list()->currentRow(), 1);
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), field("answer"));
    type("-5 %");
    press(Qt::Key_Return);
    EXPECT_FALSE(label("verdict").isEmpty());
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), button("hint"));
    press(Qt::Key_Space);
    EXPECT_FALSE(label("hint1").isEmpty());
    press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), button("solution"));
    press(Qt::Key_Space);
    EXPECT_FALSE(label("lastLine").isEmpty());
    press(Qt::Key_Escape);
    EXPECT_FALSE(exercises->isVisible());
}

TEST_F(ExercisesWindowTest, FollowsEditsAndSaysWhenTheExercisesChanged)
{
    verdictOn(answerIn("%.1f %%"));
    window.document().setReadAt(window.document().analysis().conditions.readAt);
    EXPECT_EQ(label("message"), "");
    EXPECT_EQ(label("verdict"), rightAfter("Right."));
    const QString question = label("question");
    changeAmount(window.document(), RowPlace{0, 1}, Amount{300.0});
    EXPECT_NE(label("question"), question);
    EXPECT_TRUE(label("message").startsWith("The recipe changed"));
    EXPECT_EQ(label("verdict"), "");
    window.document().startWith(Recipe{});
    EXPECT_TRUE(label("question").startsWith("There is nothing to ask about yet"));
    EXPECT_EQ(list()->count(), 0);
    lay(simpleSorbet);
    EXPECT_EQ(label("question"), question);
}

TEST_F(ExercisesWindowTest, AHostileNameIsShownLetterByLetter)
{
    const QString name = QStringLiteral("<b>syrup</b> & <img src=x>");
    Recipe hostile = recipeFromText("100 g water\n50 g sucrose").value();
    Ingredient syrup = *shippedCatalogue().find("sucrose");
    syrup.id = "syrup-of-its-own";
    syrup.name = name.toStdString();
    hostile.ingredients.push_back(syrup);
    hostile.components.front().rows.back().ingredient = syrup.name;
    window.document().startWith(hostile);
    EXPECT_TRUE(label("rows").contains(name)) << label("rows").toStdString();
    for (const QLabel* each : exercises->findChildren<QLabel*>()) {
        if (!each->buddy()) {
            EXPECT_EQ(each->textFormat(), Qt::PlainText) << each->text().toStdString();
        }
    }
}

TEST_F(ExercisesWindowTest, SheetsForAClassGoIntoOneFile)
{
    field("firstSheet")->setText("1");
    field("lastSheet")->setText("24");
    const auto handout = exercises->handout();
    ASSERT_TRUE(handout);
    ASSERT_EQ(handout->sections.size(), 24u);
    EXPECT_EQ(handout->sections.back().number, "Sheet 24");
    answers.page = inFolder("sheets.pdf");
    button("pdf")->click();
    EXPECT_EQ(label("message"), "The pages are in " + inFolder("sheets.pdf") + ".");
    EXPECT_TRUE(QFile::exists(inFolder("sheets.pdf")));
    QFile::remove(inFolder("sheets.pdf"));
    field("lastSheet")->setText("none");
    button("pdf")->click();
    EXPECT_TRUE(label("message").startsWith("“1” to “none” are no sheets")) << label("message").toStdString();
    EXPECT_FALSE(QFile::exists(inFolder("sheets.pdf")));
}

TEST_F(ExercisesWindowTest, SheetsThatAreNoneAreRefusedInASentence)
{
    const auto refusal = [this](const char* first, const char* last) {
        field("firstSheet")->setText(first);
        field("lastSheet")->setText(last);
        const auto handout = exercises->handout();
        return handout ? QString() : translated(handout.error());
    };
    EXPECT_TRUE(refusal("one", "24").startsWith("“one” to “24” are no sheets"));
    EXPECT_TRUE(refusal("24", "1").startsWith("The last sheet comes before the first"));
    EXPECT_TRUE(refusal("1", "500").startsWith("That is more than 200 sheets"));
    EXPECT_EQ(refusal("18446744073709551615", "18446744073709551615"), "");
}

// Their tables and formulas are in °C and K.
TEST_F(ExercisesWindowTest, StayInCelsiusWhateverIsShown)
{
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    window.document().startWith(*recipeFromText(simpleSorbet));
    for (int row = 0; row < list()->count(); ++row) {
        list()->setCurrentRow(row);
        QApplication::processEvents();
        for (const QLabel* each : exercises->findChildren<QLabel*>())
            EXPECT_FALSE(each->text().contains("°F")) << each->text().toStdString();
    }
}

}  // namespace firn::app
