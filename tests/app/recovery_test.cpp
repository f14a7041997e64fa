#include "bench.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "document/edits.h"
#include "document/recovery.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QDir>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <csignal>

namespace firn::app {
namespace {

class Recovering : public Bench {
protected:
    QString recoveries() { return inFolder("recovery"); }
    int filesLeft() { return int(QDir(recoveries()).entryList({"*.firn-recovery"}).size()); }
    void choose(const char* verb)
    {
        for (QPushButton* button : window.messages().findChildren<QPushButton*>())
            if (button->text() == QString::fromUtf8(verb) && button->isVisible())
                return button->click();
        ADD_FAILURE() << "there is no button " << verb;
    }
    /// What a crash leaves: the file, and a lock that nobody holds any more.
    void crashWith(const Recipe& recipe, const QString& path = {})
    {
        Document document(shippedCatalogue());
        auto recovery = std::make_unique<Recovery>(document, recoveries());
        if (path.isEmpty())
            document.startWith({});
        else
            ASSERT_TRUE(document.open(path));
        changeTitle(document, recipe.title);
        insertRows(document, {0, 0}, recipe.components[0].rows);
        recovery->writeNow();
        recovery->finishWriting();
        const QString file = recoveries() + "/" + QDir(recoveries()).entryList({"*.firn-recovery"}).value(0);
        const QString kept = file + ".kept";
        ASSERT_TRUE(QFile::copy(file, kept));
        recovery.reset();
        ASSERT_TRUE(QFile::rename(kept, file));
    }
    static Recipe granita()
    {
        Recipe recipe = recipeFromText("250 g water\n70.1 g sugar").value();
        recipe.title = "Granita <b>";
        return recipe;
    }
};

TEST_F(Recovering, AnUnsavedRecipeIsWrittenSoonAndGoesWithSaving)
{
    Document document(shippedCatalogue());
    Recovery recovery(document, recoveries());
    EXPECT_EQ(filesLeft(), 0);
    changeTitle(document, "Granita");
    EXPECT_TRUE(QTest::qWaitFor([this] { return filesLeft() == 1; }, 4000));
    ASSERT_TRUE(document.saveAs(inFolder("granita.firn")));
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 0);
    changeTitle(document, "Granita 2");
    recovery.writeNow();
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 1);
    document.undoStack().undo();
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 1) << "what was undone can be redone";
    document.undoStack().redo();
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 1) << "at once, not only when it is written again";
    ASSERT_TRUE(document.saveAs(inFolder("granita.firn")));
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 0);
}

TEST_F(Recovering, WhatIsOpenElsewhereIsNotOffered)
{
    Document document(shippedCatalogue());
    Recovery recovery(document, recoveries());
    changeTitle(document, "Granita");
    recovery.writeNow();
    recovery.finishWriting();
    EXPECT_EQ(filesLeft(), 1);
    EXPECT_TRUE(leftBehind(recoveries()).empty());
}

TEST_F(Recovering, TheUnsavedRecipeIsRecoveredAsItWas)
{
    crashWith(granita());
    window.files().offer(leftBehind(recoveries()));
    EXPECT_TRUE(messageShown().startsWith("“Granita <b>” had unsaved changes when Firn closed unexpectedly at "))
        << messageShown().toStdString();
    choose("Recover");
    EXPECT_EQ(recipe().title, "Granita <b>");
    EXPECT_EQ(rows(), "250 g water\n70.1 g sugar");
    EXPECT_TRUE(window.document().isModified());
    EXPECT_TRUE(QTest::qWaitFor([this] { return filesLeft() == 0; })) << "once it has a copy of its own";
    EXPECT_FALSE(QDir(recoveryFolder()).entryList({"*.firn-recovery"}).isEmpty());
    EXPECT_EQ(messageShown(), "");
}

TEST_F(Recovering, SavingWhatWasRecoveredWarnsOfAFileThatHasChangedSince)
{
    const QString file = written("a.firn", QByteArray::fromStdString(recipeToJson(recipeFromText("1 g salt").value())));
    crashWith(granita(), file);
    auto left = leftBehind(recoveries());
    ASSERT_EQ(left.size(), 1U);
    window.document().recover(left[0].recipe().value());
    EXPECT_EQ(window.document().path(), file);
    window.document().see(file, lookAt(Disk(), file));
    EXPECT_EQ(window.document().onDisk(), OnDisk::AsKnown);
    EXPECT_TRUE(window.isWindowModified());
    written("a.firn", "{}");
    window.document().recover(left[0].recipe().value());
    EXPECT_FALSE(window.files().save());
    EXPECT_EQ(window.document().onDisk(), OnDisk::Changed);
}

TEST_F(Recovering, DiscardedIsGoneAndTheNextIsOffered)
{
    crashWith(granita());
    Recipe other = granita();
    other.title = "Sorbet";
    QTest::qWait(20);
    const QString first = QDir(recoveries()).entryList({"*.firn-recovery"}).value(0);
    ASSERT_TRUE(QFile::rename(recoveries() + "/" + first, inFolder("first")));
    crashWith(other);
    ASSERT_TRUE(QFile::rename(inFolder("first"), recoveries() + "/" + first));
    window.files().offer(leftBehind(recoveries()));
    choose("Discard");
    EXPECT_TRUE(QTest::qWaitFor([this] { return filesLeft() == 1; }));
    EXPECT_TRUE(messageShown().contains("had unsaved changes"));
    choose("Recover");
    EXPECT_TRUE(QTest::qWaitFor([this] { return filesLeft() == 0; }));
}

TEST_F(Recovering, ATornFileIsSaidAndStaysUntilDiscarded)
{
    QDir().mkpath(recoveries());
    written("recovery/x.firn-recovery", "{\"format\": \"firn-rec");
    window.files().offer(leftBehind(recoveries()));
    EXPECT_TRUE(messageShown().contains("x.firn-recovery")) << messageShown().toStdString();
    EXPECT_EQ(filesLeft(), 1);
}

TEST_F(Recovering, AFolderThatCannotBeWrittenIsSaidOnce)
{
    written("recovery", "a file where the folder should be");
    Document document(shippedCatalogue());
    Recovery recovery(document, recoveries());
    int said = 0;
    QObject::connect(&recovery, &Recovery::failed, &recovery, [&said] { ++said; });
    for (const char* title : {"Granita", "Granita 2"}) {
        changeTitle(document, title);
        recovery.writeNow();
        recovery.finishWriting();
    }
    EXPECT_EQ(said, 1);
}

}  // namespace
}  // namespace firn::app
