#include "bench.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "document/places.h"
#include "document/recipe_file.h"
#include "exchange/recipe_json.h"

#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QTabBar>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <csignal>
#include <sys/resource.h>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Files : public Bench {
protected:
    QByteArray contents(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("missing");
    }
    QPushButton* choice(const char* verb)
    {
        for (QPushButton* button : window.messages().findChildren<QPushButton*>())
            if (button->text() == QString::fromUtf8(verb) && button->isVisible())
                return button;
        return nullptr;
    }
    void drop(const QString& path)
    {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window, &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent dropped({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window, &dropped);
    }
};

/// Writing fails after so many bytes, as on a full disk.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_usual);
        const rlimit limit{bytes, m_usual.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_usual);
        std::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit m_usual{};
    void (*m_handler)(int) = nullptr;
};

TEST_F(Files, SavedAndOpenedAgainIsTheSameRecipe)
{
    lay("250 g water\n1 1/2 cups sugar\n5 g unicorn dust");
    changeTitle(window.document(), "Invented “ice” & more");
    changeServingTemperature(window.document(), Celsius{-9.5});
    changeProcess(window.document(), 0, Process::Scraped);
    changeNotes(window.document(), "two\nlines");
    addComponent(window.document(), "cream");
    const Recipe before = recipe();
    answers.toSave = inFolder("ice.firn");
    EXPECT_TRUE(window.files().save());
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(recentFiles().value(0), inFolder("ice.firn"));
    window.document().startWith({});
    window.files().openFile(inFolder("ice.firn"));
    EXPECT_EQ(recipe(), before);
    EXPECT_EQ(window.document().displayName(), "ice.firn");
}

TEST_F(Files, SavingTakesInWhatIsBeingTyped)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    goTo(0, Model::AmountColumn);
    type("300");
    press(Qt::Key_S, Qt::ControlModifier);
    const auto saved = recipeFromJson(contents(inFolder("ice.firn")).toStdString());
    ASSERT_TRUE(saved);
    EXPECT_EQ(saved->components.front().rows.front().amount.value, 300.0);
}

TEST_F(Files, UnreadableAmountIsNotLeftOutOfTheFileUnasked)
{
    lay("250 g water\n20 g sugar");
    answers.toSave = inFolder("ice.firn");
    goTo(1, Model::AmountColumn);
    type("abc");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(contents(inFolder("ice.firn")), "missing");
    EXPECT_TRUE(messageShown().contains("“abc”")) << messageShown().toStdString();
    EXPECT_TRUE(messageShown().contains("20\u202fg")) << messageShown().toStdString();
    const auto* editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(editor);
    EXPECT_EQ(editor->text(), "abc");

    press(Qt::Key_Escape);
    EXPECT_EQ(messageShown(), "");
    EXPECT_EQ(textAt(1, Model::AmountColumn), "20");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(contents(inFolder("ice.firn")).contains("20"));
}

TEST_F(Files, UnreadableTextAboveTheTableIsNotLeftOutOfTheFileUnasked)
{
    lay("250 g water");
    answers.toSave = inFolder("water.firn");
    auto* overrun = window.findChild<QLineEdit*>("overrun");
    overrun->setFocus();
    overrun->selectAll();
    type("lots");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(messageShown().startsWith("“lots” is not a valid overrun.")) << messageShown().toStdString();
    EXPECT_FALSE(QFile::exists(answers.toSave));
    overrun->selectAll();
    type("30");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(QFile::exists(answers.toSave));
    EXPECT_EQ(recipe().overrun_percent, 30.0);
}

TEST_F(Files, UnreadableTextKeepsItsComponentInView)
{
    lay("250 g water");
    addComponent(window.document(), "Cream");
    enter(0, IngredientModel::AmountColumn, "much");
    auto* components = window.findChild<QTabBar*>("components");
    components->setCurrentIndex(1);
    EXPECT_EQ(components->currentIndex(), 0);
    EXPECT_EQ(textAt(0, IngredientModel::AmountColumn), "much");
    enter(0, IngredientModel::AmountColumn, "300");
    components->setCurrentIndex(1);
    EXPECT_EQ(components->currentIndex(), 1);
}

TEST_F(Files, ClosingWithAnUnreadableAmountAsks)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    goTo(0, Model::AmountColumn);
    type("-5");
    answers.unsaved = Questions::Unsaved::Save;
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(answers.asked.startsWith("Save the changes to")) << answers.asked.toStdString();
    EXPECT_TRUE(messageShown().contains("“-5”")) << messageShown().toStdString();
    answers.unsaved = Questions::Unsaved::Discard;
    EXPECT_TRUE(window.close());
}

TEST_F(Files, QuestionAboutUnsavedChangesHasVerbs)
{
    window.setProperty("mayAsk", true);
    QString title;
    QString text;
    QStringList verbs;
    QTimer::singleShot(0, qApp, [&] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        title = box->windowTitle();
        text = box->text();
        for (QAbstractButton* button : box->buttons())
            verbs << button->text();
        box->reject();
    });
    EXPECT_EQ(Questions().unsavedChanges(&window, "Save the changes to “a.firn”?"), Questions::Unsaved::Cancel);
    EXPECT_EQ(title, "Unsaved changes");
    EXPECT_EQ(text, "Save the changes to “a.firn”?");
    verbs.sort();
    EXPECT_EQ(verbs, QStringList({"Cancel", "Discard", "Save"}));
}

TEST_F(Files, NameWithoutAnEndingBecomesAFirnFile)
{
    lay("250 g water");
    answers.toSave = inFolder("ice");
    EXPECT_TRUE(window.files().saveAs());
    EXPECT_EQ(window.document().path(), inFolder("ice.firn"));
}

TEST_F(Files, TextAndTableAreCopiesAndTheRecipeStillWaitsToBeSaved)
{
    lay("250 g water");
    changeTitle(window.document(), "Ice");
    for (const char* name : {"ice.txt", "ice.csv"}) {
        answers.toSave = inFolder(name);
        EXPECT_FALSE(window.files().saveAs());
        EXPECT_TRUE(contents(inFolder(name)).contains("water"));
        EXPECT_TRUE(window.isWindowModified());
        EXPECT_TRUE(messageShown().endsWith("save as .firn to keep the whole recipe.")) << messageShown().toStdString();
    }
}

TEST_F(Files, ACopyOfASavedRecipeIsNotSaidToBeUnsaved)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    ASSERT_TRUE(window.files().save());
    answers.toSave = inFolder("ice.txt");
    EXPECT_FALSE(window.files().saveAs());
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(messageShown(), QStringLiteral("Ingredients exported to %1. The whole recipe is saved in %2.")
                                  .arg(inFolder("ice.txt"), inFolder("ice.firn")));
}

TEST_F(Files, TextIsOpenedButNeverWrittenOver)
{
    const QString path = written("ice.txt", "250 g water\n");
    window.files().openFile(path);
    EXPECT_EQ(rows(), "250 g water");
    EXPECT_EQ(window.document().path(), "");
}

TEST_F(Files, TornFileIsRefusedInOneSentenceAndTheOpenRecipeStays)
{
    lay("250 g water");
    const Recipe before = recipe();
    const QByteArray whole = QByteArray::fromStdString(recipeToJson(before));
    for (const auto length : {whole.size() / 2, whole.size() - 3}) {
        window.files().openFile(written("torn.firn", whole.first(length)));
        EXPECT_TRUE(messageShown().contains("torn.firn")) << messageShown().toStdString();
        EXPECT_EQ(recipe(), before);
    }
    QTest::mouseClick(window.messages().findChild<QPushButton*>("dismissMessage"), Qt::LeftButton);
    EXPECT_EQ(messageShown(), "");
}

TEST_F(Files, AMessageGivesTheFocusBackToWhatHadItAndNeverToTheTitle)
{
    auto* dismiss = window.messages().findChild<QPushButton*>("dismissMessage");
    MainWindow starting(pantry, answers);
    starting.messages().say("One sentence.");
    starting.show();
    starting.messages().findChild<QPushButton*>("dismissMessage")->setFocus();
    starting.messages().dismiss();
    EXPECT_EQ(starting.focusWidget(), starting.findChild<IngredientTable*>());
    starting.close();

    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    table.setFocus();
    auto* passing = new QLineEdit(&window);
    passing->show();
    passing->setFocus();
    window.messages().say("One sentence.");
    QTest::mouseClick(dismiss, Qt::LeftButton);
    EXPECT_EQ(QApplication::focusWidget(), passing);
    window.messages().say("One sentence.");
    dismiss->setFocus();
    delete passing;
    QTest::mouseClick(dismiss, Qt::LeftButton);
    EXPECT_EQ(QApplication::focusWidget(), &table);
}

TEST_F(Files, MissingFileAndFolderAreRefused)
{
    window.files().openFile(inFolder("nowhere.firn"));
    EXPECT_TRUE(messageShown().contains("nowhere.firn"));
    window.files().openFile(folder.path());
    EXPECT_FALSE(messageShown().isEmpty());
}

TEST_F(Files, FullDiskLosesNeitherTheFileNorTheRecipe)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    ASSERT_TRUE(window.files().save());
    const QByteArray before = contents(inFolder("ice.firn"));
    changeNotes(window.document(), std::string(100000, 'x'));
    for (const rlim_t bytes : {0UL, 100UL, 65536UL}) {
        bool isSaved = true;
        {
            const FullDisk disk(bytes);
            isSaved = window.files().save();
        }
        EXPECT_FALSE(isSaved) << bytes;
        EXPECT_EQ(contents(inFolder("ice.firn")), before) << bytes;
        EXPECT_EQ(recipe().notes.size(), 100000U);
        EXPECT_TRUE(window.isWindowModified());
        EXPECT_TRUE(messageShown().contains("ice.firn")) << messageShown().toStdString();
    }
    EXPECT_TRUE(window.files().save());
}

TEST_F(Files, FileThatAnotherProgramChangedIsNotWrittenOverUnasked)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    ASSERT_TRUE(window.files().save());
    written("ice.firn", "somebody else's");
    changeAmount(window.document(), {0, 0}, {300, Unit::Gram});
    EXPECT_FALSE(window.files().save());
    EXPECT_EQ(contents(inFolder("ice.firn")), "somebody else's");
    EXPECT_TRUE(messageShown().startsWith("“ice.firn” was changed by another program")) << messageShown().toStdString();
    ASSERT_TRUE(choice("Keep mine"));
    QTest::mouseClick(choice("Keep mine"), Qt::LeftButton);
    EXPECT_TRUE(recipeFromJson(contents(inFolder("ice.firn")).toStdString()).has_value());
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Files, OrBothAreKept)
{
    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    ASSERT_TRUE(window.files().save());
    written("ice.firn", "somebody else's");
    changeAmount(window.document(), {0, 0}, {300, Unit::Gram});
    EXPECT_FALSE(window.files().save());
    answers.toSave = inFolder("mine.firn");
    ASSERT_TRUE(choice("Save elsewhere…"));
    QTest::mouseClick(choice("Save elsewhere…"), Qt::LeftButton);
    EXPECT_EQ(contents(inFolder("ice.firn")), "somebody else's");
    EXPECT_EQ(window.document().path(), inFolder("mine.firn"));
}

TEST_F(Files, ClosingAsksOnlyWhereSomethingWouldBeLost)
{
    lay("250 g water");
    EXPECT_TRUE(window.close());
    EXPECT_EQ(answers.unsavedAsked, 0);
}

TEST_F(Files, ClosingTakesInWhatIsBeingTypedBeforeItAsks)
{
    lay("250 g water");
    goTo(0, Model::AmountColumn);
    type("300");
    answers.unsaved = Questions::Unsaved::Cancel;
    EXPECT_FALSE(window.close());
    EXPECT_EQ(answers.unsavedAsked, 1);
    EXPECT_EQ(rows(), "300 g water");
}

TEST_F(Files, ClosingSavesDiscardsOrStays)
{
    lay("250 g water");
    changeAmount(window.document(), {0, 0}, {300, Unit::Gram});
    answers.unsaved = Questions::Unsaved::Cancel;
    EXPECT_FALSE(window.close());
    answers.unsaved = Questions::Unsaved::Save;
    answers.toSave = QString();
    EXPECT_FALSE(window.close()) << "no place was chosen, so nothing is saved";
    answers.toSave = inFolder("ice.firn");
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(contents(inFolder("ice.firn")).contains("300"));
    window.show();
    changeAmount(window.document(), {0, 0}, {400, Unit::Gram});
    answers.unsaved = Questions::Unsaved::Discard;
    EXPECT_TRUE(window.close());
    EXPECT_FALSE(contents(inFolder("ice.firn")).contains("400"));
}

TEST_F(Files, DroppedFileIsOpened)
{
    drop(written("ice.txt", "250 g water\n"));
    EXPECT_EQ(rows(), "250 g water");
}

TEST_F(Files, DroppedFileWaitsForTheAnswerAboutUnsavedChanges)
{
    lay("100 g sugar");
    changeAmount(window.document(), {0, 0}, {120, Unit::Gram});
    drop(written("ice.txt", "250 g water\n"));
    EXPECT_EQ(answers.unsavedAsked, 1);
    EXPECT_EQ(rows(), "120 g sugar");
}

TEST_F(Files, OpeningMakesAFreshHistory)
{
    lay("100 g sugar");
    changeAmount(window.document(), {0, 0}, {120, Unit::Gram});
    answers.unsaved = Questions::Unsaved::Discard;
    window.files().openFile(written("ice.txt", "250 g water\n"));
    EXPECT_FALSE(history().canUndo());
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Files, FirstStartGreetsWithASampleAndLaterOnesWithTheLastRecipe)
{
    state().clear();
    window.files().greet();
    EXPECT_GT(rowCount(), 0U);
    EXPECT_EQ(window.document().path(), "");
    EXPECT_FALSE(window.isWindowModified());

    window.document().startWith({});
    window.files().greet();
    EXPECT_EQ(rowCount(), 0U) << "nothing was opened last";

    lay("250 g water");
    answers.toSave = inFolder("ice.firn");
    ASSERT_TRUE(window.files().save());
    window.document().startWith({});
    window.files().greet();
    EXPECT_EQ(rows(), "250 g water");
}

TEST_F(Files, RecentFilesForgetWhatIsFoundToBeGone)
{
    const QString path = written("gone.txt", "250 g water\n");
    window.files().openFile(path);
    EXPECT_TRUE(recentFiles().contains(path));
    QFile::remove(path);
    EXPECT_TRUE(recentFiles().contains(path)) << "nobody asks a disk that may be slow";
    window.files().openFile(path);
    EXPECT_TRUE(messageShown().contains("gone.txt"));
    EXPECT_FALSE(recentFiles().contains(path));
}

}  // namespace
}  // namespace firn::app
