#include "bench.h"

#include "bench/message_bar.h"
#include "catalogue/catalogue_model.h"
#include "catalogue/catalogue_window.h"
#include "catalogue/ingredient_form.h"
#include "document/edits.h"
#include "solution/alcohol_by_volume.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QTest>
#include <QToolButton>

namespace firn::app {
namespace {

class CatalogueOnTheBench : public Bench {
protected:
    CatalogueOnTheBench()
        : catalogue(pantry, answers)
    {
        lay("250 g water");
        catalogue.openFor(window);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&catalogue));
    }

    template <class Widget>
    Widget& part(const char* name)
    {
        auto* widget = catalogue.findChild<Widget*>(QLatin1String(name));
        EXPECT_TRUE(widget) << name;
        return *widget;
    }
    void click(const char* name)
    {
        ASSERT_TRUE(part<QPushButton>(name).isVisible()) << name;
        part<QPushButton>(name).click();
        QApplication::processEvents();
    }
    /// Text of a label, with plain blanks; empty where it is not shown.
    QString shown(const char* name)
    {
        for (const QLabel* label : catalogue.findChildren<QLabel*>(QLatin1String(name)))
            if (label->isVisible())
                return label->text().replace(QChar(0x202F), u' ');
        return {};
    }
    /// Of all labels that are shown.
    QString sentences()
    {
        QStringList texts;
        for (const QLabel* label : catalogue.findChildren<QLabel*>())
            if (label->isVisible())
                texts << label->text();
        return texts.join(u'\n').replace(QChar(0x202F), u' ');
    }
    void search(const QString& text)
    {
        part<QLineEdit>("search").clear();
        QTest::keyClicks(&part<QLineEdit>("search"), text);
    }
    void write(const char* field, const QString& text)
    {
        auto& line = part<QLineEdit>(field);
        line.setFocus();
        line.selectAll();
        if (text.isEmpty())
            QTest::keyClick(&line, Qt::Key_Delete);
        QTest::keyClicks(&line, text);
    }
    void add(const char* constituent, const QString& grams)
    {
        auto& others = part<QComboBox>("addConstituent");
        const auto known = constituentNamed(constituent);
        const int choice = others.findData(int(*known));
        ASSERT_GT(choice, 0) << constituent;
        others.setCurrentIndex(choice);
        emit others.activated(choice);
        QApplication::processEvents();  // the new line comes into sight
        write(constituent, grams);
    }
    void tick(const char* button, const QString& allergen)
    {
        for (QAction* action : part<QToolButton>(button).menu()->actions())
            if (action->text() == allergen)
                action->trigger();
    }
    QAbstractItemModel& list() { return *part<QListView>("found").model(); }
    QString listed(int row) { return list().index(row, 0).data().toString(); }
    QString message() { return catalogue.messages().isVisible() ? catalogue.messages().sentence() : QString(); }
    void take(const QString& choice)
    {
        for (QPushButton* button : catalogue.messages().findChildren<QPushButton*>())
            if (button->text() == choice && button->isVisible()) {
                button->click();
                QApplication::processEvents();
                return;
            }
        FAIL() << "no choice " << choice.toStdString();
    }
    /// An own ingredient as a person would make it.
    void describe(const QString& name)
    {
        click("new");
        write("name", name);
        add("sucrose", QStringLiteral("62,5"));
        write("water", QStringLiteral("37.5 g"));
        click("keep");
    }

    CatalogueWindow catalogue;
};

TEST_F(CatalogueOnTheBench, FindsInSpiteOfASlip)
{
    search(QStringLiteral("strawbery"));
    EXPECT_EQ(listed(0), QStringLiteral("Strawberry"));
    EXPECT_EQ(shown("detailName"), QStringLiteral("Strawberry"));
    EXPECT_TRUE(shown("detailSpread").startsWith(QStringLiteral("water ± "))) << shown("detailSpread").toStdString();
    EXPECT_TRUE(shown("detailSource").contains(QStringLiteral("USDA"))) << shown("detailSource").toStdString();
    EXPECT_EQ(shown("count"), QStringLiteral("%1 of %2").arg(list().rowCount()).arg(shippedCatalogue().all().size()));
}

TEST_F(CatalogueOnTheBench, ModelKeepsItsPromises)
{
    const QAbstractItemModelTester tester(&list(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    search(QStringLiteral("milk"));
    describe(QStringLiteral("Quay milk"));
    search(QStringLiteral("zzzz"));
    EXPECT_EQ(list().rowCount(), 0);
}

TEST_F(CatalogueOnTheBench, TypingGoesToTheSearchAndArrowsToTheList)
{
    part<QListView>("found").setFocus();
    QTest::keyClicks(&part<QListView>("found"), QStringLiteral("pea"));
    EXPECT_EQ(part<QLineEdit>("search").text(), QStringLiteral("pea"));
    press(Qt::Key_Down);
    EXPECT_EQ(part<QListView>("found").currentIndex().row(), 1);
    EXPECT_EQ(shown("detailName"), listed(1));
    EXPECT_TRUE(part<QLineEdit>("search").hasFocus());
}

TEST_F(CatalogueOnTheBench, EnterPutsItInTheRecipeAndEscapeCloses)
{
    search(QStringLiteral("strawbery"));
    press(Qt::Key_Return);
    ASSERT_EQ(rowCount(), 2U);
    EXPECT_EQ(recipe().components.front().rows.back().ingredient, "Strawberry");
    EXPECT_TRUE(message().startsWith(QStringLiteral("“Strawberry” is in"))) << message().toStdString();
    EXPECT_EQ(history().undoText(), QStringLiteral("Add Strawberry"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(catalogue.isVisible());
}

TEST_F(CatalogueOnTheBench, FiltersByGroupAndAllergens)
{
    part<QComboBox>("group").setCurrentText(QStringLiteral("Dairy"));
    const int dairy = list().rowCount();
    EXPECT_GT(dairy, 10);
    tick("freeOf", QStringLiteral("milk"));
    EXPECT_LT(list().rowCount(), dairy);
    part<QComboBox>("group").setCurrentIndex(0);
    tick("contains", QStringLiteral("nuts"));
    const int withoutMilk = list().rowCount();
    EXPECT_GT(withoutMilk, 0);
    tick("freeOf", QStringLiteral("milk"));
    EXPECT_GE(list().rowCount(), withoutMilk);
    EXPECT_EQ(part<QToolButton>("contains").text(), QStringLiteral("Contains nuts"));
    part<QToolButton>("clearFilters").click();
    EXPECT_EQ(list().rowCount(), int(shippedCatalogue().all().size()));
}

TEST_F(CatalogueOnTheBench, NothingFoundIsSaidAndBecomesTheNewName)
{
    search(QStringLiteral("quay ferox"));
    EXPECT_FALSE(shown("detailHint").isEmpty());
    EXPECT_FALSE(part<QPushButton>("put").isVisible());
    press(Qt::Key_Return);
    EXPECT_EQ(rowCount(), 1U);
    click("new");
    EXPECT_EQ(part<QLineEdit>("name").text(), QStringLiteral("quay ferox"));
}

TEST_F(CatalogueOnTheBench, NewIngredientTakesBothDecimalMarksAndCountsAtOnce)
{
    lay("100 g quay syrup");
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 0.0);
    describe(QStringLiteral("Quay syrup"));
    ASSERT_EQ(pantry.own().size(), 1U) << shown("formProblem").toStdString();
    const Amounts& amounts = pantry.own().front().composition.per100g;
    EXPECT_DOUBLE_EQ(amounts[Constituent::Sucrose].value, 62.5);
    EXPECT_DOUBLE_EQ(amounts[Constituent::Water].value, 37.5);
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 100.0);
    EXPECT_EQ(shown("detailOrigin"), QStringLiteral("own · no group"));
    EXPECT_EQ(message(), QStringLiteral("“Quay syrup” is kept."));
}

TEST_F(CatalogueOnTheBench, CopyIsKeptBesideTheOriginalAndIsTypedInRecipes)
{
    search(QStringLiteral("strawberry"));
    click("editCopy");
    write("name", QStringLiteral("Weir strawberry"));
    click("keep");
    ASSERT_EQ(pantry.own().size(), 1U) << shown("formProblem").toStdString();
    const Ingredient& copy = pantry.own().front();
    const Ingredient& original = *shippedCatalogue().find("strawberry");
    EXPECT_EQ(copy.composition, original.composition);
    EXPECT_EQ(copy.measures, original.measures);
    EXPECT_TRUE(copy.synonyms.empty());
    EXPECT_EQ(pantry.catalogue().find("strawberries")->id, original.id);
    catalogue.close();

    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    table.setFocus();
    table.goToBlankRow();
    type(QStringLiteral("100 g weir straw"));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(rows(), QStringLiteral("250 g water\n100 g Weir strawberry"));
    EXPECT_NEAR(window.document().analysis().mass.value, 350.0, closesWithin.value);
}

TEST_F(CatalogueOnTheBench, OpenRecipesFollowAnEdit)
{
    describe(QStringLiteral("Quay syrup"));
    lay("100 g quay syrup");
    const double before = percent(window.document().analysis().shares.sugars);
    click("edit");
    write("sucrose", QStringLiteral("50"));
    EXPECT_EQ(shown("total"), QStringLiteral("87.5 g of 100 g: 12.5 g are missing."));
    click("keep");
    EXPECT_TRUE(shown("compositionFault").startsWith(QStringLiteral("12.5 g are missing.")))
        << shown("compositionFault").toStdString();
    EXPECT_DOUBLE_EQ(percent(window.document().analysis().shares.sugars), before);
    click("restIsWater");
    EXPECT_EQ(shown("total"), QStringLiteral("100.0 g of 100 g: complete."));
    click("keep");
    EXPECT_NEAR(percent(window.document().analysis().shares.sugars), 50.0, 1e-9);
}

TEST_F(CatalogueOnTheBench, EachFaultStandsBesideItsField)
{
    click("new");
    add("sucrose", QStringLiteral("sweet"));
    write("density", QStringLiteral("12"));
    click("keep");
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_TRUE(shown("nameFault").startsWith(QStringLiteral("The ingredient has no name yet.")));
    const QString all = sentences();
    EXPECT_TRUE(all.contains(QStringLiteral("“sweet” is not a valid part of 100 g."))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("“12” is not a valid density."))) << all.toStdString();
    EXPECT_EQ(part<QLineEdit>("sucrose").text(), QStringLiteral("sweet"));
}

// 29 % vol was once silently taken as 29 g. Whether sugar or alcohol is typed first makes no difference.
TEST_F(CatalogueOnTheBench, AlcoholInPercentByVolumeIsConvertedByTheDensityOfTheWhole)
{
    click("new");
    write("name", QStringLiteral("Quay liqueur"));
    add("ethanol", QStringLiteral("29 % vol"));
    add("sucrose", QStringLiteral("40"));
    EXPECT_EQ(part<QComboBox>("alcoholUnit").currentText(), QStringLiteral("% vol"));
    EXPECT_TRUE(shown("alcoholGrams").startsWith(QStringLiteral("= 20 g in 100 g"))) << shown("alcoholGrams").toStdString();
    click("restIsWater");
    click("keep");
    ASSERT_EQ(pantry.own().size(), 1U);
    const Amounts& per100g = pantry.own().front().composition.per100g;
    EXPECT_NEAR(alcoholByVolume_percent(per100g), 29.0, 1e-6);
    EXPECT_NEAR(per100g.total().value, 100.0, 1e-9);
}

TEST_F(CatalogueOnTheBench, AlcoholInPercentAloneIsAskedAbout)
{
    click("new");
    write("name", QStringLiteral("Quay liqueur"));
    write("water", QStringLiteral("71"));
    add("ethanol", QStringLiteral("29 %"));
    click("keep");
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_TRUE(sentences().contains(QStringLiteral("“29 %” could be % of the weight or of the volume. Write g or % vol.")))
        << sentences().toStdString();
    write("ethanol", QStringLiteral("96 % vol"));
    write("water", {});
    add("sucrose", QStringLiteral("40"));
    click("keep");
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_TRUE(sentences().contains(QStringLiteral("96.0 % vol has no room beside 40.0 g of other constituents.")))
        << sentences().toStdString();
}

// 100 mL of an own syrup once counted 0 g.
TEST_F(CatalogueOnTheBench, ASyrupIsABeginningAndIsWeighedByItsComposition)
{
    click("new");
    click("startFromSyrup");
    EXPECT_TRUE(sentences().contains(QStringLiteral("Enter its strength first")));
    write("syrupStrength", QStringLiteral("60 °Bx"));
    click("startFromSyrup");
    EXPECT_EQ(part<QLineEdit>("name").text(), QStringLiteral("Syrup, 60 °Bx"));
    EXPECT_EQ(part<QLineEdit>("density").placeholderText(), QStringLiteral("1.287"));
    write("name", QStringLiteral("Quay syrup"));
    click("keep");
    EXPECT_TRUE(shown("detailDensity").startsWith(QStringLiteral("1.287 g/mL, estimated from the composition")))
        << shown("detailDensity").toStdString();
    lay("100 mL quay syrup");
    EXPECT_NEAR(window.document().analysis().mass.value, 128.7, 1e-9);
    EXPECT_EQ(
        english(window.document().analysis().components[0][0].how), "density 1.287 g/mL, estimated from the composition, ±2 %");
}

TEST_F(CatalogueOnTheBench, EveryNumberHasItsUnitBesideIt)
{
    click("new");
    for (const char* field : {"water", "milkFat", "milkSolidsNotFat", "yolkSolids", "density", "waterSpread", "energy"}) {
        QStringList beside;
        for (const QLabel* label : part<QLineEdit>(field).parentWidget()->findChildren<QLabel*>())
            beside << label->text();
        EXPECT_TRUE(beside.contains(QStringLiteral("g")) || beside.contains(QStringLiteral("g/mL"))
                    || beside.contains(QStringLiteral("kcal")))
            << field;
    }
}

TEST_F(CatalogueOnTheBench, DeletedIsGoneUntilUndone)
{
    describe(QStringLiteral("Quay syrup"));
    lay("100 g quay syrup");
    click("delete");
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 0.0);
    take(QStringLiteral("Undo"));
    ASSERT_EQ(pantry.own().size(), 1U);
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 100.0);
    EXPECT_EQ(shown("detailName"), QStringLiteral("Quay syrup"));
}

TEST_F(CatalogueOnTheBench, BuiltInOnesCannotBeDeletedOrEdited)
{
    search(QStringLiteral("strawberry"));
    EXPECT_FALSE(part<QPushButton>("delete").isVisible());
    EXPECT_FALSE(part<QPushButton>("edit").isVisible());
    EXPECT_TRUE(part<QPushButton>("editCopy").isVisible());
}

TEST_F(CatalogueOnTheBench, LeftFormCanBeTakenUpAgain)
{
    click("new");
    write("name", QStringLiteral("Half a thought"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(part<QLineEdit>("name").isVisible());
    take(QStringLiteral("Go on typing"));
    EXPECT_EQ(part<QLineEdit>("name").text(), QStringLiteral("Half a thought"));
    catalogue.close();
    EXPECT_TRUE(catalogue.isVisible());
    take(QStringLiteral("Keep and close"));
    EXPECT_TRUE(catalogue.isVisible());
    EXPECT_FALSE(shown("compositionFault").isEmpty());
    catalogue.close();
    take(QStringLiteral("Discard and close"));
    EXPECT_FALSE(catalogue.isVisible());
    EXPECT_TRUE(pantry.own().empty());
}

TEST_F(CatalogueOnTheBench, UntouchedFormLeavesWithoutAWord)
{
    describe(QStringLiteral("Quay syrup"));
    click("edit");
    press(Qt::Key_Escape);
    EXPECT_EQ(message(), QString());
    click("edit");
    catalogue.close();
    EXPECT_FALSE(catalogue.isVisible());
}

TEST_F(CatalogueOnTheBench, MarkupInNamesIsShownLetterByLetter)
{
    describe(QStringLiteral("<b>x</b> & y"));
    ASSERT_EQ(pantry.own().size(), 1U) << shown("formProblem").toStdString();
    EXPECT_EQ(shown("detailName"), QStringLiteral("<b>x</b> & y"));
    click("edit");
    EXPECT_EQ(shown("formTitle"), QStringLiteral("<b>x</b> & y"));
    for (const QLabel* label : catalogue.findChildren<QLabel*>())
        if (label->text().contains(u'<')) {
            EXPECT_EQ(label->textFormat(), Qt::PlainText) << label->objectName().toStdString();
        }
}

TEST_F(CatalogueOnTheBench, ReadOnlyPlaceIsSaidAndNothingIsLost)
{
    // A folder stands where the file should be.
    ASSERT_TRUE(QDir().mkpath(inFolder(QStringLiteral("own/ingredients.json/in-the-way"))));
    describe(QStringLiteral("Quay syrup"));
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_FALSE(shown("formProblem").isEmpty());
    EXPECT_EQ(part<QLineEdit>("name").text(), QStringLiteral("Quay syrup"));
}

TEST_F(CatalogueOnTheBench, ImportShowsWhatItWouldKeepAndKeepsIt)
{
    answers.toImport = written(
        QStringLiteral("supplier.csv"), "name,water,sucrose,source\nQuay syrup,40,60,our kitchen\nLock syrup,30,70,our kitchen\n");
    click("import");
    settle();
    EXPECT_EQ(shown("importSummary"), QStringLiteral("2 ingredients in supplier.csv")) << message().toStdString();
    EXPECT_TRUE(pantry.own().empty());
    EXPECT_FALSE(shown("importAccount").isEmpty());
    part<QListWidget>("imported").item(1)->setCheckState(Qt::Unchecked);
    EXPECT_EQ(part<QPushButton>("keepImported").text(), QStringLiteral("&Keep one ingredient"));
    part<QListWidget>("imported").item(1)->setCheckState(Qt::Checked);
    click("keepImported");
    ASSERT_EQ(pantry.own().size(), 2U) << message().toStdString();
    EXPECT_EQ(shown("detailName"), QStringLiteral("Quay syrup"));
    take(QStringLiteral("Undo"));
    EXPECT_TRUE(pantry.own().empty());
}

TEST_F(CatalogueOnTheBench, ImportTakesThePlaceOfAnOwnOneOfThatName)
{
    describe(QStringLiteral("Quay syrup"));
    answers.toImport = written(QStringLiteral("supplier.csv"), "name,water,sucrose,source\nQuay syrup,40,60,our kitchen\n");
    click("import");
    settle();
    EXPECT_TRUE(shown("importAccount").startsWith(QStringLiteral("It takes the place of your own “Quay syrup”.")));
    click("keepImported");
    ASSERT_EQ(pantry.own().size(), 1U);
    EXPECT_DOUBLE_EQ(pantry.own().front().composition.per100g[Constituent::Sucrose].value, 60.0);
    take(QStringLiteral("Undo"));
    ASSERT_EQ(pantry.own().size(), 1U);
    EXPECT_DOUBLE_EQ(pantry.own().front().composition.per100g[Constituent::Sucrose].value, 62.5);
}

TEST_F(CatalogueOnTheBench, BadFileIsOneSentenceAndNothingIsKept)
{
    answers.toImport = written(QStringLiteral("torn.json"), "{\"format\": \"firn-catalogue\", \"ver");
    click("import");
    settle();
    EXPECT_TRUE(message().contains(QStringLiteral("torn.json"))) << message().toStdString();
    EXPECT_TRUE(part<QPushButton>("new").isVisible());
    EXPECT_TRUE(pantry.own().empty());
    answers.toImport = QString();
    click("import");
    settle();
    EXPECT_TRUE(part<QPushButton>("new").isVisible());
}

TEST_F(CatalogueOnTheBench, WithoutARecipeWindowNothingCanBePutInIt)
{
    auto* other = new MainWindow(pantry, answers);
    catalogue.openFor(*other);
    delete other;
    search(QStringLiteral("strawberry"));
    EXPECT_FALSE(part<QPushButton>("put").isEnabled());
    press(Qt::Key_Return);
    EXPECT_EQ(rowCount(), 1U);
}

TEST_F(Bench, TornOwnFileIsSaidInTheCatalogue)
{
    const QString file = written(QStringLiteral("torn.json"), "[");
    Pantry torn(shippedCatalogue(), file);
    CatalogueWindow catalogue(torn, answers);
    EXPECT_TRUE(catalogue.messages().sentence().startsWith(QStringLiteral("Your own ingredients are left out")));
}

TEST_F(Bench, CatalogueIsInTheRecipeMenu)
{
    bool isWanted = false;
    QObject::connect(&window, &MainWindow::catalogueWanted, &window, [&] { isWanted = true; });
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_I, Qt::ControlModifier);
    EXPECT_TRUE(isWanted);
}

}  // namespace
}  // namespace firn::app
