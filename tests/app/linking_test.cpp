#include "bench.h"

#include "bench/file_actions.h"
#include "bench/recipe_notices.h"
#include "document/edits.h"
#include "document/places.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QAction>
#include <QDir>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <sys/stat.h>

namespace firn::app {
namespace {

class Linking : public Bench {
protected:
    using Bench::press;

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
    void press(const char* choice)
    {
        for (QPushButton* button : notices().findChildren<QPushButton*>())
            if (button->text() == QLatin1String(choice))
                return button->click();
        FAIL() << choice << " is not offered";
    }
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
    ASSERT_TRUE(QTest::qWaitFor([this] { return notice().contains("“Syrup” has changed since you added it"); }));
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
    press("Update");
    EXPECT_NEAR(sugars_percent(), 37.5, 1e-9);
    EXPECT_EQ(notice(), QString());
    history().undo();
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
    settle();
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
    settle();
    EXPECT_TRUE(notice().contains("“Syrup” could not be read again, so the saved copy is used")) << notice().toStdString();
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);
}

/// A recipe from somewhere else may name any file of this machine.
TEST_F(Linking, AFileOutsideTheRecipesFolderIsReadOnlyOnceThePersonAgrees)
{
    ASSERT_TRUE(QDir(folder.path()).mkdir("menu"));
    const QString syrup = recipeFile("syrup.firn", "Syrup:\n100 g water\n100 g sucrose");
    Recipe cup = recipeFromText("100 g water\n100 g Syrup").value();
    cup.linked.push_back({"Syrup", syrup.toStdString(), recipeFromText("50 g water\n150 g sucrose").value()});
    window.files().openFile(written("menu/cup.firn", QByteArray::fromStdString(recipeToJson(cup))));
    settle();
    EXPECT_TRUE(notice().contains("“Syrup” is linked from")) << notice().toStdString();
    EXPECT_NEAR(sugars_percent(), 37.5, 1e-9);

    press("Read it");
    settle();
    EXPECT_TRUE(notice().contains("“Syrup” has changed since you added it")) << notice().toStdString();
    press("Update");
    EXPECT_NEAR(sugars_percent(), 25.0, 1e-9);

    window.document().startWith({});
    window.files().openFile(inFolder("menu/cup.firn"));
    settle();
    EXPECT_TRUE(notice().contains("“Syrup” has changed since you added it")) << "agreed once is agreed: " << notice().toStdString();
    settings().remove("links");
}

TEST_F(Linking, ALinkInTheFolderThatLeadsOutOfItIsAskedAbout)
{
    ASSERT_TRUE(QDir(folder.path()).mkdir("menu"));
    recipeFile("syrup.firn", "Syrup:\n100 g water\n100 g sucrose");
    ASSERT_TRUE(QFile::link(inFolder("syrup.firn"), inFolder("menu/syrup.firn")));
    Recipe cup = recipeFromText("100 g water\n100 g Syrup").value();
    cup.linked.push_back({"Syrup", "syrup.firn", recipeFromText("50 g water\n150 g sucrose").value()});
    window.files().openFile(written("menu/cup.firn", QByteArray::fromStdString(recipeToJson(cup))));
    settle();
    EXPECT_TRUE(notice().contains("“Syrup” is linked from")) << notice().toStdString();
}

TEST_F(Linking, APipeOrDeviceIsOneSentenceAndTheWindowComesUp)
{
    const QString pipe = inFolder("pipe.firn");
    ASSERT_EQ(mkfifo(pipe.toUtf8().constData(), 0600), 0);
    lay("100 g water");
    for (const QString& file : {pipe, QStringLiteral("/dev/zero")}) {
        link(file);
        settle();
        EXPECT_TRUE(messageShown().contains("is a pipe, a socket or a device")) << messageShown().toStdString();
    }
    EXPECT_EQ(rowCount(), 1U);

    Recipe cup = recipeFromText("100 g water\n100 g Syrup").value();
    cup.linked.push_back({"Syrup", "pipe.firn", recipeFromText("50 g water\n150 g sucrose").value()});
    window.files().openFile(written("cup.firn", QByteArray::fromStdString(recipeToJson(cup))));
    settle();
    EXPECT_TRUE(notice().contains("is a pipe, a socket or a device")) << notice().toStdString();
    EXPECT_NEAR(sugars_percent(), 37.5, 1e-9);
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
    EXPECT_TRUE(notice().contains("Your catalogue entry for “House syrup” differs")) << notice().toStdString();
    press("Use catalogue entry");
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
