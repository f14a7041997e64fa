#include "bench.h"

#include "bench/file_actions.h"
#include "document/edits.h"
#include "document/mark_edits.h"
#include "document/notebook_place.h"
#include "document/places.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"
#include "notebook/file_change.h"
#include "notebook/folder_import.h"
#include "notebook/notebook_delegate.h"
#include "notebook/notebook_model.h"
#include "notebook/notebook_panel.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QDockWidget>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <unistd.h>

namespace firn::app {
namespace {

QByteArray fileOf(const std::string& title, const std::string& rows = "300 g rhubarb\n190 g sucrose\n500 g water")
{
    Recipe recipe = recipeFromText(rows).value();
    recipe.title = title;
    return QByteArray::fromStdString(recipeToJson(recipe));
}

class Notebook : public Bench {
protected:
    Notebook()
    {
        chooseNotebookFolder(inFolder("notebook"));
        QDir(folder.path()).mkpath("notebook");
    }
    ~Notebook() override
    {
        settings().remove("notebook");
        state().remove("notebook");
    }

    QString inNotebook(const QString& name) { return inFolder("notebook/" + name); }
    void put(const QString& name, const QByteArray& contents)
    {
        QDir().mkpath(QFileInfo(inNotebook(name)).path());
        written("notebook/" + name, contents);
    }
    QByteArray contents(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("missing");
    }
    Recipe kept(const QString& name) { return recipeFromJson(contents(inNotebook(name)).toStdString()).value(); }

    void show() { window.findChild<QDockWidget*>("notebook")->show(); }
    NotebookPanel& panel() { return *window.findChild<NotebookPanel*>(); }
    QListView& list() { return *window.findChild<QListView*>("notebookList"); }
    QLineEdit& search() { return *window.findChild<QLineEdit*>("notebookSearch"); }

    QStringList titles()
    {
        QStringList all;
        for (int row = 0; row < list().model()->rowCount(); ++row)
            all << list().model()->index(row, 0).data().toString();
        return all;
    }
    bool lists(const QStringList& wanted)
    {
        return QTest::qWaitFor([&] { return titles() == wanted && !panel().folder().isReading(); });
    }
    QVariant about(int row, int role) { return list().model()->index(row, 0).data(role); }
    QString text(const char* label)
    {
        const auto* found = window.findChild<QLabel*>(QLatin1String(label));
        return found->isVisible() ? found->text() : QString();
    }
    void choose(int row)
    {
        list().setCurrentIndex(list().model()->index(row, 0));
        list().setFocus();
    }
    QAction* action(const char* name)
    {
        for (QAction* found : panel().findChildren<QAction*>())
            if (found->text().startsWith(QLatin1String(name)))
                return found;
        return nullptr;
    }
};

TEST_F(Notebook, ListsTheRecipesOfTheFolderAndThoseBelow)
{
    put("b.firn", fileOf("Rhubarb granita"));
    put("menus/summer/a.firn", fileOf("Pear ice"));
    put("notes.txt", "300 g water");
    show();
    ASSERT_TRUE(lists({"Pear ice", "Rhubarb granita"})) << titles().join("|").toStdString();
    EXPECT_TRUE(about(1, NotebookModel::FiguresRole).toString().contains("sugar 19."))
        << about(1, NotebookModel::FiguresRole).toString().toStdString();
    EXPECT_TRUE(about(1, NotebookModel::RibbonRole).isValid());
    EXPECT_EQ(text("notebookCount"), "2 recipes");
}

TEST_F(Notebook, ChangesNoFileByLooking)
{
    const QByteArray before = "{\"format\": \"firn-recipe\", \"version\": 1, \"components\": []}";
    put("a.firn", before);
    show();
    ASSERT_TRUE(lists({"a"}));
    EXPECT_EQ(contents(inNotebook("a.firn")), before);
    EXPECT_EQ(QDir(inFolder("notebook")).entryList(QDir::Files | QDir::Hidden), QStringList{"a.firn"});
}

TEST_F(Notebook, FollowsFilesThatComeChangeAndGo)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    put("menus/b.firn", fileOf("Pear ice"));
    ASSERT_TRUE(lists({"Apple ice", "Pear ice"})) << "a file in a new folder";
    put("menus/c.firn", fileOf("Quince ice"));
    ASSERT_TRUE(lists({"Apple ice", "Pear ice", "Quince ice"})) << "a file in a folder that is watched";
    QFile::remove(inNotebook("a.firn"));
    put("menus/b.firn", fileOf("A longer title"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return titles() == QStringList{"A longer title", "Quince ice"}; }, 10000));
}

TEST_F(Notebook, SearchesAndSaysWhatItCannotRead)
{
    put("a.firn", fileOf("Rhubarb granita"));
    put("b.firn", fileOf("Perry ice", "100 g sucrose\n800 g perry\n20 g gin"));
    show();
    ASSERT_TRUE(lists({"Perry ice", "Rhubarb granita"}));
    search().setText("rhub sugar 18..21");
    EXPECT_EQ(titles(), QStringList{"Rhubarb granita"});
    EXPECT_EQ(text("notebookCount"), "1 of 2");
    search().setText("alcohol > 0");
    EXPECT_EQ(titles(), QStringList{"Perry ice"});
    search().setText("alcohol >");
    EXPECT_EQ(titles(), QStringList{"Perry ice"}) << "the list waits";
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("notebookFault").contains("is not a range yet"); }));
    search().setText("quince");
    EXPECT_EQ(text("notebookHint"), "No recipes match.");
    EXPECT_EQ(text("notebookFault"), QString());
    QTest::mouseClick(window.findChild<QPushButton*>("notebookHintAct"), Qt::LeftButton);
    EXPECT_EQ(titles().size(), 2);
}

TEST_F(Notebook, OpensOnTheBenchByKeyboard)
{
    put("a.firn", fileOf("Apple ice"));
    put("b.firn", fileOf("Pear ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice", "Pear ice"}));
    panel().goToSearch();
    type("pear");
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().title, "Pear ice");
    EXPECT_TRUE(about(0, NotebookModel::IsOpenRole).toBool());
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_TRUE(search().hasFocus());
    press(Qt::Key_Escape);
    EXPECT_EQ(titles().size(), 2);
}

TEST_F(Notebook, AsksBeforeUnsavedChangesGo)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    changeTitle(window.document(), "Mine");
    answers.unsaved = Questions::Unsaved::Cancel;
    choose(0);
    press(Qt::Key_Return);
    EXPECT_EQ(answers.unsavedAsked, 1);
    EXPECT_EQ(recipe().title, "Mine");
}

TEST_F(Notebook, FavouriteOfTheOpenRecipeCanBeUndone)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    const QByteArray before = contents(inNotebook("a.firn"));
    choose(0);
    press(Qt::Key_Return);
    press(Qt::Key_Asterisk);
    EXPECT_TRUE(recipe().isFavourite);
    EXPECT_EQ(contents(inNotebook("a.firn")), before) << "it waits to be saved";
    EXPECT_TRUE(QTest::qWaitFor([this] { return about(0, NotebookModel::IsFavouriteRole).toBool(); }));
    history().undo();
    EXPECT_FALSE(recipe().isFavourite);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !about(0, NotebookModel::IsFavouriteRole).toBool(); }));
}

TEST_F(Notebook, MarksThatAreNotSavedGoWithTheRecipe)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    window.files().openFile(inNotebook("a.firn"));
    changeFavourite(window.document(), true);
    ASSERT_TRUE(QTest::qWaitFor([this] { return about(0, NotebookModel::IsFavouriteRole).toBool(); }));
    window.document().startWith({});
    EXPECT_TRUE(QTest::qWaitFor([this] { return !about(0, NotebookModel::IsFavouriteRole).toBool(); }));
}

TEST_F(Notebook, FavouriteOfAnotherRecipeIsWrittenToItsFile)
{
    Recipe before = recipeFromText("300 g water").value();
    before.title = "Apple ice";
    before.unknown = R"({"plate": "blue"})";
    put("a.firn", QByteArray::fromStdString(recipeToJson(before)));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    const QRect line = list().visualRect(list().model()->index(0, 0));
    QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, NotebookDelegate::starPlace(line).center());
    EXPECT_TRUE(QTest::qWaitFor([this] { return about(0, NotebookModel::IsFavouriteRole).toBool(); }));
    Recipe after = kept("a.firn");
    EXPECT_TRUE(after.isFavourite);
    after.isFavourite = false;
    EXPECT_EQ(recipeToJson(after), recipeToJson(before)) << "nothing else changed";
    EXPECT_EQ(recipe().title, "") << "the click on the star opened nothing";
}

TEST_F(Notebook, ArchivedRecipesStandApart)
{
    put("a.firn", fileOf("Apple ice"));
    put("b.firn", fileOf("Pear ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice", "Pear ice"}));
    choose(0);
    action("&Archived")->trigger();
    ASSERT_TRUE(lists({"Pear ice"}));
    EXPECT_TRUE(kept("a.firn").isArchived);
    auto* shelf = window.findChild<QComboBox*>("notebookShelf");
    shelf->setCurrentText("Archived");
    ASSERT_TRUE(lists({"Apple ice"}));
    choose(0);
    EXPECT_TRUE(action("&Archived")->isChecked());
    action("&Archived")->trigger();
    EXPECT_TRUE(lists({}));
    EXPECT_FALSE(kept("a.firn").isArchived);
}

TEST_F(Notebook, TagsAreTypedAndFilterTheList)
{
    put("a.firn", fileOf("Apple ice"));
    put("b.firn", fileOf("Pear ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice", "Pear ice"}));
    choose(1);
    press(Qt::Key_NumberSign);
    type("autumn, no dairy");
    press(Qt::Key_Return);
    auto* shelf = window.findChild<QComboBox*>("notebookShelf");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shelf->findText("Tag: no dairy") >= 0; }));
    EXPECT_EQ(kept("b.firn").tags, (std::vector<std::string>{"autumn", "no dairy"}));
    shelf->setCurrentText("Tag: no dairy");
    EXPECT_EQ(titles(), QStringList{"Pear ice"});
    search().setText("autumn");
    EXPECT_EQ(titles(), QStringList{"Pear ice"});
}

TEST_F(Notebook, TagsOfTheOpenRecipeCanBeUndone)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    choose(0);
    press(Qt::Key_Return);
    press(Qt::Key_NumberSign);
    type("autumn");
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().tags, std::vector<std::string>{"autumn"});
    history().undo();
    EXPECT_TRUE(recipe().tags.empty());
}

TEST_F(Notebook, ListsAnUnreadableFileWithTheReason)
{
    put("newer.firn", R"({"format": "firn-recipe", "version": 7, "components": []})");
    put("torn.firn", "{\"format\":");
    show();
    ASSERT_TRUE(lists({"newer.firn", "torn.firn"}));
    EXPECT_FALSE(about(0, NotebookModel::IsReadableRole).toBool());
    EXPECT_TRUE(about(0, NotebookModel::FiguresRole).toString().contains("written by a newer Firn"));
    const QByteArray before = contents(inNotebook("newer.firn"));
    choose(0);
    press(Qt::Key_Asterisk);
    EXPECT_EQ(contents(inNotebook("newer.firn")), before);
    press(Qt::Key_Return);
    EXPECT_TRUE(messageShown().contains("newer Firn"));
    EXPECT_EQ(recipe().title, "");
}

TEST_F(Notebook, AFileThatMayNotBeWrittenIsLeftAlone)
{
    if (geteuid() == 0)
        GTEST_SKIP() << "the administrator may write everywhere";
    put("a.firn", fileOf("Apple ice"));
    QFile::setPermissions(inNotebook("a.firn"), QFile::ReadOwner);
    const auto changed = changeInFile(inNotebook("a.firn"), [](Recipe& recipe) { recipe.isFavourite = true; });
    ASSERT_FALSE(changed);
    EXPECT_NE(english(changed.error()).find("Check that you have permission to write it"), std::string::npos);
    EXPECT_EQ(contents(inNotebook("a.firn")), fileOf("Apple ice"));
}

TEST_F(Notebook, AFileThatChangesUnderTheHandsIsLeftAlone)
{
    put("a.firn", fileOf("Apple ice"));
    const auto changed = changeInFile(inNotebook("a.firn"), [this](Recipe& recipe) {
        recipe.isFavourite = true;
        put("a.firn", fileOf("Changed by another"));
    });
    ASSERT_FALSE(changed);
    EXPECT_NE(english(changed.error()).find("changed by another program just now"), std::string::npos);
    EXPECT_EQ(contents(inNotebook("a.firn")), fileOf("Changed by another"));
}

TEST_F(Notebook, AFolderThatVanishesComesBackByItself)
{
    put("a.firn", fileOf("Apple ice"));
    show();
    ASSERT_TRUE(lists({"Apple ice"}));
    ASSERT_TRUE(QDir(folder.path()).rename("notebook", "away"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("notebookHint").contains("is gone"); }, 10000));
    EXPECT_EQ(window.findChild<QPushButton*>("notebookHintAct")->text(), "Choose another folder…");
    EXPECT_TRUE(titles().isEmpty());
    EXPECT_FALSE(QDir(inFolder("notebook")).exists()) << "nothing is made in its place";
    ASSERT_TRUE(QDir(folder.path()).rename("away", "notebook"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return titles() == QStringList{"Apple ice"}; }, 10000));
}

TEST_F(Notebook, TheUsualFolderThatVanishesIsSaidToBeGoneAlsoAtTheNextStart)
{
    const QString usual = usualNotebookFolder();
    ASSERT_FALSE(QDir(usual).exists());
    chooseNotebookFolder(usual);
    NotebookFolder look(pantry);
    look.open(usual);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !look.isThere(); }));
    EXPECT_FALSE(wasNotebookThere(usual)) << "not made yet is not gone";

    ASSERT_TRUE(QDir().mkpath(usual));
    look.look();
    ASSERT_TRUE(QTest::qWaitFor([&] { return look.isThere(); }));
    ASSERT_TRUE(QDir(usual).removeRecursively());
    show();
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("notebookHint").contains("is gone"); }, 10000))
        << text("notebookHint").toStdString();
}

TEST_F(Notebook, AnotherFolderIsChosenAndRemembered)
{
    written("b.firn", fileOf("Pear ice"));
    show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return text("notebookHint").startsWith("No recipes yet"); }));
    answers.toChoose = folder.path();
    action("&Choose the notebook")->trigger();
    ASSERT_TRUE(lists({"Pear ice"}));
    EXPECT_EQ(notebookFolder(), QDir::cleanPath(folder.path()));
}

TEST_F(Notebook, ShowsAHostileTitleAsText)
{
    put("a.firn", fileOf("<h1>Ice</h1>\n<img src='x'>& %n {0}"));
    show();
    ASSERT_TRUE(lists({"<h1>Ice</h1> <img src='x'>& %n {0}"}));
    EXPECT_TRUE(about(0, Qt::ToolTipRole).toString().contains("&lt;h1&gt;"));
}

TEST_F(Notebook, AnEmptyOneSaysWhatToDo)
{
    show();
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("notebookHint").startsWith("No recipes yet"); }));
    EXPECT_EQ(window.findChild<QPushButton*>("notebookHintAct")->text(), "Import a folder…");
}

TEST_F(Notebook, KeepsTheRulesOfAModel)
{
    NotebookFolder reading(pantry);
    NotebookModel model(reading);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QObject::connect(&reading, &NotebookFolder::changed, &model, &NotebookModel::readAnew);
    put("a.firn", fileOf("Apple ice"));
    reading.open(inFolder("notebook"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return model.rowCount() == 1; }));
    QFile::remove(inNotebook("a.firn"));
    reading.look();
    EXPECT_TRUE(QTest::qWaitFor([&] { return model.rowCount() == 0; }));
}

TEST_F(Notebook, StopsReadingAndReadsOn)
{
    for (int i = 0; i < 1200; ++i)
        put(QStringLiteral("%1.firn").arg(i), fileOf("Ice " + std::to_string(i)));
    NotebookFolder reading(pantry);
    reading.open(inFolder("notebook"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return reading.unread() > 0; }));
    reading.stop();
    EXPECT_FALSE(reading.isReading());
    QTest::qWait(300);
    EXPECT_LT(reading.cards().size(), 1200U);
    reading.look();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !reading.isReading(); }, 60000));
    EXPECT_EQ(reading.cards().size(), 1200U);
    for (const RecipeCard& card : reading.cards())
        ASSERT_TRUE(card.figures) << card.file;
}

TEST_F(Notebook, ImportsAFolderWithoutOverwriting)
{
    QDir(folder.path()).mkpath("old/sub");
    written("old/ice.firn", fileOf("From far"));
    written("old/plain.txt", "Pear ice:\n\n300 g pear\n100 g sugar");
    written("old/sub/table.csv", "ingredient,amount,unit\nwater,300,g\n");
    written("old/web.jsonld", R"({"@type": "Recipe", "name": "Web ice", "recipeIngredient": ["300 g water"]})");
    written("old/readme.txt", "These are my recipes");
    written("old/torn.firn", "{");
    written("old/photo.png", "no recipe at all");
    put("ice.firn", fileOf("Was here"));
    show();
    ASSERT_TRUE(lists({"Was here"}));
    answers.toChoose = inFolder("old");
    action("&Import a folder")->trigger();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !text("importSummary").isEmpty(); }));
    EXPECT_EQ(text("importSummary"), "4 recipes were taken into the notebook. 2 files could not be read:");
    auto* refused = window.findChild<QListWidget*>("importRefused");
    ASSERT_EQ(refused->count(), 2);
    EXPECT_TRUE(refused->item(0)->text().contains("readme.txt: No ingredient here has an amount"));
    EXPECT_TRUE(refused->item(1)->text().contains("torn.firn"));
    QTest::mouseClick(window.findChild<QPushButton*>("importClose"), Qt::LeftButton);
    EXPECT_TRUE(lists({"From far", "Pear ice", "table", "Was here", "Web ice"})) << titles().join("|").toStdString();
    EXPECT_EQ(contents(inNotebook("ice.firn")), fileOf("Was here"));
    EXPECT_EQ(contents(inNotebook("ice 2.firn")), fileOf("From far"));
    EXPECT_EQ(kept("sub/table.firn").components.front().rows.size(), 1U);
    EXPECT_EQ(contents(inFolder("old/ice.firn")), fileOf("From far")) << "the folder itself stays as it is";
}

TEST_F(Notebook, ImportsNoFolderThatItLiesIn)
{
    put("a.firn", fileOf("Apple ice"));
    for (const QString& from : {folder.path(), inFolder("notebook")}) {
        const auto outcome = importFolder(from, inFolder("notebook"), false);
        ASSERT_FALSE(outcome);
        EXPECT_NE(english(outcome.error()).find("lie in one another"), std::string::npos);
    }
    EXPECT_EQ(QDir(inFolder("notebook")).entryList(QDir::Files), QStringList{"a.firn"});
}

TEST_F(Notebook, ANewRecipeIsSavedThere)
{
    lay("Pear ice:\n\n300 g pear");
    answers.toSave = inNotebook("Pear ice.firn");
    EXPECT_TRUE(window.files().saveAs());
    EXPECT_EQ(answers.suggested, inNotebook("Pear ice.firn"));
}

TEST_F(Notebook, TheUsualFolderIsMadeOnlyWhenSomethingIsSavedInIt)
{
    settings().remove("notebook");
    ASSERT_FALSE(QDir(usualNotebookFolder()).exists());
    show();
    EXPECT_TRUE(QTest::qWaitFor([this] { return text("notebookHint").startsWith("No recipes yet"); }));
    lay("Pear ice:\n\n300 g pear");
    answers.toSave = QString();
    EXPECT_FALSE(window.files().saveAs());
    EXPECT_FALSE(QDir(usualNotebookFolder()).exists());
    answers.toSave = QDir(usualNotebookFolder()).filePath("Pear ice.firn");
    EXPECT_TRUE(window.files().saveAs());
    EXPECT_EQ(answers.suggested, answers.toSave);
    EXPECT_TRUE(lists({"Pear ice"}));
    QDir(usualNotebookFolder()).removeRecursively();
}

}  // namespace
}  // namespace firn::app
