// Names as they are typed into the table: suggestions, general words, unknown ones, and where the caret goes.
#include "bench.h"

#include "bench/recipe_notices.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Names : public Bench {
protected:
    const Row& firstRow() { return recipe().components.front().rows.front(); }
    QListWidget* list() { return window.findChild<QListWidget*>(QString(), Qt::FindDirectChildrenOnly); }
    RecipeNotices& notices() { return *window.findChild<RecipeNotices*>(); }
    /// The notice's buttons, without the one that dismisses it.
    QList<QPushButton*> links()
    {
        QList<QPushButton*> found;
        for (auto* button : notices().findChildren<QPushButton*>())
            if (button->objectName() != QLatin1String("dismissMessage") && button->isVisible())
                found << button;
        return found;
    }
};

TEST_F(Names, EnterTakesTheMarkedSuggestionAndTheAmountBeforeIt)
{
    type("1 1/2 cups strawb");
    ASSERT_TRUE(list() && list()->isVisible());
    EXPECT_EQ(list()->currentRow(), 0);
    press(Qt::Key_Return);
    EXPECT_EQ(firstRow().ingredient, "Strawberry");
    EXPECT_EQ(firstRow().amount, (Amount{1.5, Unit::Cup}));
}

TEST_F(Names, WhatMeansSomethingStaysAsItWasTyped)
{
    for (const char* text : {"300 g whipping cream 35%", "10 g milk", "20 g water"}) {
        type(text);
        EXPECT_TRUE(!list() || !list()->isVisible() || list()->currentRow() < 0) << text;
        press(Qt::Key_Return);
    }
    EXPECT_EQ(rows(), "300 g whipping cream 35%\n10 g milk\n20 g water");
    EXPECT_EQ(window.document().analysis().components.front().front().ingredientId, "cream-35");
}

TEST_F(Names, EscapeKeepsWhatWasTyped)
{
    type("10 g strawb");
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    EXPECT_EQ(firstRow().ingredient, "strawb");
}

TEST_F(Names, EnterGoesToTheAmountWhereThereIsNone)
{
    type("vodka");
    press(Qt::Key_Return);
    EXPECT_EQ(table.currentIndex(), cell(0, Model::AmountColumn));
    type("40");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "40 g vodka");
    type("water");
    press(Qt::Key_Return);
    type("250");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "40 g vodka\n250 g water");
}

TEST_F(Names, AGeneralWordShowsWhatItIsTakenFor)
{
    lay("100 g cream\n50 g heavy cream");
    EXPECT_EQ(textAt(0, Model::IngredientColumn), "cream (Heavy cream, 36 % fat)");
    EXPECT_EQ(cell(0, Model::IngredientColumn).data(Qt::EditRole).toString(), "cream");
    EXPECT_TRUE(cell(0, Model::IngredientColumn).data(Qt::ToolTipRole).toString().contains("choose another"));
    EXPECT_EQ(textAt(1, Model::IngredientColumn), "heavy cream");
}

TEST_F(Names, UnknownNamesAreShownWithTheirRowAndThreeLinks)
{
    lay("250 g water\n100 g sugr\n20 g unicornberry");
    EXPECT_TRUE(notices().sentence().contains("Row 2")) << notices().sentence().toStdString();
    EXPECT_TRUE(notices().sentence().contains("sugr"));
    ASSERT_EQ(links().size(), 3);
    const QString chosen = links().front()->text();
    EXPECT_EQ(chosen, "Sugar (sucrose)");
    QTest::mouseClick(links().front(), Qt::LeftButton);
    EXPECT_EQ(window.document().analysis().components.front()[1].ingredientId, "sucrose");
    EXPECT_EQ(history().count(), 1);
    history().undo();
    EXPECT_EQ(rows(), "250 g water\n100 g sugr\n20 g unicornberry");
}

TEST_F(Names, ANewRecipeBeginsInTheTableWhereverTheFocusWas)
{
    auto* title = window.findChild<QLineEdit*>(QStringLiteral("title"));
    title->setFocus();
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_EQ(QApplication::focusWidget(), &table);
    EXPECT_EQ(table.currentIndex(), cell(0, Model::IngredientColumn));
    title->setFocus();
    type("Pear ice");
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), &table);
    type("500 g water");
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().title, "Pear ice");
    EXPECT_EQ(rows(), "500 g water");
}

}  // namespace
}  // namespace firn::app
