// Every key moves the gauges; Escape puts everything back; Enter makes one step.
#include "bench.h"

#include "bench/number_field.h"
#include "gauges/gauge.h"
#include "gauges/sugar_scale.h"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>

namespace firn::app {
namespace {

using Model = IngredientModel;

class LiveTyping : public Bench {
protected:
    double mass() { return window.document().analysis().mass.value; }
    QString sugarShown() { return window.findChild<SugarScale*>()->valueText(); }
    QString lineText() { return qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(); }
};

TEST_F(LiveTyping, EveryKeyOfAnAmountMovesGramsAndGaugesAndNoHistory)
{
    lay("200 g water\n100 g sucrose");
    const QString before = sugarShown();
    goTo(1, Model::AmountColumn);
    const std::pair<const char*, double> keys[] = {{"2", 202.0}, {"5", 225.0}, {"0", 450.0}};
    QString last = before;
    for (const auto& [key, mass_g] : keys) {
        type(key);
        EXPECT_DOUBLE_EQ(mass(), mass_g) << key;
        EXPECT_NE(sugarShown(), last) << key;
        last = sugarShown();
        EXPECT_EQ(history().count(), 0) << key;
        EXPECT_FALSE(window.isWindowModified()) << key;
    }
    EXPECT_EQ(textAt(1, Model::GramsColumn), "250\u202fg");
    EXPECT_EQ(lineText(), "250") << "the editor is the typist's";
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "200 g water\n250 g sucrose");
    EXPECT_EQ(history().count(), 1);
    EXPECT_EQ(sugarShown(), last);
    history().undo();
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose");
    EXPECT_EQ(sugarShown(), before);
}

TEST_F(LiveTyping, EscapePutsEverythingBack)
{
    lay("200 g water\n100 g sucrose");
    enter(0, Model::AmountColumn, "300");
    history().undo();
    const QString before = sugarShown();
    goTo(1, Model::AmountColumn);
    type("950");
    ASSERT_DOUBLE_EQ(mass(), 1150.0);
    press(Qt::Key_Escape);
    EXPECT_DOUBLE_EQ(mass(), 300.0);
    EXPECT_EQ(sugarShown(), before);
    EXPECT_EQ(textAt(1, Model::GramsColumn), "100\u202fg");
    EXPECT_FALSE(window.document().isTyping());
    EXPECT_TRUE(history().canRedo()) << "nothing was done, so that what was undone can be done again";
}

/// A command on rows works on what was typed, never on what is half typed.
TEST_F(LiveTyping, ARowCommandFinishesTheTypingFirst)
{
    lay("200 g water\n100 g sucrose");
    goTo(1, Model::AmountColumn);
    type("5");
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(rows(), "200 g water\n5 g sucrose\n5 g sucrose");
    EXPECT_EQ(history().count(), 2) << "the amount is a step of its own";
    history().setIndex(1);
    EXPECT_EQ(rows(), "200 g water\n5 g sucrose");
}

TEST_F(LiveTyping, ATextThatCouldNotBeReadStaysWhileItsNeighbourIsTyped)
{
    lay("200 g water");
    enter(0, Model::UnitColumn, "kilo?");
    ASSERT_EQ(textAt(0, Model::UnitColumn), "kilo?");
    goTo(0, Model::AmountColumn);
    type("25");
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_EQ(textAt(0, Model::UnitColumn), "kilo?");
}

TEST_F(LiveTyping, WhatCannotBeReadYetLeavesTheLastThatCould)
{
    lay("200 g water\n100 g sucrose");
    goTo(1, Model::AmountColumn);
    type("1");
    EXPECT_DOUBLE_EQ(mass(), 201.0);
    type("/");
    EXPECT_DOUBLE_EQ(mass(), 201.0);
    type("2");
    EXPECT_DOUBLE_EQ(mass(), 200.5);
    type("x");
    EXPECT_DOUBLE_EQ(mass(), 200.5);
    // What is refused at the end is ignored: the recipe is as before the typing.
    press(Qt::Key_Return);
    EXPECT_DOUBLE_EQ(mass(), 300.0);
    EXPECT_EQ(textAt(1, Model::AmountColumn), "1/2x");
    EXPECT_EQ(history().count(), 0);
    EXPECT_TRUE(problemShown().contains("100\u202fg")) << problemShown().toStdString();
}

TEST_F(LiveTyping, UnitsAndReadingsAreLiveToo)
{
    lay("200 g water\n100 g strawberry");
    goTo(0, Model::UnitColumn);
    type("kg");
    EXPECT_DOUBLE_EQ(mass(), 200100.0);
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_DOUBLE_EQ(mass(), 300.0);

    const double sugars = window.document().analysis().shares.sugars.value;
    goTo(1, Model::ReadingColumn);
    type("12");
    EXPECT_GT(window.document().analysis().shares.sugars.value, sugars);
    EXPECT_EQ(history().count(), 0);
    press(Qt::Key_Escape);
    EXPECT_EQ(window.document().analysis().shares.sugars.value, sugars);
}

TEST_F(LiveTyping, TheUnitOfAHalfTypedAmountIsForgottenWithIt)
{
    lay("200 g water");
    goTo(0, Model::AmountColumn);
    type("3 kg");
    EXPECT_DOUBLE_EQ(mass(), 3000.0);
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    EXPECT_DOUBLE_EQ(mass(), 3.0) << "grams, as the row has them";
}

TEST_F(LiveTyping, SavingWhileTypingCommits)
{
    lay("200 g water");
    answers.toSave = inFolder("typed.firn");
    goTo(0, Model::AmountColumn);
    type("75");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(rows(), "75 g water");
    EXPECT_FALSE(window.document().isTyping());
    Document saved(shippedCatalogue());
    ASSERT_TRUE(saved.open(answers.toSave));
    EXPECT_EQ(saved.recipe().components.front().rows.front().amount.value, 75.0);
}

TEST_F(LiveTyping, AnUndoFromElsewhereTakesNoHalfTypedNumberAlong)
{
    lay("200 g water\n100 g sucrose");
    enter(0, Model::AmountColumn, "300");
    goTo(1, Model::AmountColumn);
    type("5");
    ASSERT_DOUBLE_EQ(mass(), 305.0);
    history().undo();
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose");
    type("0");
    EXPECT_DOUBLE_EQ(mass(), 250.0) << "typing goes on";
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "200 g water\n50 g sucrose");
    history().undo();
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose");
}

TEST_F(LiveTyping, TheRecoveryCopyHoldsNoHalfTypedNumber)
{
    lay("200 g water");
    goTo(0, Model::AmountColumn);
    type("7");
    EXPECT_EQ(window.document().unsaved().recipe.components.front().rows.front().amount.value, 200.0);
}

TEST_F(LiveTyping, ABadReadingIsMarkedInItsOwnCell)
{
    lay("100 mL vodka");
    enter(0, Model::ReadingColumn, "12.5");
    EXPECT_FALSE(cell(0, Model::ReadingColumn).data(Model::ProblemRole).toString().isEmpty());
    EXPECT_EQ(cell(0, Model::AmountColumn).data(Model::ProblemRole).toString(), "");
    // What is wrong with the amount comes before it, and is marked there.
    enter(0, Model::AmountColumn, "0");
    EXPECT_FALSE(cell(0, Model::AmountColumn).data(Model::ProblemRole).toString().isEmpty());
    EXPECT_EQ(cell(0, Model::ReadingColumn).data(Model::ProblemRole).toString(), "");
}

TEST_F(LiveTyping, ANewRowIsLiveOnceItsNameMeansSomething)
{
    lay("200 g water\n100 g sucrose");
    const QString before = sugarShown();
    goTo(2, Model::IngredientColumn);
    const std::pair<const char*, double> keys[] = {{"5", 300.0}, {"0", 300.0}, {" g suc", 300.0}, {"rose", 350.0}};
    for (const auto& [key, mass_g] : keys) {
        type(key);
        EXPECT_DOUBLE_EQ(mass(), mass_g) << key;
    }
    EXPECT_NE(sugarShown(), before);
    EXPECT_EQ(textAt(2, Model::GramsColumn), "50\u202fg");
    EXPECT_EQ(table.rows().rowCount(), 3) << "two rows and the blank one, which is being typed into";
    EXPECT_EQ(lineText(), "50 g sucrose");
    EXPECT_EQ(history().count(), 0);
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(window.document().unsaved().recipe.components.front().rows.size(), 2U);
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose\n50 g sucrose");
    EXPECT_EQ(history().count(), 1);
    history().undo();
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose");
    EXPECT_EQ(sugarShown(), before);
}

TEST_F(LiveTyping, EscapeInANewRowPutsEverythingBack)
{
    lay("200 g water\n100 g sucrose");
    const QString before = sugarShown();
    goTo(2, Model::IngredientColumn);
    type("50 g sucrose");
    ASSERT_DOUBLE_EQ(mass(), 350.0);
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_DOUBLE_EQ(mass(), 300.0);
    EXPECT_EQ(sugarShown(), before);
    EXPECT_EQ(textAt(2, Model::GramsColumn), "");
    EXPECT_EQ(rows(), "200 g water\n100 g sucrose");
    EXPECT_FALSE(window.document().isTyping());
    // A field above the table is another typing, and knows nothing of the row.
    auto& overrun = *window.findChild<NumberField*>("overrun");
    overrun.setFocus();
    type("30");
    EXPECT_EQ(table.rows().rowCount(), 3);
    EXPECT_EQ(textAt(1, Model::GramsColumn), "100\u202fg");
}

TEST_F(LiveTyping, ANewRowInBetweenIsLiveInItsPlace)
{
    lay("200 g water\n100 g sucrose");
    goTo(1, Model::IngredientColumn);
    table.insertBlankRow();
    type("40 g fructose");
    EXPECT_DOUBLE_EQ(mass(), 340.0);
    EXPECT_EQ(textAt(0, Model::GramsColumn), "200\u202fg");
    EXPECT_EQ(textAt(1, Model::GramsColumn), "40\u202fg");
    EXPECT_EQ(textAt(2, Model::GramsColumn), "100\u202fg");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "200 g water\n40 g fructose\n100 g sucrose");
    EXPECT_EQ(history().count(), 1);
}

TEST_F(LiveTyping, SavingWhileANewRowIsTypedCommitsIt)
{
    lay("200 g water");
    answers.toSave = inFolder("new.firn");
    goTo(1, Model::IngredientColumn);
    type("50 g sucrose");
    press(Qt::Key_S, Qt::ControlModifier);
    Document saved(shippedCatalogue());
    ASSERT_TRUE(saved.open(answers.toSave));
    EXPECT_EQ(saved.recipe().components.front().rows.size(), 2U);
}

class LiveFields : public LiveTyping {
protected:
    NumberField& field(const char* name) { return *window.findChild<NumberField*>(QString::fromLatin1(name)); }
    void goToField(const char* name)
    {
        field(name).setFocus();
        field(name).selectAll();
    }
    double serveAt() { return window.document().analysis().conditions.serveAt.value; }
};

TEST_F(LiveFields, ARefusedTemperatureLeavesTheLastValidOneEverywhere)
{
    lay("750 g water\n250 g sucrose");
    goToField("serving");
    type("-10");
    press(Qt::Key_Return);
    ASSERT_EQ(serveAt(), -10.0);
    ASSERT_EQ(history().count(), 1);
    for (const char* refused : {"-300", "-9x", "1/0"}) {
        goToField("serving");
        type(refused);
        EXPECT_EQ(serveAt(), -10.0) << refused;
        EXPECT_FALSE(field("serving").problem().isEmpty()) << refused;
        table.setFocus();
        EXPECT_EQ(serveAt(), -10.0) << refused;
        EXPECT_EQ(recipe().serveAt_c, -10.0) << refused;
        EXPECT_EQ(history().count(), 1) << refused;
        EXPECT_EQ(field("serving").text(), QString::fromLatin1(refused)) << "to be corrected";
        goToField("serving");
        press(Qt::Key_Escape);
        EXPECT_EQ(field("serving").text(), "\u221210\u202f°C");
    }
}

TEST_F(LiveFields, EscapeInAFieldPutsBackWhatCounted)
{
    lay("750 g water\n250 g sucrose");
    const double before = serveAt();
    goToField("serving");
    type("-7");
    EXPECT_EQ(serveAt(), -7.0);
    press(Qt::Key_Escape);
    EXPECT_EQ(serveAt(), before);
    EXPECT_EQ(recipe().serveAt_c, std::nullopt);
    EXPECT_EQ(history().count(), 0);

    goToField("overrun");
    type("40");
    EXPECT_EQ(window.document().analysis().overrun_percent, 40.0);
    press(Qt::Key_Return);
    goToField("overrun");
    type("90");
    press(Qt::Key_Escape);
    EXPECT_EQ(window.document().analysis().overrun_percent, 40.0);
    EXPECT_EQ(history().count(), 1);
}

TEST_F(LiveFields, AHalfTypedNumberShowsButChangesNothingYet)
{
    lay("750 g water\n250 g sucrose");
    goToField("serving");
    type("-1");
    EXPECT_EQ(serveAt(), -1.0);
    type("1");
    EXPECT_EQ(serveAt(), -11.0);
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_FALSE(window.document().isModified());
    EXPECT_EQ(history().count(), 0);
    EXPECT_EQ(window.document().unsaved().recipe.serveAt_c, std::nullopt);
    table.setFocus();
    EXPECT_EQ(recipe().serveAt_c, -11.0);
    EXPECT_EQ(history().count(), 1);
    EXPECT_TRUE(window.document().isModified());
}

TEST_F(LiveFields, SavingAndClosingTakeWhatIsHalfTyped)
{
    lay("750 g water\n250 g sucrose");
    answers.toSave = inFolder("field.firn");
    goToField("overrun");
    type("35");
    press(Qt::Key_S, Qt::ControlModifier);
    {
        Document saved(shippedCatalogue());
        ASSERT_TRUE(saved.open(answers.toSave));
        EXPECT_EQ(saved.recipe().overrun_percent, 35.0);
    }
    EXPECT_FALSE(window.document().isModified());
    goToField("freezer");
    type("-21");
    answers.unsaved = Questions::Unsaved::Cancel;
    window.close();
    EXPECT_EQ(answers.unsavedAsked, 1) << "what is half typed is not saved yet";
    EXPECT_EQ(recipe().freezerAt_c, -21.0);
    EXPECT_FALSE(window.document().isTyping());
}

TEST_F(LiveFields, AnotherEditAndUndoFindTheHalfTypedNumberDone)
{
    lay("750 g water\n250 g sucrose");
    goToField("overrun");
    type("35");
    changeAmount(window.document(), {0, 0}, {700, Unit::Gram});
    EXPECT_EQ(window.document().analysis().overrun_percent, 35.0);
    EXPECT_EQ(history().count(), 2);
    goToField("serving");
    type("-9");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(recipe().serveAt_c, std::nullopt) << "undo takes back what was typed last";
    EXPECT_EQ(history().index(), 2);
}

/// It is of the component that it was typed for.
TEST_F(LiveFields, AHalfTypedNumberStaysWithItsComponent)
{
    lay("750 g water\n250 g sucrose");
    addComponent(window.document(), "sauce");
    table.rows().showComponent(0);
    goToField("overrun");
    type("35");
    table.rows().showComponent(1);
    table.setFocus();
    EXPECT_EQ(overrunOf(recipe(), 0), 35.0);
    EXPECT_NE(overrunOf(recipe(), 1), 35.0);
}

TEST_F(LiveFields, ARefusalIsSaidAsLongAsAFieldAboveTheTableHoldsIt)
{
    lay("750 g water\n250 g sucrose");
    answers.toSave = inFolder("never.firn");
    goToField("serving");
    type("cold");
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_FALSE(messageShown().isEmpty());
    enter(0, Model::AmountColumn, "700");
    EXPECT_FALSE(messageShown().isEmpty()) << "another edit does not mend it";
    goToField("serving");
    type("-12");
    press(Qt::Key_Return);
    EXPECT_EQ(messageShown(), "");
}

}  // namespace
}  // namespace firn::app
