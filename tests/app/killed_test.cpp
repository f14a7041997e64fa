// The program is killed at random moments while it saves: the file is always whole, the old or the new one, and what was not saved is offered.
#include "bench.h"

#include "document/edits.h"
#include "document/recovery.h"
#include "exchange/recipe_json.h"

#include <QDir>
#include <QFile>
#include <algorithm>
#include <chrono>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <tuple>
#include <unistd.h>

namespace firn::app {
namespace {

constexpr int kills = 1000;
constexpr unsigned usualLife_us = 25000;
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

QByteArray contentsOf(const QString& file)
{
    QFile now(file);
    return now.open(QIODevice::ReadOnly) ? now.readAll() : QByteArray();
}

/// From the start of the program to its first save. Sanitizers make it many times as long. Gives up after a minute.
std::chrono::microseconds firstSave(const QString& file, const QString& recoveries)
{
    using namespace std::chrono;
    constexpr auto patience = 60s;
    const QByteArray before = contentsOf(file);
    const auto start = steady_clock::now();
    const pid_t child = fork();
    if (child < 0)
        return {};
    if (child == 0)
        work(file, recoveries);
    while (contentsOf(file) == before && steady_clock::now() - start < patience)
        std::this_thread::sleep_for(500us);
    const auto passed = duration_cast<microseconds>(steady_clock::now() - start);
    ::kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    return passed;
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

    // Most lives are long enough for a save, however slow the machine.
    const auto longestLife_us = std::max(usualLife_us, 4 * unsigned(firstSave(file, recoveries).count()));

    std::minstd_rand random(7);
    std::string lastTitle = recipeFromJson(contentsOf(file).toStdString())->title;
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

        const auto whole = recipeFromJson(contentsOf(file).toStdString());
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
