#include "bench.h"

#include "bench/row_clipboard.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QSignalSpy>
#include <QTest>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Rows : public Bench {
protected:
    static void clip(const char* text) { QApplication::clipboard()->setText(QString::fromUtf8(text)); }
    void select(int first, int last)
    {
        goTo(first, 0);
        table.selectionModel()->select(
            QItemSelection(cell(first, 0), cell(last, Model::ColumnCount - 1)), QItemSelectionModel::ClearAndSelect);
    }
};

TEST_F(Rows, AReadingRescalesTheFruitAndIsOneStep)
{
    lay("500 g pear purée\n100 g sugar");
    const double byTable = window.document().analysis().shares.sugars.value;
    for (const QString text : {"14,5", "14.5 °Bx", "14.5brix"}) {
        enter(0, Model::ReadingColumn, text);
        EXPECT_EQ(window.document().recipe().components[0].rows[0].measuredBrix, 14.5) << text.toStdString();
    }
    EXPECT_EQ(history().count(), 1);
    EXPECT_EQ(history().undoText().toStdString(), "Change reading of Pear purée");
    EXPECT_NE(window.document().analysis().shares.sugars.value, byTable);
    enter(0, Model::ReadingColumn, "sweet");
    EXPECT_EQ(window.document().recipe().components[0].rows[0].measuredBrix, 14.5);
    goTo(0, Model::ReadingColumn);
    press(Qt::Key_F2);
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_FALSE(window.document().recipe().components[0].rows[0].measuredBrix.has_value());
    EXPECT_DOUBLE_EQ(window.document().analysis().shares.sugars.value, byTable);
}

TEST_F(Rows, CopyIsTextForAnyProgram)
{
    lay("250 g water\n1 1/2 cups sugar\n20 g lemon juice");
    select(0, 1);
    press(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text().trimmed(), "250 g water\n1 1/2 cups sugar");
}

TEST_F(Rows, CutAndPasteBringsThemBackInOneStepEach)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    select(0, 1);
    press(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(rows(), "20 g lemon juice");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(rows(), "20 g lemon juice\n250 g water\n100 g sugar");
    EXPECT_EQ(history().count(), 2);
}

TEST_F(Rows, PasteReadsLinesAsAPersonWritesThem)
{
    clip("250 g water\n\n1,5 l milk\r\n2 tbsp lemon juice\n");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(rows(), "250 g water\n1.5 L milk\n2 tbsp lemon juice");
    EXPECT_EQ(history().count(), 1);
}

TEST_F(Rows, PasteReadsTables)
{
    const char* tables[] = {
        "ingredient,amount,unit\nwater,250,g\nsugar,100,g\n", "water\t250\tg\nsugar\t100\tg\n", "water;250;g\nsugar;100;g\n"};
    for (const char* text : tables) {
        lay("");
        clip(text);
        press(Qt::Key_V, Qt::ControlModifier);
        EXPECT_EQ(rows(), "250 g water\n100 g sugar") << text;
    }
}

TEST_F(Rows, CommasInsideALineMakeNoTable)
{
    const auto recipe = recipeFromPastedText("250 g sugar, fine\n1,5 l milk\n");
    ASSERT_TRUE(recipe);
    ASSERT_EQ(recipe->components.front().rows.size(), 2U);
    EXPECT_EQ(recipe->components.front().rows[1].amount, (Amount{1.5, Unit::Litre}));
}

TEST_F(Rows, WholeRecipePastedOnAnEmptyBenchBringsItsTitleInOneStep)
{
    clip("Cucumber and gin ice\n\n500 g cucumber\n60 ml gin\n");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(recipe().title, "Cucumber and gin ice");
    EXPECT_EQ(rowCount(), 2U);
    EXPECT_EQ(history().count(), 1);
}

// One awkward line used to refuse the whole paste.
TEST_F(Rows, PasteMarksWhatItCannotReadAndTakesTheRest)
{
    clip("Rhubarb granita\n300 g rhubarb\n-250 g sugar\n1,000 g water\n1-2 tbsp rum\n\nMethod:\nBoil it.\nChurn it.\n");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(recipe().title, "Rhubarb granita");
    EXPECT_EQ(recipe().notes, "Boil it.\nChurn it.");
    ASSERT_EQ(rowCount(), 4U);
    EXPECT_EQ(recipe().components[0].rows[1].ingredient, "-250 g sugar");
    EXPECT_EQ(recipe().components[0].rows[3].note, "mean of 1 and 2 tbsp");
    EXPECT_EQ(cell(0, 0).data(Model::ProblemRole).toString(), QString());
    EXPECT_EQ(cell(1, 0).data(Model::ProblemRole).toString(), "An amount cannot be negative.");
    EXPECT_TRUE(cell(2, 0).data(Model::ProblemRole).toString().contains(QStringLiteral("1,000")));
    EXPECT_EQ(cell(3, 0).data(Model::ProblemRole).toString(), QString());
    EXPECT_EQ(messageShown(), "4 ingredients read; the method was added to the notes; 2 lines need a look.");
    EXPECT_EQ(history().count(), 1);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rowCount(), 0U);
    EXPECT_EQ(recipe().notes, "");
}

TEST_F(Rows, PasteOfSeveralPartsMakesComponents)
{
    lay("250 g water");
    goTo(0, 0);
    clip("100 g sugar\n\nFor the cream:\n200 g double cream\n");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(rows(), "250 g water\n100 g sugar");
    ASSERT_EQ(recipe().components.size(), 2U);
    EXPECT_EQ(recipe().components[1].name, "cream");
    EXPECT_EQ(recipe().components[1].rows.size(), 1U);
    EXPECT_EQ(messageShown(), "2 ingredients read.");
    EXPECT_EQ(history().count(), 1);
}

TEST_F(Rows, PasteWithoutAnyAmountIsRefused)
{
    lay("250 g water");
    clip("See you on Thursday.");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(messageShown(), "No ingredient here has an amount. Write lines such as 250 g water.");
    EXPECT_EQ(rows(), "250 g water");
}

TEST_F(Rows, PasteOfNothingSaysSo)
{
    lay("250 g water");
    clip("   ");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_FALSE(messageShown().isEmpty());
    EXPECT_EQ(history().count(), 0);
}

TEST_F(Rows, DeleteTakesTheSelectedRowsAndOneUndoBringsThemBack)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    select(1, 2);
    press(Qt::Key_Delete);
    EXPECT_EQ(rows(), "250 g water");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows(), "250 g water\n100 g sugar\n20 g lemon juice");
}

TEST_F(Rows, DeleteInAnEditorTakesALetter)
{
    lay("250 g water");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_F2);
    press(Qt::Key_Home);
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "50 g water");
}

TEST_F(Rows, ControlDDuplicates)
{
    lay("250 g water\n100 g sugar");
    goTo(0, 0);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(rows(), "250 g water\n250 g water\n100 g sugar");
    EXPECT_EQ(history().undoText(), "Duplicate Water");
}

TEST_F(Rows, OnlyTheCopiesAreSelectedAfterwards)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    select(0, 1);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(table.selectedRows(), (std::vector<std::size_t>{2, 3}));
    press(Qt::Key_Delete);
    EXPECT_EQ(rows(), "250 g water\n100 g sugar\n20 g lemon juice");
}

TEST_F(Rows, ControlAndArrowsMoveTheRowAndTheCaretWithIt)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    goTo(0, Model::AmountColumn);
    press(Qt::Key_Down, Qt::ControlModifier);
    press(Qt::Key_Down, Qt::ControlModifier);
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(rows(), "100 g sugar\n20 g lemon juice\n250 g water");
    EXPECT_EQ(table.currentIndex(), cell(2, Model::AmountColumn));
    press(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(rows(), "100 g sugar\n250 g water\n20 g lemon juice");
}

TEST_F(Rows, DraggingTheHandleMovesTheRow)
{
    lay("250 g water\n100 g sugar\n20 g lemon juice");
    table.verticalHeader()->moveSection(2, 0);
    EXPECT_EQ(rows(), "20 g lemon juice\n250 g water\n100 g sugar");
    EXPECT_EQ(table.verticalHeader()->visualIndex(0), 0);
    EXPECT_EQ(history().undoText(), "Move Lemon juice");
}

TEST_F(Rows, InsertOpensABlankRowAboveThatVanishesUnlessUsed)
{
    lay("250 g water\n100 g sugar");
    goTo(1, 0);
    press(Qt::Key_Insert);
    EXPECT_EQ(table.rows().blankRow(), 1);
    type("30 g gin");
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), "250 g water\n30 g gin\n100 g sugar");
    EXPECT_EQ(history().count(), 1);
    goTo(0, 0);
    QApplication::processEvents();
    EXPECT_EQ(table.rows().blankRow(), 3);
    EXPECT_EQ(history().count(), 1);
}

// Every edit reaches the model as small, announced changes; the tester aborts on the first lie.
TEST_F(Rows, ModelTellsTheTruthThroughEveryEdit)
{
    const QAbstractItemModelTester tester(&table.rows(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    lay("250 g water\n100 g sugar\n20 g lemon juice\n5 g salt");
    Document& document = window.document();
    table.rows().putBlankRow(2);
    insertRows(document, {0, 0}, {{"gin", {30, Unit::Millilitre}, {}, {}}});
    insertRows(document, {0, 5}, {{"milk", {30, Unit::Gram}, {}, {}}, {"cream", {30, Unit::Gram}, {}, {}}});
    removeRows(document, 0, {1, 2, 3});
    moveRow(document, {0, 0}, 3);
    duplicateRows(document, 0, {0, 1, 2, 3});
    addComponent(document, "cream");
    table.rows().showComponent(1);
    while (history().canUndo()) {
        history().undo();
        EXPECT_EQ(table.rows().rowCount(), int(recipe().components.at(table.rows().component()).rows.size()) + 1);
    }
    while (history().canRedo())
        history().redo();
    window.document().startWith({});
    EXPECT_EQ(table.rows().rowCount(), 1);
}

TEST_F(Rows, OneEditIsOneAnalysisAndOneChangeOfTheTable)
{
    lay("250 g water\n100 g sugar");
    QSignalSpy analysed(&window.document(), &Document::changed);
    QSignalSpy changed(&table.rows(), &QAbstractItemModel::dataChanged);
    changeAmount(window.document(), {0, 0}, {300, Unit::Gram});
    EXPECT_EQ(analysed.count(), 1);
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(Rows, MarkupInANameIsText)
{
    lay("250 g <b>water</b>");
    EXPECT_EQ(textAt(0, Model::IngredientColumn), "<b>water</b>");
    goTo(0, 0);
    EXPECT_TRUE(problemShown().contains("<b>water</b>"));
    EXPECT_TRUE(cell(0, Model::IngredientColumn).data(Qt::ToolTipRole).toString().contains("&lt;b&gt;water"));
}

}  // namespace
}  // namespace firn::app
