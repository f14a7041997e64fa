// Ten thousand recipes: how long until the notebook lists them all and can be searched, until every figure is there, how long a search takes,
// and how much memory the program has. The files are the samples, varied by a seed.

#include "bench/main_window.h"
#include "bench/questions.h"
#include "document/built_in.h"
#include "document/notebook_place.h"
#include "document/pantry.h"
#include "document/recipe_file.h"
#include "notebook/notebook_model.h"
#include "notebook/notebook_panel.h"

#include <QApplication>
#include <QDir>
#include <QDockWidget>
#include <QFile>
#include <QLineEdit>
#include <QListView>
#include <QTemporaryDir>
#include <array>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cmath>
#include <random>

namespace {

using namespace firn;
using namespace firn::app;
using Clock = std::chrono::steady_clock;

constexpr int recipeCount = 10'000;
constexpr int recipesOfAFolder = 500;

double millisecondsSince(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// Each a sample with other amounts, a title of its own, and sometimes tags and a star.
void writeRecipes(const QString& folder)
{
    const std::vector<Recipe> samples = builtInSamples();
    std::mt19937 seed(1);
    std::uniform_real_distribution<double> factor(0.8, 1.25);
    for (int i = 0; i < recipeCount; ++i) {
        Recipe recipe = samples[std::size_t(i) % samples.size()];
        recipe.title += " " + std::to_string(i);
        for (Component& component : recipe.components)
            for (Row& row : component.rows)
                row.amount.value = std::round(row.amount.value * factor(seed));
        if (i % 3 == 0)
            recipe.tags = {"menu " + std::to_string(i % 12), "no dairy"};
        recipe.isFavourite = i % 20 == 0;
        const QDir place(folder + QStringLiteral("/%1").arg(i / recipesOfAFolder));
        place.mkpath(QStringLiteral("."));
        const QString file = place.filePath(QStringLiteral("recipe %1.firn").arg(i));
        if (!writeFile(file, contentsFor(recipe, file)))
            qFatal("The recipes could not be written.");
    }
}

/// A line of /proc/self/status in megabytes (Linux only).
double megabytes(const char* line)
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0.0;
    for (const QByteArray& entry : status.readAll().split('\n'))
        if (entry.startsWith(line))
            return entry.simplified().split(' ').value(1).toDouble() / 1024.0;
    return 0.0;
}

struct Kitchen {
    Kitchen()
        : pantry(*builtInCatalogue(), QString())
        , window(pantry, questions)
        , panel(*window.findChild<NotebookPanel*>())
    {
        window.resize(1366, 768);
        window.show();
        window.findChild<QDockWidget*>(QStringLiteral("notebook"))->show();
    }
    bool isListed() { return list().model()->rowCount() == recipeCount && panel.folder().unread() == 0; }
    QListView& list() { return *window.findChild<QListView*>(QStringLiteral("notebookList")); }

    Questions questions;
    Pantry pantry;
    MainWindow window;
    NotebookPanel& panel;
};

void waitUntil(auto holds)
{
    while (!holds())
        QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
}

/// From before there is a window. The longest that the window did not answer meanwhile is counted, too.
void openNotebook(benchmark::State& state)
{
    for (auto _ : state) {
        const auto start = Clock::now();
        Kitchen kitchen;
        double longest_ms = 0.0;
        auto last = Clock::now();
        const auto answers = [&] {
            longest_ms = std::max(longest_ms, millisecondsSince(last));
            last = Clock::now();
        };
        waitUntil([&] {
            answers();
            return kitchen.isListed();
        });
        const double listed_ms = millisecondsSince(start);
        waitUntil([&] {
            answers();
            return !kitchen.panel.folder().isReading();
        });
        state.SetIterationTime(listed_ms / 1000.0);
        state.counters["allFigures_ms"] = millisecondsSince(start);
        state.counters["longestPause_ms"] = longest_ms;
        state.counters["memory_MB"] = megabytes("VmRSS");
        state.counters["mostMemory_MB"] = megabytes("VmHWM");
    }
}
BENCHMARK(openNotebook)->Unit(benchmark::kMillisecond)->UseManualTime()->Iterations(1)->Repetitions(3);

constexpr std::array typedTexts{
    "", "r", "rhubarb", "sugar 24..28", "ice cream menu freezes < -2", "\"no dairy\" alcohol > 0", "xyzzy"};

/// From the text in the field to the list with what was found, painted.
void search(benchmark::State& state)
{
    Kitchen kitchen;
    waitUntil([&] { return kitchen.isListed() && !kitchen.panel.folder().isReading(); });
    auto& field = *kitchen.window.findChild<QLineEdit*>(QStringLiteral("notebookSearch"));
    const char* text = typedTexts.at(std::size_t(state.range(0)));
    double longest_ms = 0.0;
    for (auto _ : state) {
        field.setText(QStringLiteral("pear"));
        QApplication::processEvents();
        const auto start = Clock::now();
        field.setText(QString::fromLatin1(text));
        QApplication::sendPostedEvents();
        QApplication::processEvents();
        const double once_ms = millisecondsSince(start);
        longest_ms = std::max(longest_ms, once_ms);
        state.SetIterationTime(once_ms / 1000.0);
    }
    state.SetLabel(text);
    state.counters["longest_ms"] = longest_ms;
}
BENCHMARK(search)->Unit(benchmark::kMillisecond)->UseManualTime()->DenseRange(0, int(typedTexts.size()) - 1);

/// The looking alone.
void find(benchmark::State& state)
{
    Kitchen kitchen;
    waitUntil([&] { return kitchen.isListed() && !kitchen.panel.folder().isReading(); });
    const std::vector<std::size_t> places = ordered(kitchen.panel.folder().cards(), CardOrder::Title);
    const NotebookFilter filter{*queryFrom("ice cream menu freezes < -2"), Shelf::All, {}};
    for (auto _ : state)
        benchmark::DoNotOptimize(found(kitchen.panel.folder().cards(), places, filter));
}
BENCHMARK(find)->Unit(benchmark::kMillisecond);

void order(benchmark::State& state)
{
    Kitchen kitchen;
    waitUntil([&] { return kitchen.isListed() && !kitchen.panel.folder().isReading(); });
    for (auto _ : state)
        benchmark::DoNotOptimize(ordered(kitchen.panel.folder().cards(), CardOrder::FreezesColdest));
}
BENCHMARK(order)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir folder;
    for (const char* place : {"XDG_CONFIG_HOME", "XDG_STATE_HOME"})
        qputenv(place, folder.path().toLocal8Bit());
    const QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    writeRecipes(folder.filePath(QStringLiteral("notebook")));
    chooseNotebookFolder(folder.filePath(QStringLiteral("notebook")));
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
