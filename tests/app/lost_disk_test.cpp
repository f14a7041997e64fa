// A recipe is saved, its disk fails for real, Ctrl+S, close, kill, start: the cause is said, closing asks, and everything is there again.
#include "bench.h"
#include "small_disk.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "document/edits.h"
#include "document/recovery.h"

#include <QDir>
#include <QPushButton>
#include <QTest>

namespace firn::app {
namespace {

struct Loss {
    const char* name;
    std::function<bool(const std::string& disk)> happens;
    const char* cause;
    const char* wayOut;
    bool takesTheFile;
};
void PrintTo(const Loss& loss, std::ostream* stream) { *stream << loss.name; }

QString fileOn(const std::string& disk) { return QString::fromStdString(disk) + QStringLiteral("/recipes/granita.firn"); }

bool isFilled(const std::string& disk)
{
    const std::string file = disk + "/ballast";
    while (writes(file.c_str(), std::string(1024 * 1024, 'x')))
        continue;
    return true;
}

const Loss losses[] = {
    {"folder", [](const std::string& disk) { return QDir(QString::fromStdString(disk) + "/recipes").removeRecursively(); },
        "its folder is missing", "Create the folder again", true},
    {"full", isFilled, "the disk is full", "Save elsewhere…", false},
    {"readOnly", [](const std::string& disk) { return mount("firn", disk.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0; },
        "the disk is read-only", "Save elsewhere…", false},
    {"stick", [](const std::string& disk) { return umount2(disk.c_str(), MNT_DETACH) == 0; }, "its folder is missing",
        "Create the folder again", true},
};

class LostDisk : public testing::TestWithParam<Loss> {};

bool offersChoice(MainWindow& window, const char* verb)
{
    return std::ranges::any_of(window.messages().findChildren<QPushButton*>(),
        [verb](const QPushButton* button) { return button->text() == QString::fromUtf8(verb) && !button->isHidden(); });
}

/// Recovery copies are removed on another thread.
bool isNothingLeftBehind() { return sharedFileWork().waitForDone(recoveryFolder() + u'/') && leftBehind().empty(); }

/// What the next start offers, recovered in a window.
Recipe recoveredAtTheNextStart()
{
    auto left = leftBehind();
    EXPECT_EQ(left.size(), 1U);
    Answers answers;
    Pantry pantry(shippedCatalogue(), QStringLiteral("/nowhere/ingredients.json"));
    MainWindow window(pantry, answers);
    window.files().offer(std::move(left));
    for (QPushButton* button : window.messages().findChildren<QPushButton*>())
        if (button->text() == QLatin1String("Recover"))
            button->click();
    EXPECT_TRUE(window.isWindowModified());
    answers.unsaved = Questions::Unsaved::Discard;
    EXPECT_TRUE(window.close());
    EXPECT_EQ(answers.unsavedAsked, 1);
    return window.document().recipe();
}

TEST_P(LostDisk, TypedRowsSurviveSavingClosingKillingAndStarting)
{
    onSmallDisk([loss = GetParam()](const std::string& disk) {
        Answers answers;
        Pantry pantry(shippedCatalogue(), QStringLiteral("/nowhere/ingredients.json"));
        auto* window = new MainWindow(pantry, answers);  // never deleted: the program is killed
        QDir().mkpath(QFileInfo(fileOn(disk)).path());
        insertRows(window->document(), {0, 0}, {Row{"water", {500.0, Unit::Gram}, {}, {}}});
        answers.toSave = fileOn(disk);
        std::string wrong = complaint(window->files().save(), "it could not be saved at first");
        wrong += complaint(!window->isWindowModified(), "what is saved counts as unsaved");

        insertRows(window->document(), {0, 1}, {Row{"sugar", {150.0, Unit::Gram}, {}, {}}});
        wrong += complaint(loss.happens(disk), "the disk did not fail");
        wrong += complaint(!window->files().save(), "it was said to be saved");
        const QString said = window->messages().sentence();
        wrong += complaint(said.contains(QString::fromUtf8(loss.cause)), ("the cause is not said: " + said.toStdString()).c_str());
        wrong += complaint(!said.contains(QLatin1String("lost")), "it promises too much");
        wrong += complaint(offersChoice(*window, loss.wayOut), "the way out is no button");
        wrong += complaint(window->isWindowModified(), "the title does not say that it is unsaved");
        answers.unsaved = Questions::Unsaved::Cancel;
        wrong += complaint(!window->close() && answers.unsavedAsked == 1, "closing did not ask");
        answers.unsaved = Questions::Unsaved::Save;
        wrong += complaint(!window->close(), "it closed though saving failed");
        // The copy that the failed save has begun: no two seconds pass before the kill.
        sharedFileWork().waitForDone(recoveryFolder() + u'/');
        return wrong;
    });
    if (testing::Test::IsSkipped())
        return;
    const Recipe recipe = recoveredAtTheNextStart();
    ASSERT_EQ(recipe.components[0].rows.size(), 2U);
    EXPECT_EQ(recipe.components[0].rows[1].ingredient, "sugar");
    EXPECT_TRUE(isNothingLeftBehind());
}

TEST_P(LostDisk, ASavedRecipeWhoseFileWentIsUnsavedAgain)
{
    if (!GetParam().takesTheFile)
        return;
    onSmallDisk([loss = GetParam()](const std::string& disk) {
        Answers answers;
        Pantry pantry(shippedCatalogue(), QStringLiteral("/nowhere/ingredients.json"));
        auto* window = new MainWindow(pantry, answers);
        QDir().mkpath(QFileInfo(fileOn(disk)).path());
        insertRows(window->document(), {0, 0}, {Row{"water", {500.0, Unit::Gram}, {}, {}}});
        answers.toSave = fileOn(disk);
        std::string wrong = complaint(window->files().save(), "it could not be saved at first");
        wrong += complaint(loss.happens(disk), "the disk did not fail");
        // Closing looks before it goes, though nobody has told that the file went.
        wrong += complaint(!window->close() && answers.unsavedAsked == 1, "closing did not ask");
        wrong += complaint(answers.asked == QStringLiteral("“granita.firn” is no longer on the disk. Save it again?"),
            ("another question: " + answers.asked.toStdString()).c_str());
        wrong += complaint(window->isWindowModified(), "the title does not say that it is unsaved");
        wrong +=
            complaint(window->messages().sentence().contains(QLatin1String("no longer exists")), "the missing folder is not said");
        wrong += complaint(!window->files().save(), "it was said to be saved");
        wrong += complaint(offersChoice(*window, loss.wayOut), "the way out is no button");
        sharedFileWork().waitForDone(recoveryFolder() + u'/');
        return wrong;
    });
    if (testing::Test::IsSkipped())
        return;
    EXPECT_EQ(recoveredAtTheNextStart().components[0].rows.size(), 1U);
    EXPECT_TRUE(isNothingLeftBehind());
}

INSTANTIATE_TEST_SUITE_P(Disks, LostDisk, testing::ValuesIn(losses), [](const auto& loss) { return std::string(loss.param.name); });

}  // namespace
}  // namespace firn::app
