// How long an edit takes until every gauge is painted, a derivation to open, a page of a lesson to turn, and the window to come up. Drawn off
// screen. The ratios (to filling as many pixels, to starting a process that does nothing) carry over to other machines, the times do not.

#include "bench/ingredient_table.h"
#include "bench/main_window.h"
#include "bench/questions.h"
#include "document/built_in.h"
#include "document/edits.h"
#include "document/pantry.h"
#include "teach/derivation_window.h"
#include "teach/projector_window.h"

#include <QApplication>
#include <QImage>
#include <QKeyEvent>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>

namespace {

using namespace firn;
using namespace firn::app;
using Clock = std::chrono::steady_clock;

constexpr QSize screen{1366, 768};

/// Times what this does until it is painted, against filling the screen.
template <class Action>
void timeToPaint(benchmark::State& state, const Action& act)
{
    QImage blank(screen, QImage::Format_ARGB32_Premultiplied);
    std::chrono::duration<double> acted{};
    std::chrono::duration<double> filled{};
    for (auto _ : state) {
        const auto start = Clock::now();
        act();
        QApplication::sendPostedEvents();
        QApplication::processEvents();
        const auto painted = Clock::now();
        blank.fill(Qt::white);
        acted += painted - start;
        filled += Clock::now() - painted;
        state.SetIterationTime(std::chrono::duration<double>(painted - start).count());
    }
    state.counters["fillingTheScreenTimes"] = acted / filled;
}

void editToAllGaugesPainted(benchmark::State& state)
{
    const QTemporaryDir folder;
    Pantry pantry(*builtInCatalogue(), folder.filePath(QStringLiteral("ingredients.json")));
    Questions questions;
    MainWindow window(pantry, questions);
    window.document().startWith(greetingSample());
    window.resize(screen);
    window.show();
    QApplication::processEvents();

    double amount_g = 190.0;
    timeToPaint(state, [&] {
        amount_g = amount_g > 240.0 ? 190.0 : amount_g + 1.0;
        changeAmount(window.document(), {0, 2}, {amount_g, Unit::Gram});
    });
}
BENCHMARK(editToAllGaugesPainted)->Unit(benchmark::kMillisecond)->UseManualTime()->Repetitions(5)->ReportAggregatesOnly();

/// From a key in the editor of an amount to every gauge painted, which is as much as an edit, and the editor.
void keyToAllGaugesPainted(benchmark::State& state)
{
    const QTemporaryDir folder;
    Pantry pantry(*builtInCatalogue(), folder.filePath(QStringLiteral("ingredients.json")));
    Questions questions;
    MainWindow window(pantry, questions);
    window.document().startWith(greetingSample());
    window.resize(screen);
    window.show();
    auto& table = *window.findChild<IngredientTable*>();
    const QModelIndex cell = table.rows().index(2, IngredientModel::AmountColumn);
    table.setCurrentIndex(cell);
    static_cast<QAbstractItemView&>(table).edit(cell);
    QApplication::processEvents();
    QWidget* editor = table.indexWidget(cell);

    const auto press = [editor](Qt::Key key, const QString& text) {
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier, text);
        QApplication::sendEvent(editor, &event);
    };
    bool isLonger = false;
    timeToPaint(state, [&] {
        isLonger = !isLonger;
        press(isLonger ? Qt::Key_5 : Qt::Key_Backspace, isLonger ? QStringLiteral("5") : QString());
    });
}
BENCHMARK(keyToAllGaugesPainted)->Unit(benchmark::kMillisecond)->UseManualTime()->Repetitions(5)->ReportAggregatesOnly();

/// From the click on a figure to its derivation on the screen: computed, laid out and painted. The longest one, of a recipe of 20 rows.
void openingADerivation(benchmark::State& state)
{
    const QTemporaryDir folder;
    Pantry pantry(*builtInCatalogue(), folder.filePath(QStringLiteral("ingredients.json")));
    Questions questions;
    MainWindow window(pantry, questions);
    Recipe recipe = greetingSample();
    std::vector<Row>& rows = recipe.components.front().rows;
    for (std::size_t i = 0; rows.size() < 20; ++i)
        rows.push_back(rows[i]);
    window.document().startWith(recipe);
    window.resize(screen);
    window.show();
    auto& derivations = *window.findChild<DerivationWindow*>();
    QApplication::processEvents();

    QImage blank(derivations.size(), QImage::Format_ARGB32_Premultiplied);
    std::chrono::duration<double> opened{};
    std::chrono::duration<double> filled{};
    for (auto _ : state) {
        derivations.hide();
        QApplication::processEvents();
        const auto start = Clock::now();
        derivations.open(QStringLiteral("freezing_point_c"));
        QApplication::sendPostedEvents();
        QApplication::processEvents();
        const auto painted = Clock::now();
        blank.fill(Qt::white);
        opened += painted - start;
        filled += Clock::now() - painted;
        state.SetIterationTime(std::chrono::duration<double>(painted - start).count());
    }
    state.counters["fillingTheWindowTimes"] = opened / filled;
}
BENCHMARK(openingADerivation)->Unit(benchmark::kMillisecond)->UseManualTime()->Repetitions(5)->ReportAggregatesOnly();

/// Through all pages of a lesson, each painted with all of it shown.
void projectorPageTurned(benchmark::State& state)
{
    constexpr QSize projection{1920, 1080};
    const QTemporaryDir folder;
    Pantry pantry(*builtInCatalogue(), folder.filePath(QStringLiteral("ingredients.json")));
    Questions questions;
    MainWindow window(pantry, questions);
    const std::vector<Recipe> samples = builtInSamples();
    window.document().startWith(*std::ranges::find(samples, "Cucumber and gin ice", &Recipe::title));
    auto* projector = window.findChild<ProjectorWindow*>();
    projector->open();
    projector->showNormal();
    projector->resize(projection);
    QApplication::processEvents();

    QImage picture(projection, QImage::Format_ARGB32_Premultiplied);
    std::chrono::duration<double> turned{}, slowest{}, filled{};
    int page = 0;
    for (auto _ : state) {
        page = (page + 1) % int(projector->topics().size());
        const auto start = Clock::now();
        projector->goTo(page);
        projector->revealAll();
        projector->render(&picture);
        const auto painted = Clock::now();
        picture.fill(Qt::white);
        turned += painted - start;
        slowest = std::max<std::chrono::duration<double>>(slowest, painted - start);
        filled += Clock::now() - painted;
        state.SetIterationTime(std::chrono::duration<double>(painted - start).count());
    }
    state.counters["fillingTheScreenTimes"] = turned / filled;
    state.counters["slowest_ms"] = 1000.0 * slowest.count();
}
BENCHMARK(projectorPageTurned)->Unit(benchmark::kMillisecond)->UseManualTime()->Repetitions(5)->ReportAggregatesOnly();

std::chrono::duration<double> timeOf(const QStringList& arguments)
{
    const auto start = Clock::now();
    QProcess::execute(QStringLiteral(FIRN_PROGRAM), arguments);
    return Clock::now() - start;
}

/// From the start of the process to a picture of the whole window in a file: all that coming up takes, and writing a PNG besides.
void windowUpOnTheSample(benchmark::State& state)
{
    const QTemporaryDir folder;
    const QStringList picture{QStringLiteral("picture"), folder.filePath(QStringLiteral("window.png"))};
    timeOf(picture);  // warms the file cache
    std::chrono::duration<double> up{};
    std::chrono::duration<double> nothing{};
    for (auto _ : state) {
        const auto once = timeOf(picture);
        state.SetIterationTime(once.count());
        up += once;
        nothing += timeOf({QStringLiteral("--version")});
    }
    state.counters["printingTheVersionTimes"] = up / nothing;
}
BENCHMARK(windowUpOnTheSample)
    ->Unit(benchmark::kMillisecond)
    ->UseManualTime()
    ->Iterations(1)
    ->Repetitions(10)
    ->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toLocal8Bit());
    qputenv("XDG_STATE_HOME", settings.path().toLocal8Bit());
    const QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
