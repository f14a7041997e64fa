// The program is killed at random moments while it saves: the file is always whole, the old or the new one, and what was not saved is offered.
#include "bench.h"

#include "document/edits.h"
#include "document/recovery.h"
#include "exchange/recipe_json.h"

#include <QDir>
#include <QFile>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <tuple>
#include <unistd.h>

namespace firn::app {
namespace {

constexpr int kills = 1000;
constexpr int longestLife_us = 25000;
constexpr std::size_t rowsOfRecipe = 60;  // so that writing takes a while

std::string titleOf(int edit) { return "edit " + std::to_string(edit); }

/// Edits and saves for ever. Odd edits are saved, even ones only kept beside.
[[noreturn]] void work(const QString& file, const QString& recoveries)
{
    Document document(shippedCatalogue());
    Recovery recovery(document, recoveries);
    std::ignore = document.open(file);
    for (int edit = 1;; ++edit) {
        changeTitle(document, titleOf(edit));
        if (edit % 2 == 1) {
            std::ignore = document.saveAs(file);
        } else {
            recovery.writeNow();
            recovery.finishWriting();
        }
    }
}

TEST(Killed, AThousandTimesNothingIsTorn)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath("granita.firn");
    const QString recoveries = folder.filePath("recovery");
    Recipe recipe;
    recipe.title = titleOf(0);
    recipe.components[0].rows.assign(rowsOfRecipe, {"sugar", {1.5, Unit::Gram}, "a note that takes some room", {}});
    QFile start(file);
    ASSERT_TRUE(start.open(QIODevice::WriteOnly));
    start.write(QByteArray::fromStdString(recipeToJson(recipe)));
    start.close();

    std::minstd_rand random(7);
    std::string lastTitle = recipe.title;
    int saved = 0;
    int offered = 0;
    for (int kill = 0; kill < kills; ++kill) {
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0)
            work(file, recoveries);
        usleep(useconds_t(random() % longestLife_us));
        ASSERT_EQ(::kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL) << "it ended by itself";

        QFile now(file);
        ASSERT_TRUE(now.open(QIODevice::ReadOnly));
        const auto whole = recipeFromJson(now.readAll().toStdString());
        ASSERT_TRUE(whole) << english(whole.error());
        ASSERT_EQ(whole->components[0].rows.size(), rowsOfRecipe);
        saved += whole->title != lastTitle;
        lastTitle = whole->title;
        for (const LeftBehind& left : leftBehind(recoveries)) {
            const auto unsaved = left.recipe();
            ASSERT_TRUE(unsaved) << english(unsaved.error());
            ASSERT_EQ(unsaved->recipe.components[0].rows.size(), rowsOfRecipe);
            ++offered;
            left.discard();
        }
    }
    // Kills that come before the first save prove nothing.
    EXPECT_GT(saved, kills / 100);
    EXPECT_GT(offered, kills / 100);
}

}  // namespace
}  // namespace firn::app
