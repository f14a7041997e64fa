#include "bench.h"

#include <QApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Typing : public Bench {};

TEST_F(Typing, CaretWaitsInTheBlankRow)
{
    EXPECT_EQ(QApplication::focusWidget(), &table);
    EXPECT_EQ(table.currentIndex(), cell(0, Model::IngredientColumn));
    EXPECT_EQ(cell(0, Model::IngredientColumn).data(Model::PlaceholderRole).toString(), "Type an ingredient, or paste a recipe");
}

TEST_F(Typing, WholeLineInTheBlankRowIsARow)
{
    type("1 1/2 cups granulated sugar");
    press(Qt::Key_Return);
    ASSERT_EQ(rowCount(), 1U);
    const Row& row = recipe().components.front().rows.front();
    EXPECT_EQ(row.ingredient, "granulated sugar");
    EXPECT_EQ(row.amount, (Amount{1.5, Unit::Cup}));
    EXPECT_EQ(textAt(0, Model::AmountColumn), "1 1/2");
    // The caret waits for the next ingredient.
    EXPECT_EQ(table.currentIndex(), cell(1, Model::IngredientColumn));
}

TEST_F(Typing, NameThenTabThenAmountThenTabThenUnit)
{
    type("water");
    press(Qt::Key_Tab);
    type("0,5");
    press(Qt::Key_Tab);
    type("l");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "0.5 L water");
    EXPECT_EQ(table.currentIndex(), cell(1, Model::UnitColumn));
}

TEST_F(Typing, AnywhereInTheBlankRowStartsAnIngredient)
{
    lay("250 g water");
    goTo(1, Model::AmountColumn);
    type("100 g sugar");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "250 g water\n100 g sugar");
}

TEST_F(Typing, AmountsTakeFractionsBothMarksAndUnits)
{
    lay("250 g water");
    const std::pair<const char*, Amount> cases[] = {
        {"1 1/2", {1.5, Unit::Gram}},
        {"1,5", {1.5, Unit::Gram}},
        {"1.5", {1.5, Unit::Gram}},
        {"250 ml", {250, Unit::Millilitre}},
        {"2 cups", {2, Unit::Cup}},
    };
    for (const auto& [text, amount] : cases) {
        enter(0, Model::AmountColumn, text);
        EXPECT_EQ(recipe().components.front().rows.front().amount, amount) << text;
        history().undo();
    }
}

// A spin box would turn a typed 1.5 into 15 here.
TEST_F(Typing, PointIsADecimalMarkInAGermanLocaleToo)
{
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    lay("250 g water");
    enter(0, Model::AmountColumn, "1.5");
    EXPECT_EQ(recipe().components.front().rows.front().amount.value, 1.5);
    EXPECT_EQ(textAt(0, Model::AmountColumn), "1,5");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

TEST_F(Typing, UnreadableAmountStaysInItsCellWithASentenceAndBlocksNothing)
{
    lay("250 g water\n100 g sugar");
    enter(0, Model::AmountColumn, "1/0");
    EXPECT_EQ(rows(), "250 g water\n100 g sugar");
    EXPECT_EQ(textAt(0, Model::AmountColumn), "1/0");
    const QString problem = cell(0, Model::AmountColumn).data(Model::ProblemRole).toString();
    EXPECT_FALSE(problem.isEmpty());
    EXPECT_EQ(cell(0, Model::AmountColumn).data(Qt::ToolTipRole).toString(), problem);
    EXPECT_EQ(problemShown(), problem);

    enter(1, Model::AmountColumn, "120");
    EXPECT_EQ(rows(), "250 g water\n120 g sugar");

    enter(0, Model::AmountColumn, "260");
    EXPECT_EQ(rows(), "260 g water\n120 g sugar");
    EXPECT_EQ(problemShown(), "");
}

TEST_F(Typing, UnreadableAmountIsToldBeforeOtherProblemsWithWhatCountsInstead)
{
    lay("5 g unicorn dust\n20 g sugar");
    for (const char* text : {"abc", "-5", "NaN", "1e308"}) {
        enter(1, Model::AmountColumn, text);
        goTo(0, Model::IngredientColumn);
        EXPECT_TRUE(problemShown().contains("20\u202fg counts")) << text << ": " << problemShown().toStdString();
    }
    enter(0, Model::AmountColumn, "xyz");
    goTo(1, Model::AmountColumn);
    EXPECT_TRUE(problemShown().contains("20\u202fg counts")) << "the caret's own comes first: " << problemShown().toStdString();
}

TEST_F(Typing, EscapeInTheEditorPutsBackWhatCounts)
{
    lay("250 g water");
    enter(0, Model::AmountColumn, "abc");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_F2);
    press(Qt::Key_Escape);
    EXPECT_EQ(textAt(0, Model::AmountColumn), "250");
    EXPECT_EQ(problemShown(), "");
}

TEST_F(Typing, WholeLineOverANameTakesAmountAndNameInOneStep)
{
    lay("250 g water\n100 g sugar");
    enter(0, Model::IngredientColumn, "20 g sugar");
    EXPECT_EQ(rows(), "20 g sugar\n100 g sugar");
    EXPECT_EQ(history().count(), 1);
    history().undo();
    EXPECT_EQ(rows(), "250 g water\n100 g sugar");
    enter(0, Model::IngredientColumn, "unicorn dust");
    EXPECT_EQ(rows(), "250 g unicorn dust\n100 g sugar");
}

TEST_F(Typing, UnreadableTextIsTakenUpAgainWhenTheCellIsEdited)
{
    lay("250 g water");
    enter(0, Model::AmountColumn, "2x5");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_F2);
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), "2x5");
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_EQ(textAt(0, Model::AmountColumn), "250");
}

TEST_F(Typing, UnreadableLineStaysInTheBlankRow)
{
    type("1/0 cups sugar");
    press(Qt::Key_Return);
    EXPECT_EQ(rowCount(), 0U);
    EXPECT_EQ(textAt(0, Model::IngredientColumn), "1/0 cups sugar");
    EXPECT_FALSE(problemShown().isEmpty());
}

TEST_F(Typing, UnknownUnitIsRefusedInWords)
{
    lay("250 g water");
    enter(0, Model::UnitColumn, "furlong");
    EXPECT_EQ(rows(), "250 g water");
    EXPECT_TRUE(problemShown().contains("furlong")) << problemShown().toStdString();
}

TEST_F(Typing, UnknownIngredientStaysAsTypedAndIsMarked)
{
    type("5 g unicorn dust");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "5 g unicorn dust");
    const QModelIndex name = cell(0, Model::IngredientColumn);
    EXPECT_TRUE(name.data(Qt::FontRole).value<QFont>().italic());
    EXPECT_TRUE(name.data(Qt::ToolTipRole).toString().contains("unicorn dust"));
    EXPECT_FALSE(problemShown().isEmpty());
}

TEST_F(Typing, EmptyNameIsRefusedAndTheOldOneKept)
{
    lay("250 g water");
    goTo(0, Model::IngredientColumn);
    press(Qt::Key_F2);
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Backspace);
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "250 g water");
    EXPECT_FALSE(problemShown().isEmpty());
}

TEST_F(Typing, SuggestionsKeepTheAmountThatStandsBefore)
{
    type("1 1/2 cups strawb");
    const auto* list = window.findChild<QListWidget*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_TRUE(list && list->isVisible());
    press(Qt::Key_Down);
    const QString name = list->currentItem()->text();
    press(Qt::Key_Return);
    ASSERT_EQ(rowCount(), 1U);
    EXPECT_EQ(recipe().components.front().rows.front().amount, (Amount{1.5, Unit::Cup}));
    EXPECT_TRUE(name.startsWith(QString::fromStdString(recipe().components.front().rows.front().ingredient))) << name.toStdString();
}

TEST_F(Typing, SuggestionsAreInSightUnderALongRecipe)
{
    std::string lines;
    for (int row = 0; row < 40; ++row)
        lines += "10 g water\n";
    lay(lines);
    type("300 g strawb");
    const auto* list = window.findChild<QListWidget*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_TRUE(list && list->isVisible());
    const QRect place = list->geometry();
    EXPECT_TRUE(window.rect().contains(place)) << place.top() << " to " << place.bottom();
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(0)).center());
    press(Qt::Key_Return);
    const Row& row = recipe().components.front().rows.back();
    EXPECT_EQ(row.amount, (Amount{300, Unit::Gram}));
    EXPECT_TRUE(QString::fromStdString(row.ingredient).startsWith("Strawberr")) << row.ingredient;
}

TEST_F(Typing, WithoutAMarkedSuggestionTheTextStaysTheTypists)
{
    type("strawb");
    press(Qt::Key_Escape);  // takes the list away
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().components.front().rows.front().ingredient, "strawb");
}

TEST_F(Typing, EscapeClosesTheSuggestionsAndThenTheEditor)
{
    type("straw");
    const auto* list = window.findChild<QListWidget*>(QString(), Qt::FindDirectChildrenOnly);
    press(Qt::Key_Escape);
    EXPECT_FALSE(list->isVisible());
    EXPECT_NE(QApplication::focusWidget(), &table);
    press(Qt::Key_Escape);
    EXPECT_EQ(QApplication::focusWidget(), &table);
    EXPECT_EQ(rowCount(), 0U);
}

TEST_F(Typing, ChangeFromElsewhereLeavesAnOpenEditorAlone)
{
    lay("250 g water");
    goTo(0, Model::AmountColumn);
    type("30");
    changeAmount(window.document(), {0, 0}, {999, Unit::Gram});
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), "30");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "30 g water");
}

TEST_F(Typing, EditingWithoutAChangeMakesNoStep)
{
    lay("1 1/2 cups water");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_F2);
    press(Qt::Key_Return);
    EXPECT_EQ(history().count(), 0);
}

TEST_F(Typing, TabLeavesTheTableAfterItsLastCell)
{
    goTo(0, Model::IngredientColumn);
    press(Qt::Key_Tab);
    EXPECT_NE(QApplication::focusWidget(), &table);
}

}  // namespace
}  // namespace firn::app
