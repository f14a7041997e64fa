#include "bench.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

namespace firn::app {
namespace {

class Undo : public Bench {
protected:
    Document& document() { return window.document(); }
    QLineEdit* field(const char* name) { return window.findChild<QLineEdit*>(QString::fromLatin1(name)); }
};

TEST_F(Undo, StepsAreNamedAfterWhatWasDone)
{
    lay("250 g water\n100 g sugar");
    changeAmount(document(), {0, 0}, {300, Unit::Gram});
    EXPECT_EQ(history().undoText(), "Change amount of Water");
    renameIngredient(document(), {0, 1}, "glucose");
    EXPECT_TRUE(history().undoText().startsWith("Replace Sugar"));
    moveRow(document(), {0, 0}, 1);
    EXPECT_EQ(history().undoText(), "Move Water");
    removeRows(document(), 0, {0, 1});
    EXPECT_EQ(history().undoText(), "Delete 2 rows");
    EXPECT_EQ(window.findChild<QAction*>("undo")->text(), "Undo: Delete 2 rows");
}

TEST_F(Undo, AmpersandInAnIngredientIsNotAShortcut)
{
    lay("250 g salt & pepper");
    changeAmount(document(), {0, 0}, {300, Unit::Gram});
    EXPECT_EQ(window.findChild<QAction*>("undo")->text(), "Undo: Change amount of salt && pepper");
}

TEST_F(Undo, EveryEditGoesBackAndForthToTheLastField)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    const Recipe before = recipe();
    changeAmount(document(), {0, 1}, {1.5, Unit::Cup});
    renameIngredient(document(), {0, 0}, "milk");
    insertRows(document(), {0, 3}, {{"gin", {30, Unit::Millilitre}, {}, {}}});
    moveRow(document(), {0, 3}, 0);
    duplicateRows(document(), 0, {1, 2});
    removeRows(document(), 0, {0, 4});
    changeTitle(document(), "Invented sherbet");
    changeProcess(document(), 0, Process::Scraped);
    changeOverrun(document(), 0, 30);
    changeServingTemperature(document(), Celsius{-9});
    changeFreezerTemperature(document(), Celsius{-22});
    changeNotes(document(), "steep 5 minutes");
    addComponent(document(), "cream");
    renameComponent(document(), 1, "buttermilk cream");
    removeComponent(document(), 0);
    const Recipe after = recipe();
    const int steps = history().count();
    EXPECT_EQ(steps, 15);
    for (int i = 0; i < steps; ++i)
        history().undo();
    EXPECT_EQ(recipe(), before);
    EXPECT_FALSE(document().isModified());
    for (int i = 0; i < steps; ++i)
        history().redo();
    EXPECT_EQ(recipe(), after);
}

TEST_F(Undo, NothingIsPushedWhereNothingChanges)
{
    lay("250 g water");
    changeAmount(document(), {0, 0}, {250, Unit::Gram});
    renameIngredient(document(), {0, 0}, "water");
    moveRow(document(), {0, 0}, 0);
    removeRows(document(), 0, {});
    removeComponent(document(), 0);
    EXPECT_EQ(history().count(), 0);
}

TEST_F(Undo, OnlyOneGestureOnOneRowIsOneStep)
{
    lay("250 g water\n100 g sugar");
    const Gesture first = Gesture::begin();
    changeAmount(document(), {0, 0}, {260, Unit::Gram}, first);
    changeAmount(document(), {0, 0}, {270, Unit::Gram}, first);
    EXPECT_EQ(history().count(), 1);
    changeAmount(document(), {0, 1}, {110, Unit::Gram}, first);
    EXPECT_EQ(history().count(), 2);
    changeAmount(document(), {0, 1}, {120, Unit::Gram}, Gesture::begin());
    EXPECT_EQ(history().count(), 3);
    changeAmount(document(), {0, 1}, {130, Unit::Gram});
    changeAmount(document(), {0, 1}, {140, Unit::Gram});
    EXPECT_EQ(history().count(), 5);
}

TEST_F(Undo, GestureThatEndsWhereItBeganLeavesNoStepAndACleanRecipe)
{
    lay("250 g water");
    const Gesture gesture = Gesture::begin();
    changeAmount(document(), {0, 0}, {260, Unit::Gram}, gesture);
    EXPECT_TRUE(window.isWindowModified());
    changeAmount(document(), {0, 0}, {250, Unit::Gram}, gesture);
    EXPECT_EQ(history().count(), 0);
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Undo, TypingATitleIsOneStepAndUndoInItsFieldTakesItBack)
{
    field("title")->setFocus();
    type("Pear");
    EXPECT_EQ(recipe().title, "Pear");
    EXPECT_EQ(history().count(), 1);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(recipe().title, "");
    EXPECT_EQ(field("title")->text(), "");
}

TEST_F(Undo, TemperaturesAreTypedWithEitherMarkAndMinus)
{
    for (const char* text : {"-8.5", "-8,5", "-8,5 C"}) {
        field("serving")->setFocus();
        field("serving")->selectAll();
        type(text);
        press(Qt::Key_Return);
        EXPECT_EQ(recipe().serveAt_c, -8.5) << text;
        EXPECT_EQ(history().count(), 1);
        history().undo();
    }
    EXPECT_EQ(recipe().serveAt_c, std::nullopt);
}

TEST_F(Undo, TemperatureBeyondAllFreezersIsMarkedAndChangesNothing)
{
    field("freezer")->setFocus();
    type("-95");
    press(Qt::Key_Return);
    EXPECT_EQ(field("freezer")->text(), "-95");
    EXPECT_TRUE(field("freezer")->toolTip().contains("-95.0") || field("freezer")->toolTip().contains("−95.0"));
    EXPECT_NE(recipe().freezerAt_c, -95.0);
}

TEST_F(Undo, EmptyTemperatureIsTheUsualOne)
{
    changeServingTemperature(document(), Celsius{-8});
    field("serving")->setFocus();
    field("serving")->selectAll();
    press(Qt::Key_Backspace);
    EXPECT_EQ(recipe().serveAt_c, std::nullopt);
    EXPECT_EQ(field("serving")->placeholderText(), "−12\u202f°C");
    EXPECT_TRUE(field("serving")->toolTip().contains("unverified")) << "nobody has published the usual temperature";
    type("-9");
    EXPECT_EQ(recipe().serveAt_c, -9.0);
    EXPECT_FALSE(field("serving")->toolTip().contains("unverified")) << "this one is the cook's own";
}

TEST_F(Undo, OverrunIsTypedAsText)
{
    field("overrun")->setFocus();
    field("overrun")->selectAll();
    type("32,5 %");
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().overrun_percent, 32.5);
    EXPECT_EQ(history().undoText(), "Change overrun");
}

TEST_F(Undo, ProcessIsChosenAndTakenBack)
{
    lay("250 g water");
    auto* process = window.findChild<QComboBox*>("process");
    process->setCurrentIndex(1);
    EXPECT_EQ(recipe().process, Process::Scraped);
    history().undo();
    EXPECT_EQ(recipe().process, std::nullopt);
    EXPECT_EQ(process->currentText(), "churning");
}

TEST_F(Undo, RowThatIsAmidADragMayBeTakenBack)
{
    insertRows(document(), {0, 0}, {{"water", {250, Unit::Gram}, {}, {}}});
    AmountScrub scrub(document(), nullptr);
    scrub.begin({0, 0});
    scrub.dragTo(10, ScrubPace::Usual);
    history().undo();
    history().undo();
    scrub.dragTo(20, ScrubPace::Usual);
    EXPECT_EQ(rowCount(), 0U);
    EXPECT_FALSE(scrub.isActive());
}

}  // namespace
}  // namespace firn::app
