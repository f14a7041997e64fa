#include "bench/appearance.h"
#include "bench/file_actions.h"
#include "bench/ingredient_table.h"
#include "bench/main_window.h"
#include "bench/message_bar.h"
#include "bench/number_field.h"
#include "bench/recipe_bar.h"
#include "bench/recipe_sheet.h"
#include "bench/row_actions.h"
#include "bench/scale_panel.h"
#include "compare/comparing_window.h"
#include "document/edits.h"
#include "document/temperature_choice.h"
#include "gauges/temperature_unit.h"
#include "gauges/wording.h"
#include "measure/measure_window.h"
#include "notebook/notebook_panel.h"
#include "syrups/syrups_window.h"
#include "tasting/tasting_window.h"
#include "teach/derivation_window.h"
#include "teach/exercises_window.h"
#include "teach/methods_window.h"
#include "teach/projector_window.h"
#include "teach/sources_window.h"
#include "versions/versions_panel.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QDockWidget>
#include <QMenuBar>
#include <QToolBar>

namespace firn::app {

namespace {

void bringUp(QDockWidget& dock)
{
    dock.show();
    dock.raise();
}

}  // namespace

void MainWindow::buildMenus()
{
    m_files->fill(*menuBar()->addMenu(tr("&File")));
    m_rows->fill(*menuBar()->addMenu(tr("&Edit")));
    buildRecipeMenu(*menuBar()->addMenu(tr("&Recipe")));
    buildTeachMenu(*menuBar()->addMenu(tr("&Teach")));
    buildViewMenu(*menuBar()->addMenu(tr("&View")));
    buildHelpMenu(*menuBar()->addMenu(tr("&Help")));

    // Beside the menus, since a bar of its own would take the height of a gauge.
    auto* bar = new QToolBar(tr("History"));
    bar->setIconSize({16, 16});
    bar->addAction(m_rows->undoAction());
    bar->addAction(m_rows->redoAction());
    menuBar()->setCornerWidget(bar);
}

void MainWindow::buildTeachMenu(QMenu& menu)
{
    menu.addAction(m_derivations->openAction());
    menu.addAction(tr("Two &methods for the freezing point…"), QKeySequence(tr("Ctrl+Shift+T")), this,
        [this] { showMethods(m_document, *this); });
    menu.addAction(
        tr("&Exercises…"), QKeySequence(tr("Ctrl+Shift+E")), this, [this] { showExercises(m_document, m_questions, *this); });
    menu.addAction(m_projector->openAction());
    connect(m_derivations, &DerivationWindow::sourceChosen, this, [this](Source source) { showSources(*this, source); });
}

void MainWindow::buildRecipeMenu(QMenu& menu)
{
    QMenu* processes = menu.addMenu(tr("Freezing meth&od"));
    auto* group = new QActionGroup(processes);
    for (const Process process : allProcesses) {
        QAction* action = processes->addAction(
            capitalised(nameOf(process)), this, [this, process] { changeProcess(m_document, m_document.component(), process); });
        action->setCheckable(true);
        action->setData(int(process));
        group->addAction(action);
    }
    connect(processes, &QMenu::aboutToShow, this, [this, group] {
        for (QAction* action : group->actions())
            action->setChecked(action->data().toInt() == int(m_document.analysis().texture.process));
    });

    const auto addField = [&menu](const QString& name, NumberField* field) {
        menu.addAction(name, field, [field] {
            field->setFocus(Qt::ShortcutFocusReason);
            field->selectAll();
        });
    };
    addField(tr("&Overrun"), m_sheet->head()->overrun());
    addField(tr("&Serving temperature"), m_sheet->head()->serving());
    addField(tr("&Freezer temperature"), m_sheet->head()->freezer());
    menu.addSeparator();
    menu.addAction(tr("S&cale"), this, [this] {
        bringUp(*m_scaleDock);
        m_scale->goToField();
    });
    menu.addAction(tr("&Measure and correct…"), QKeySequence(tr("Ctrl+M")), this, [this] { showMeasuring(m_document, *this); });
    menu.addAction(tr("S&yrups…"), QKeySequence(tr("Ctrl+B")), this, [this] { showSyrups(m_document, *this); });
    menu.addAction(tr("Ca&talogue…"), QKeySequence(tr("Ctrl+I")), this, &MainWindow::catalogueWanted);
    menu.addSeparator();
    menu.addAction(tr("&Keep this version"), QKeySequence(tr("Ctrl+K")), this, [this] {
        bringUp(*m_versionsDock);
        m_versions->askForName();
    });
    menu.addAction(
        tr("Com&pare…"), QKeySequence(tr("Ctrl+Shift+D")), this, [this] { showComparing(m_document, m_questions, *this); });
    menu.addAction(tr("Tast&ing…"), QKeySequence(tr("Ctrl+T")), this, [this] { showTasting(m_document, m_questions, *this); });
    menu.addAction(tr("&Notebook"), QKeySequence(tr("Ctrl+L")), this, [this] {
        bringUp(*m_notebookDock);
        m_notebook->goToSearch();
    });
    menu.addSeparator();
    menu.addAction(tr("Add a &recipe as ingredient…"), m_files, &FileActions::linkRecipe);
    menu.addAction(tr("&Add component"), m_sheet, &RecipeSheet::addComponent);
    QAction* removal = menu.addAction(tr("&Delete component"), m_sheet, &RecipeSheet::removeComponent);
    connect(&menu, &QMenu::aboutToShow, this, [this, removal] { removal->setEnabled(m_document.recipe().components.size() > 1); });
}

void MainWindow::buildViewMenu(QMenu& menu)
{
    for (const QDockWidget* dock : std::as_const(m_docks))
        menu.addAction(dock->toggleViewAction());
    menu.addSeparator();
    menu.addAction(tr("&Reset window layout"), this, &MainWindow::layOutAfresh);
    menu.addSeparator();

    auto* group = new QActionGroup(&menu);
    const auto addAppearance = [&menu, group](const QString& name, Appearance appearance) {
        QAction* action = menu.addAction(name, group, [appearance] { chooseAppearance(appearance); });
        action->setCheckable(true);
        action->setChecked(appearance == chosenAppearance());
        group->addAction(action);
    };
    addAppearance(tr("Light or dark as the &system has it"), Appearance::System);
    addAppearance(tr("L&ight"), Appearance::Light);
    addAppearance(tr("Da&rk"), Appearance::Dark);
    menu.addSeparator();

    auto* units = new QActionGroup(&menu);
    const auto addUnit = [&menu, units](const QString& name, TemperatureUnit unit) {
        QAction* action = menu.addAction(name, units, [unit] { chooseTemperatureUnit(unit); });
        action->setCheckable(true);
        units->addAction(action);
        const auto check = [action, unit] { action->setChecked(unit == shownTemperatureUnit()); };
        connect(&ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, action, check);
        check();
    };
    addUnit(tr("Temperatures in °&C"), TemperatureUnit::Celsius);
    addUnit(tr("Temperatures in °&F"), TemperatureUnit::Fahrenheit);
}

void MainWindow::buildHelpMenu(QMenu& menu)
{
    QDockWidget* keys = m_docks.back();
    menu.addAction(tr("&Keyboard"), keys, [keys] {
        keys->show();
        keys->raise();
    });
    menu.addAction(tr("&Sources of the numbers…"), this, [this] { showSources(*this); });
    menu.addAction(tr("&About Firn"), this, [this] {
        m_messages->note(
            tr("Firn %1, a workbench for formulating frozen desserts. Free software under the GNU General Public License, "
               "version 3 or later. Built with Qt %2.")
                .arg(QCoreApplication::applicationVersion(), QLatin1String(qVersion())));
    });
}

}  // namespace firn::app
