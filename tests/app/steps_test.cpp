#include "bench.h"

#include "bench/steps_panel.h"
#include "document/step_edits.h"
#include "exchange/recipe_text.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <cmath>

namespace firn::app {
namespace {

class StepsOnTheBench : public testing::Test {
protected:
    StepsOnTheBench()
        : document(shippedCatalogue())
        , panel(document)
    {
        document.startWith(recipeFromText("500 g water\n200 g sugar\n100 g strawberries").value());
        panel.resize(900, 300);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }

    const std::vector<Step>& steps() { return document.recipe().components.front().steps; }
    template <class Widget>
    Widget* part(const char* name, qsizetype row = 0)
    {
        return parts<Widget>(name).at(row);
    }
    template <class Widget>
    QList<Widget*> parts(const char* name)
    {
        // Fields of steps that are gone wait for the event loop.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return panel.findChildren<Widget*>(QLatin1String(name));
    }
    QString shown(const char* name, qsizetype row = 0)
    {
        const auto* widget = part<QWidget>(name, row);
        QString text = widget->isVisible() ? widget->property("text").toString() : QString();
        return text.replace(QChar(0x202F), QLatin1Char(' '));
    }
    void click(const char* name) { QTest::mouseClick(part<QWidget>(name), Qt::LeftButton); }
    /// Chooses by the keyboard, as many items further down.
    void choose(const char* name, int down, qsizetype row = 0)
    {
        part<QWidget>(name, row)->setFocus();
        for (int i = 0; i < down; ++i)
            press(Qt::Key_Down);
    }
    void typeOver(const char* name, const QString& text)
    {
        part<QLineEdit>(name)->setFocus();
        part<QLineEdit>(name)->selectAll();
        QTest::keyClicks(part<QLineEdit>(name), text);
        press(Qt::Key_Return);
    }
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        QApplication::processEvents();
    }
    void addStraining(const QString& heldBack)
    {
        click("addStep");
        choose("loss", 1);
        typeOver("lossGrams", heldBack);
    }

    Document document;
    StepsPanel panel;
};

TEST_F(StepsOnTheBench, StrainingIsTypedAndWeighed)
{
    addStraining(QStringLiteral("80"));
    ASSERT_EQ(steps().size(), 1U);
    EXPECT_EQ(steps().front().kind, StepKind::Strain);
    EXPECT_EQ(steps().front().loss, Loss(HeldBack{{80.0}}));
    EXPECT_EQ(shown("massAfter"), QStringLiteral("720 g"));
    EXPECT_EQ(shown("massLost"), QStringLiteral("80 g"));
    EXPECT_EQ(shown("stepProblem"), QString());
}

TEST_F(StepsOnTheBench, UndoTakesBackOneNamedStepAtATime)
{
    addStraining(QStringLiteral("80"));
    ASSERT_EQ(document.undoStack().count(), 3);
    EXPECT_EQ(document.undoStack().text(0), QStringLiteral("Add step"));
    EXPECT_EQ(document.undoStack().text(2), QStringLiteral("Change step “strain”"));
    document.undoStack().undo();
    EXPECT_EQ(shown("massAfter"), QStringLiteral("800 g"));
    document.undoStack().setIndex(0);
    EXPECT_TRUE(steps().empty());
    EXPECT_TRUE(parts<QWidget>("massAfter").isEmpty());
}

TEST_F(StepsOnTheBench, EitherDecimalMarkIsRead)
{
    addStraining(QStringLiteral("80,5"));
    EXPECT_EQ(steps().front().loss, Loss(HeldBack{{80.5}}));
    typeOver("stepTemperature", QStringLiteral("85.5"));
    EXPECT_EQ(steps().front().temperature_c, 85.5);
    typeOver("stepTemperature", QStringLiteral("-18"));
    EXPECT_EQ(steps().front().temperature_c, -18.0);
}

TEST_F(StepsOnTheBench, WhatIsNotANumberIsRefusedInWords)
{
    addStraining(QStringLiteral("80"));
    typeOver("stepMinutes", QStringLiteral("a while"));
    EXPECT_EQ(steps().front().minutes, std::nullopt);
    EXPECT_TRUE(shown("stepProblem").startsWith(QStringLiteral("“a while” is not a valid time.")))
        << shown("stepProblem").toStdString();
    EXPECT_EQ(part<QLineEdit>("stepMinutes")->text(), QStringLiteral("a while"));
    typeOver("stepMinutes", QStringLiteral("5"));
    EXPECT_EQ(steps().front().minutes, 5.0);
    EXPECT_EQ(shown("stepProblem"), QString());
}

TEST_F(StepsOnTheBench, MoreHeldBackThanThereIsIsSaid)
{
    addStraining(QStringLiteral("5000"));
    EXPECT_TRUE(shown("stepProblem").startsWith(QStringLiteral("The strainer cannot hold back")))
        << shown("stepProblem").toStdString();
    EXPECT_EQ(shown("massAfter"), QStringLiteral("800 g"));
}

TEST_F(StepsOnTheBench, ThousandsAreShownAsTheyAreRead)
{
    addStraining(QStringLiteral("5000"));
    part<QLineEdit>("lossGrams")->setFocus();
    press(Qt::Key_End);
    press(Qt::Key_Backspace);
    EXPECT_EQ(steps().front().loss, Loss(HeldBack{{5000.0}}));
}

TEST_F(StepsOnTheBench, SteepedRowIsChosenAmongTheRows)
{
    click("addStep");
    choose("loss", 2);
    typeOver("soaksUp", QStringLiteral("0,5"));
    const auto* steeped = std::get_if<Steeped>(&steps().front().loss);
    ASSERT_TRUE(steeped);
    EXPECT_EQ(steeped->ingredient, document.recipe().components.front().rows.back().ingredient);
    EXPECT_EQ(steeped->soaksUp_gPerG, 0.5);
    EXPECT_EQ(part<QComboBox>("steepedRow")->count(), 3);
    EXPECT_EQ(shown("stepProblem"), QString());
}

TEST_F(StepsOnTheBench, DeleteRemovesTheStepWithTheFocus)
{
    addStep(document, 0, StepKind::Heat);
    addStep(document, 0, StepKind::Chill);
    part<QComboBox>("stepKind", 0)->setFocus();
    press(Qt::Key_Delete);
    ASSERT_EQ(steps().size(), 1U);
    EXPECT_EQ(steps().front().kind, StepKind::Chill);
    EXPECT_EQ(QApplication::focusWidget(), part<QComboBox>("stepKind"));
    click("deleteStep");
    EXPECT_TRUE(steps().empty());
}

TEST_F(StepsOnTheBench, DeleteInAFieldDeletesALetterOnly)
{
    addStraining(QStringLiteral("80"));
    part<QLineEdit>("lossGrams")->setFocus();
    part<QLineEdit>("lossGrams")->selectAll();
    press(Qt::Key_Delete);
    ASSERT_EQ(steps().size(), 1U);
    EXPECT_EQ(part<QLineEdit>("lossGrams")->text(), QString());
}

TEST_F(StepsOnTheBench, CtrlWithAnArrowMovesTheStepAndTheFocus)
{
    addStep(document, 0, StepKind::Heat);
    addStep(document, 0, StepKind::Chill);
    part<QComboBox>("stepKind", 0)->setFocus();
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(steps().front().kind, StepKind::Chill);
    EXPECT_EQ(steps().back().kind, StepKind::Heat);
    EXPECT_EQ(QApplication::focusWidget(), part<QComboBox>("stepKind", 1));
    EXPECT_EQ(document.undoStack().undoText(), QStringLiteral("Move step “heat”"));
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(document.undoStack().count(), 3);
    press(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(steps().front().kind, StepKind::Heat);
}

TEST_F(StepsOnTheBench, EachComponentHasItsOwnSteps)
{
    addStep(document, 0, StepKind::Heat);
    addComponent(document, "Cream");
    panel.showComponent(1);
    EXPECT_TRUE(parts<QComboBox>("stepKind").isEmpty());
    click("addStep");
    EXPECT_EQ(document.recipe().components.at(1).steps.size(), 1U);
    EXPECT_EQ(steps().size(), 1U);
    removeComponent(document, 1);
    EXPECT_EQ(panel.component(), 0U);
    EXPECT_EQ(parts<QComboBox>("stepKind").size(), 1);
}

TEST_F(StepsOnTheBench, TheGaugesShowTheMixAfterAnyStep)
{
    addStep(document, 0, StepKind::Strain);
    addStep(document, 0, StepKind::Strain);
    changeStep(document, 0, 0, {StepKind::Strain, {}, {}, HeldBack{{80}}, {}, {}});
    changeStep(document, 0, 1, {StepKind::Strain, {}, {}, HeldBack{{20}}, {}, {}});
    const auto mass_g = [this] { return std::round(document.analysis().mass.value); };
    EXPECT_EQ(mass_g(), 700.0);
    click("massAfter");
    EXPECT_EQ(mass_g(), 720.0);
    click("weighedOut");
    EXPECT_EQ(mass_g(), 800.0);
    EXPECT_FALSE(part<QAbstractButton>("massAfter")->isChecked());
    QTest::mouseClick(part<QWidget>("massAfter", 1), Qt::LeftButton);
    EXPECT_EQ(mass_g(), 700.0);
    EXPECT_TRUE(part<QAbstractButton>("massAfter", 1)->isChecked());
    QTest::mouseClick(part<QWidget>("massAfter", 1), Qt::LeftButton);
    EXPECT_TRUE(part<QAbstractButton>("massAfter", 1)->isChecked());
    click("massAfter");
    removeSteps(document, 0, {0, 1});
    EXPECT_EQ(mass_g(), 800.0);
    EXPECT_FALSE(document.stepsDone());
}

}  // namespace
}  // namespace firn::app
