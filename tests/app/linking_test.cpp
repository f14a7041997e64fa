#include "bench.h"

#include "bench/file_actions.h"
#include "bench/recipe_notices.h"
#include "document/edits.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTest>

namespace firn::app {
namespace {

class Linking : public Bench {
protected:
    /// A recipe in a file of the folder.
    QString recipeFile(const QString& name, const std::string& lines)
    {
        return written(name, QByteArray::fromStdString(recipeToJson(recipeFromText(lines).value())));
    }
    void link(const QString& file)
    {
        answers.toOpen = file;
        window.files().linkRecipe();
    }
    QString notice() { return notices().sentence(); }
    RecipeNotices& notices() { return *window.findChild<RecipeNotices*>(); }
    double sugars_percent() { return percent(window.document().analysis().shares.sugars); }
};

TEST_F(Linking, ARecipeBecomesARowOfAnother)
{
    lay("100 g water");
    link(recipeFile("syrup.firn", "Syrup:\n100 g water\n100 g sucrose"));
    ASSERT_EQ(rowCount(), 2U);
    EXPECT_EQ(recipe().components[0].rows[1].ingredient, "Syrup");
    enter(1, IngredientModel::AmountColumn, "100");
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
    history().setIndex(0);
    EXPECT_EQ(rowCount(), 1U);
    EXPECT_TRUE(recipe().linked.empty());
}

TEST_F(Linking, AChangeOfItsFileIsFlaggedAndTakenOnlyWhenChosen)
{
    lay("100 g water");
    link(recipeFile("syrup.firn", "Syrup:\n100 g water\n100 g sucrose"));
    enter(1, IngredientModel::AmountColumn, "100");
    EXPECT_EQ(notice(), QString());
    recipeFile("syrup.firn", "Syrup:\n50 g water\n150 g sucrose");
    ASSERT_TRUE(QTest::qWaitFor([this] { return notice().contains("“Syrup” has changed since it was taken in"); }));
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
    for (QPushButton* button : notices().findChildren<QPushButton*>())
        if (button->text() == "Take the new one")
            button->click();
    EXPECT_NEAR(sugars_percent(), 37.5, 1e-9);
    EXPECT_EQ(notice(), QString());
    history().undo();
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
    EXPECT_NE(notice(), QString());
}

TEST_F(Linking, AMissingFileIsSaidAndTheRecipeStillCounts)
{
    const QString syrup = recipeFile("syrup.firn", "Syrup:\n100 g water\n100 g sucrose");
    lay("100 g water");
    link(syrup);
    enter(1, IngredientModel::AmountColumn, "100");
    const QString cup = inFolder("cup.firn");
    ASSERT_TRUE(window.document().saveAs(cup));
    QFile saved(cup);
    ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
    EXPECT_TRUE(saved.readAll().contains("\"file\": \"syrup.firn\"")) << "files in one folder move together";
    QFile::remove(syrup);
    window.files().openFile(cup);
    EXPECT_TRUE(notice().contains("“Syrup” counts as it was when it was taken in")) << notice().toStdString();
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
}

TEST_F(Linking, ACircleIsRefusedWithItsChain)
{
    lay("100 g water");
    ASSERT_TRUE(window.document().saveAs(inFolder("cup.firn")));
    link(inFolder("cup.firn"));
    EXPECT_TRUE(messageShown().contains("cannot be part of itself: cup → cup")) << messageShown().toStdString();
    EXPECT_EQ(rowCount(), 1U);

    window.document().startWith({});
    link(inFolder("cup.firn"));
    const auto saved = window.document().saveAs(inFolder("cup.firn"));
    ASSERT_FALSE(saved) << "saving over a recipe that this one is made of would close the circle";
    EXPECT_NE(english(saved.error()).find("links to cup"), std::string::npos);
}

TEST_F(Linking, SomethingElseThanARecipeIsRefused)
{
    lay("100 g water");
    link(written("torn.firn", "{\"format\": \"firn-rec"));
    EXPECT_TRUE(messageShown().contains("torn.firn")) << messageShown().toStdString();
    EXPECT_EQ(rowCount(), 1U);
}

TEST_F(Linking, EachOfSeveralComponentsIsFrozenInItsOwnWay)
{
    lay("750 g water\n250 g sucrose");
    addComponent(window.document(), "Cream");
    insertRows(window.document(), {1, 0}, {{"heavy cream", {200, Unit::Gram}, {}, {}}});
    changeProcess(window.document(), 0, Process::Scraped);
    changeProcess(window.document(), 1, Process::Folded);
    changeOverrun(window.document(), 1, 60.0);
    EXPECT_EQ(window.document().analysis().texture.process, Process::Scraped);
    window.document().showComponent(1);
    EXPECT_EQ(window.document().analysis().texture.process, Process::Folded);
    EXPECT_NEAR(window.document().analysis().overrun_percent, 60.0, 1e-12);
    removeComponent(window.document(), 0);
    EXPECT_EQ(window.document().analysis().texture.process, Process::Folded);
    changeProcess(window.document(), 0, Process::Churned);
    EXPECT_EQ(window.document().analysis().texture.process, Process::Churned);
}

TEST_F(Linking, OwnIngredientsTravelInTheFileAndAChangeIsTakenOnlyWhenChosen)
{
    Ingredient syrup;
    syrup.name = "House syrup";
    syrup.composition.per100g[Constituent::Water] = {50};
    syrup.composition.per100g[Constituent::Sucrose] = {50};
    syrup.id = pantry.keep(syrup).value();
    lay("100 g house syrup");
    EXPECT_NEAR(sugars_percent(), 50.0, 1e-9);
    ASSERT_TRUE(window.document().saveAs(inFolder("syrup.firn")));
    EXPECT_EQ(notice(), QString());

    syrup.composition.per100g[Constituent::Water] = {40};
    syrup.composition.per100g[Constituent::Sucrose] = {60};
    ASSERT_TRUE(pantry.keep(syrup));
    EXPECT_NEAR(sugars_percent(), 50.0, 1e-9);
    EXPECT_TRUE(notice().contains("“House syrup” is something else in your catalogue")) << notice().toStdString();
    for (QPushButton* button : notices().findChildren<QPushButton*>())
        if (button->text() == "Take the catalogue's")
            button->click();
    EXPECT_NEAR(sugars_percent(), 60.0, 1e-9);

    ASSERT_TRUE(pantry.remove(syrup.id));
    window.document().startWith({});
    window.files().openFile(inFolder("syrup.firn"));
    EXPECT_NEAR(sugars_percent(), 50.0, 1e-9) << "the recipe reads the same on a machine without this ingredient";
}

TEST_F(Linking, CopiedRowsKeepWhatTheRefractometerRead)
{
    lay("100 g strawberries");
    changeReading(window.document(), {0, 0}, 9.5);
    goTo(0, 0);
    press(Qt::Key_C, Qt::ControlModifier);
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(rowCount(), 2U);
    EXPECT_EQ(recipe().components[0].rows[0].measuredBrix, 9.5);
    EXPECT_EQ(recipe().components[0].rows[1].measuredBrix, 9.5);
}

}  // namespace
}  // namespace firn::app
