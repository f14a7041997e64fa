// A disk that hangs never stops the window: events go on, a dialog says what is waited for, and its Cancel gives the window back.
#include "bench.h"
#include "failing_disk.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "document/edits.h"
#include "document/recovery.h"

#include <QAbstractButton>
#include <QApplication>
#include <QMessageBox>
#include <QTest>
#include <QTimer>

namespace firn::app {
namespace {

constexpr int enoughEvents = 20;

class SlowDisk : public testing::Test {
protected:
    SlowDisk()
        : work(disk)
        , pantry(shippedCatalogue(), folder.filePath(QStringLiteral("own/ingredients.json")))
        , window(pantry, answers, work)
    {
        window.setProperty("mayAsk", true);
        window.show();
        insertRows(window.document(), {0, 0}, {Row{"water", {500.0, Unit::Gram}, {}, {}}});
        answers.toSave = file();
        QObject::connect(&ticks, &QTimer::timeout, [this] { ++events; });
        ticks.start(0);
    }
    ~SlowDisk() override { disk->release(); }

    QString file() { return folder.filePath(QStringLiteral("granita.firn")); }

    /// Runs with the disk hanging, which is let go only after the window has got events meanwhile.
    template <class Act>
    auto whileItHangs(Act act)
    {
        disk->hold(folder.path());
        events = 0;
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, [this] {
            if (disk->isHanging() && events > enoughEvents)
                disk->release();
        });
        watch.start(0);
        return act();
    }

    /// Cancels the dialog that comes up, and keeps what it said.
    template <class Act>
    auto cancelling(Act act)
    {
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, [this] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                said = box->text();
                box->buttons().constFirst()->click();
            }
        });
        watch.start(5);
        return act();
    }

    QTemporaryDir folder;
    std::shared_ptr<FailingDisk> disk = std::make_shared<FailingDisk>();
    FileWork work;
    Answers answers;
    Pantry pantry;
    MainWindow window;
    QTimer ticks;
    int events = 0;
    QString said;
};

TEST_F(SlowDisk, TheWindowGetsItsEventsWhileAFileIsSavedOpenedAndLookedAt)
{
    EXPECT_TRUE(whileItHangs([this] { return window.files().save(); }));
    EXPECT_GT(events, enoughEvents) << "saving";
    EXPECT_FALSE(window.isWindowModified());

    whileItHangs([this] {
        window.files().openFile(file());
        return true;
    });
    EXPECT_GT(events, enoughEvents) << "opening";

    answers.toSave = folder.filePath(QStringLiteral("granita.csv"));
    EXPECT_FALSE(whileItHangs([this] { return window.files().saveAs(); }));
    EXPECT_GT(events, enoughEvents) << "exporting";
    EXPECT_TRUE(QFile::exists(answers.toSave));

    EXPECT_TRUE(whileItHangs([this] { return window.close(); }));
    EXPECT_GT(events, enoughEvents) << "looking before it closes";
    EXPECT_EQ(answers.unsavedAsked, 0);
}

TEST_F(SlowDisk, NobodyWaitsForTheRecoveryCopy)
{
    disk->hold(recoveryFolder());
    Recovery recovery(window.document(), recoveryFolder(), work);
    recovery.writeNow();
    EXPECT_TRUE(QTest::qWaitFor([this] { return disk->isHanging(); }));
    EXPECT_TRUE(window.files().save()) << "another disk does not wait for it";
    disk->release();
    recovery.finishWriting();
}

TEST_F(SlowDisk, CancellingGivesTheWindowBackAndTheRecipeIsUnsavedUntilItIsWritten)
{
    disk->hold(folder.path());
    EXPECT_FALSE(cancelling([this] { return window.files().save(); }));
    EXPECT_EQ(said, "Saving “granita.firn”…");
    EXPECT_EQ(window.messages().sentence(), "“granita.firn” is still being saved. Firn will tell you how it went.");
    EXPECT_TRUE(window.isWindowModified());

    said.clear();
    EXPECT_FALSE(cancelling([this] { return window.close(); })) << "the pending save is not dropped";
    EXPECT_TRUE(said.startsWith("Saving")) << said.toStdString();
    EXPECT_EQ(answers.unsavedAsked, 0);

    disk->release();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.isWindowModified(); }));
    EXPECT_EQ(window.messages().sentence(), "“granita.firn” is saved.");
    EXPECT_TRUE(window.close());
}

TEST_F(SlowDisk, WhatIsTypedMeanwhileIsUnsavedAfterwards)
{
    disk->hold(folder.path());
    EXPECT_FALSE(cancelling([this] { return window.files().save(); }));
    changeTitle(window.document(), "Granita");
    disk->release();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.document().isBeingSaved(); }));
    EXPECT_TRUE(window.isWindowModified());
    window.document().undoStack().undo();
    window.document().undoStack().undo();
    EXPECT_TRUE(window.isWindowModified()) << "the empty recipe of the start is in no file";
}

TEST_F(SlowDisk, ItCanBeSavedElsewhereMeanwhile)
{
    const QTemporaryDir elsewhere;
    disk->hold(folder.path());
    EXPECT_FALSE(cancelling([this] { return window.files().save(); }));
    answers.toSave = elsewhere.filePath(QStringLiteral("granita.firn"));
    EXPECT_TRUE(window.files().saveAs());
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_TRUE(window.close()) << "nothing is left to wait for";
    EXPECT_EQ(answers.unsavedAsked, 0);
    disk->release();
}

}  // namespace
}  // namespace firn::app
