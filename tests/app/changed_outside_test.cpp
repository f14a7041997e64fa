// What Firn says when the open recipe's file is changed, moved or deleted by another program, and what it counts as saved.
#include "bench.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "compare/comparing_window.h"
#include "document/edits.h"
#include "document/link_edits.h"
#include "document/recipe_file.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QDir>
#include <QPushButton>
#include <QTest>

namespace firn::app {
namespace {

class ChangedOutside : public Bench {
protected:
    ChangedOutside()
    {
        QDir().mkpath(inFolder("recipes"));
        lay("250 g water");
        answers.toSave = file();
        EXPECT_TRUE(window.files().save());
    }

    QString file() { return inFolder("recipes/ice.firn"); }
    void change(const std::string& lines) { written("recipes/ice.firn", contentsFor(recipeFromText(lines).value(), file())); }

    bool says(const QString& start)
    {
        return QTest::qWaitFor([&] { return messageShown().startsWith(start); });
    }
    QStringList choices()
    {
        QStringList verbs;
        for (const QPushButton* button : window.messages().findChildren<QPushButton*>())
            if (button->isVisible())
                verbs << button->text();
        return verbs;
    }
    void choose(const char* verb)
    {
        for (QPushButton* button : window.messages().findChildren<QPushButton*>())
            if (button->text() == QString::fromUtf8(verb) && button->isVisible())
                return button->click();
        ADD_FAILURE() << "there is no button " << verb;
    }
    Recipe onDisk()
    {
        QFile saved(file());
        EXPECT_TRUE(saved.open(QIODevice::ReadOnly));
        return recipeFromJson(saved.readAll().toStdString()).value();
    }
};

TEST_F(ChangedOutside, IsSaidWhenItHappensAndReloadingCanBeUndone)
{
    change("300 g water");
    ASSERT_TRUE(says("“ice.firn” was changed by another program."));
    EXPECT_TRUE(window.isWindowModified()) << "what is open is not what the disk has";
    for (const char* verb : {"Reload", "Keep mine", "Compare"})
        EXPECT_TRUE(choices().contains(verb)) << verb;
    choose("Reload");
    EXPECT_EQ(rows(), "300 g water");
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(messageShown(), "");
    history().undo();
    EXPECT_EQ(rows(), "250 g water");
    EXPECT_TRUE(window.isWindowModified());
}

TEST_F(ChangedOutside, KeepingMineIsUnsavedUntilItIsSavedOverTheirs)
{
    change("300 g water");
    ASSERT_TRUE(says("“ice.firn” was changed by another program."));
    choose("Keep mine");
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_EQ(onDisk().components[0].rows[0].amount.value, 300.0);
    EXPECT_TRUE(window.files().save());
    EXPECT_EQ(onDisk().components[0].rows[0].amount.value, 250.0);
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(ChangedOutside, ComparingShowsTheDisksVersionBesideTheOpenRecipe)
{
    change("300 g water\n10 g sugar");
    ASSERT_TRUE(says("“ice.firn” was changed by another program."));
    choose("Compare");
    const auto* comparing = window.findChild<ComparingWindow*>();
    ASSERT_TRUE(comparing && comparing->isVisible() && comparing->comparison());
    ASSERT_EQ(comparing->comparison()->sides.size(), 2U);
    EXPECT_EQ(comparing->comparison()->sides[0].name, "ice.firn");
    EXPECT_TRUE(choices().contains("Reload")) << "it is still to be decided";
}

TEST_F(ChangedOutside, ClosingAsksBeforeEitherVersionGoes)
{
    change("300 g water");
    answers.unsaved = Questions::Unsaved::Cancel;
    EXPECT_FALSE(window.close());
    EXPECT_EQ(answers.asked, "“ice.firn” was changed by another program. Save your version over it?");
    answers.unsaved = Questions::Unsaved::Save;
    EXPECT_TRUE(window.close());
    EXPECT_EQ(onDisk().components[0].rows[0].amount.value, 250.0);
}

TEST_F(ChangedOutside, ADamagedFileCannotBeReloaded)
{
    written("recipes/ice.firn", "{\"format\": \"firn-rec");
    ASSERT_TRUE(says("“ice.firn” was changed by another program and is not a recipe any more."));
    EXPECT_FALSE(choices().contains("Reload"));
    choose("Keep mine");
    EXPECT_TRUE(window.files().save());
    EXPECT_EQ(onDisk().components[0].rows.size(), 1U);
}

TEST_F(ChangedOutside, ADeletedFileIsSaidAndSavedAgain)
{
    ASSERT_TRUE(QFile::remove(file()));
    ASSERT_TRUE(says("“ice.firn” was deleted or moved."));
    EXPECT_TRUE(window.isWindowModified());
    choose("Save again");
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(onDisk().components[0].rows.size(), 1U);
}

TEST_F(ChangedOutside, AFolderThatWentIsSaidAndCreatedAgain)
{
    ASSERT_TRUE(QDir(inFolder("recipes")).removeRecursively());
    ASSERT_TRUE(says("The folder " + inFolder("recipes") + " no longer exists."));
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_FALSE(window.files().save());
    EXPECT_EQ(messageShown(), file() + " could not be saved because its folder is missing. Create the folder, or save elsewhere.");
    choose("Create the folder again");
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(messageShown(), "");
    EXPECT_EQ(onDisk().components[0].rows.size(), 1U);
}

TEST_F(ChangedOutside, AFileThatComesBackIsSavedAgain)
{
    ASSERT_TRUE(QFile::rename(file(), inFolder("aside.firn")));
    ASSERT_TRUE(says("“ice.firn” was deleted or moved."));
    ASSERT_TRUE(QFile::rename(inFolder("aside.firn"), file()));
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.isWindowModified(); }));
    EXPECT_EQ(messageShown(), "");
}

TEST_F(ChangedOutside, TheSameRecipeWrittenBySomebodyElseIsNoChange)
{
    changeAmount(window.document(), {0, 0}, {300.0, Unit::Gram});
    written("recipes/ice.firn", contentsToSave(recipe(), file()));
    window.files().saving().look();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.isWindowModified(); }));
    EXPECT_EQ(messageShown(), "");
}

/// What saving adds to a recipe can be undone, and then the recipe is not what the file has.
TEST_F(ChangedOutside, MemoryFileAndSavedAgreeAcrossASaveAndUndo)
{
    Ingredient own = *shippedCatalogue().find("water");
    own.id = "well-water";
    own.name = "well water";
    own.synonyms.clear();
    ASSERT_TRUE(pantry.keep(own));
    insertRows(window.document(), {0, 1}, {Row{"well water", {20.0, Unit::Gram}, {}, {}}});
    ASSERT_TRUE(window.files().save());
    const auto agrees = [this] {
        return (contentsToSave(recipe(), file()) == contentsFor(onDisk(), file())) == !window.isWindowModified();
    };
    EXPECT_EQ(recipe().ingredients.size(), 1U);
    EXPECT_TRUE(agrees());
    while (history().canUndo()) {
        history().undo();
        EXPECT_TRUE(agrees()) << history().index();
    }
    while (history().canRedo()) {
        history().redo();
        EXPECT_TRUE(agrees()) << history().index();
    }
    EXPECT_FALSE(window.isWindowModified());
}

}  // namespace
}  // namespace firn::app
