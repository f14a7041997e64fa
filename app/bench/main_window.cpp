#include "bench/main_window.h"

#include "bench/fields.h"
#include "bench/file_actions.h"
#include "bench/icons.h"
#include "bench/ingredient_table.h"
#include "bench/key_leaver.h"
#include "bench/keys_panel.h"
#include "bench/message_bar.h"
#include "bench/notes_panel.h"
#include "bench/recipe_sheet.h"
#include "bench/row_actions.h"
#include "bench/scale_panel.h"
#include "bench/steps_panel.h"
#include "compare/comparing_window.h"
#include "document/edits.h"
#include "document/instruments.h"
#include "document/pantry.h"
#include "document/places.h"
#include "document/temperature_choice.h"
#include "gauges/caution_strip.h"
#include "gauges/figures_panel.h"
#include "gauges/freezing_chart.h"
#include "gauges/readings_panel.h"
#include "gauges/sugar_scale.h"
#include "gauges/temperature_unit.h"
#include "gauges/texture_panel.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "notebook/notebook_panel.h"
#include "teach/derivation_window.h"
#include "teach/projector_window.h"
#include "versions/versions_panel.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDockWidget>
#include <QMimeData>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

/// Goes up whenever a panel comes or goes, so that an older layout is not forced onto newer panels.
constexpr int layoutVersion = 4;
const QString geometryKey = QStringLiteral("window/geometry");
const QString layoutKey = QStringLiteral("window/layout");

// At the first start the window takes most of the screen, and all of a small one.
constexpr double shareOfScreen = 0.9;
constexpr QSize smallestSize{1280, 700};

// The right column of gauges: as wide as the smallest screen allows, and its share of a larger one.
constexpr int rightColumn_px = 430;
constexpr double rightColumnShare = 0.3;
constexpr int cautions_px = 90;
constexpr int notebook_px = 300;
constexpr int roomForNotebook_px = 1600;  // a narrower window leaves the table too little beside it
constexpr int steps_px = 190;             // two of them and the buttons
// Sugar, freezing curve, texture, readings: how they share the right column.
const QList<int> gaugeHeights_px{100, 200, 180, 190};

/// The steps of whichever component is in view.
StepsPanel* stepsOf(Document& document)
{
    auto* panel = new StepsPanel(document);
    QObject::connect(&document, &Document::changed, panel, [panel, &document] {
        if (panel->component() != document.component())
            panel->showComponent(document.component());
    });
    return panel;
}

}  // namespace

MainWindow::MainWindow(Pantry& pantry, Questions& questions, FileWork& files)
    : m_document(pantry.catalogue())
    , m_recovery(m_document, recoveryFolder(), files)
    , m_messages(new MessageBar)
    , m_sheet(new RecipeSheet(m_document))
    , m_files(new FileActions(m_document, files, questions, *m_messages, *this, [this] { return m_sheet->takeTyping(); }))
    , m_rows(new RowActions(m_document, *m_sheet->table(), *m_messages, this))
    , m_notebook(new NotebookPanel({m_document, pantry, *m_files, *m_messages, questions}))
    , m_derivations(new DerivationWindow(m_document, questions, this))
    , m_projector(new ProjectorWindow(m_document, this))
    , m_questions(questions)
{
    setAcceptDrops(true);
    // Text fields of X11 take them to go to the end of the line, and to delete as far.
    qApp->installEventFilter(new KeyLeaver({QKeySequence(tr("Ctrl+E")), QKeySequence(tr("Ctrl+K"))}, this));
    m_document.setInstruments(rememberedInstruments());
    showTemperaturesAsChosen();
    connect(&ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, this, &MainWindow::writeTemperaturesAgain);
    auto* centre = new QWidget;
    auto* layout = new QVBoxLayout(centre);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_sheet, 1);
    layout->addWidget(m_messages);
    setCentralWidget(centre);

    buildPanels();
    connect(m_sheet->findChild<FiguresPanel*>(), &Gauge::figureChosen, m_derivations, &DerivationWindow::open);
    connect(m_sheet->table(), &IngredientTable::figureChosen, m_derivations, &DerivationWindow::open);
    buildMenus();
    drawIcons();
    connect(m_sheet, &RecipeSheet::everythingRead, &m_files->saving(), &FileSaving::forgetRefusal);
    const auto followPantry = [this, &pantry] { m_document.followCatalogue(pantry.own()); };
    connect(&pantry, &Pantry::changed, &m_document, followPantry);
    followPantry();
    connect(&m_document, &Document::pathChanged, this, &MainWindow::nameWindow);
    connect(&m_document, &Document::changed, this, &MainWindow::nameWindow);
    connect(&m_document, &Document::unsavedChanged, this, &MainWindow::nameWindow);
    connect(&m_recovery, &Recovery::failed, this, [this](const Sentence& why) {
        // That the recipe itself could not be saved is worse, and has the way out beside it.
        if (!m_files->saving().hasSaidTrouble())
            m_messages->say(translated(why));
    });
    connect(&m_recovery, &Recovery::written, m_files, &FileActions::forgetRecovered);
    connect(m_files, &FileActions::recovered, &m_recovery, &Recovery::writeNow);
    connect(&m_files->saving(), &FileSaving::failed, &m_recovery, &Recovery::writeNow);
    connect(&m_files->saving(), &FileSaving::compareWanted, this,
        [this](const QString& path, const Recipe& onDisk) { showComparingWith(m_document, m_questions, *this, path, onDisk); });
    connect(m_files, &FileActions::startedNew, m_sheet->table(), qOverload<>(&QWidget::setFocus));
    nameWindow();
    restoreLayout();
    m_sheet->table()->setFocus();
}

/// What stands on the document goes before it, each window while it is whole: a field that loses the focus may have something to say.
MainWindow::~MainWindow()
{
    hide();
    for (QWidget* child : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (child->windowType() == Qt::Window || child->windowType() == Qt::Dialog)
            delete child;
    }
}

template <class Panel>
Panel* MainWindow::addPanel(const QString& name, const QString& title)
{
    auto* panel = new Panel;
    addDock(name, title, panel);
    connect(&m_document, &Document::changed, panel, &Panel::show);
    connect(panel, &Gauge::figureChosen, m_derivations, &DerivationWindow::open);
    panel->show(m_document.analysis());
    return panel;
}

QDockWidget* MainWindow::addDock(const QString& name, const QString& title, QWidget* content)
{
    auto* dock = new QDockWidget(title, this);
    dock->setObjectName(name);
    auto* framed = new QWidget;
    auto* layout = new QVBoxLayout(framed);
    layout->setContentsMargins(closeSpace, gridStep, closeSpace, gridStep);
    layout->addWidget(content);
    dock->setWidget(framed);
    // A panel that is switched on comes to the front of those it shares its place with.
    connect(dock->toggleViewAction(), &QAction::triggered, dock, [dock](bool isOn) {
        if (isOn)
            dock->raise();
    });
    m_docks.append(dock);
    return dock;
}

void MainWindow::buildPanels()
{
    addPanel<SugarScale>(QStringLiteral("sugar"), tr("Sugar"));
    auto* chart = addPanel<FreezingChart>(QStringLiteral("freezing"), tr("Freezing curve"));
    addPanel<TexturePanel>(QStringLiteral("texture"), tr("Texture"));
    auto* readings = addPanel<ReadingsPanel>(QStringLiteral("readings"), tr("Readings"));
    addPanel<CautionStrip>(QStringLiteral("cautions"), tr("Cautions"));
    QDockWidget* steps = addDock(QStringLiteral("steps"), tr("Steps"), scrolled(stepsOf(m_document)));
    m_versions = new VersionsPanel(m_document);
    connect(m_versions, &VersionsPanel::said, m_messages, [this](const QString& sentence) { m_messages->note(sentence); });
    connect(m_versions, &VersionsPanel::compareWanted, this,
        [this](const QStringList& versions) { showComparing(m_document, m_questions, *this, versions); });
    m_versionsDock = addDock(QStringLiteral("versions"), tr("Versions"), m_versions);
    m_scale = new ScalePanel(m_document);
    m_scaleDock = addDock(QStringLiteral("scale"), tr("Scale"), scrolled(m_scale));
    for (QDockWidget* dock : {steps, m_versionsDock, m_scaleDock})
        connect(dock, &QDockWidget::visibilityChanged, this, [this, dock](bool isInFront) {
            if (isInFront && !dock->isFloating() && dock->height() < steps_px)
                resizeDocks({dock}, {steps_px}, Qt::Vertical);
        });
    m_notebookDock = addDock(QStringLiteral("notebook"), tr("Notebook"), m_notebook);
    addDock(QStringLiteral("notes"), tr("Notes"), new NotesPanel(m_document));
    addDock(QStringLiteral("keys"), tr("Keyboard"), scrolled(new KeysPanel));

    // All positions of a marker from press to release are one gesture.
    const auto gesture = [this] {
        if (m_markerGesture.isNone())
            m_markerGesture = Gesture::begin();
        return m_markerGesture;
    };
    connect(chart, &FreezingChart::servingChosen, this,
        [this, gesture](double temperature_c) { changeServingTemperature(m_document, Celsius{temperature_c}, gesture()); });
    connect(chart, &FreezingChart::freezerChosen, this,
        [this, gesture](double temperature_c) { changeFreezerTemperature(m_document, Celsius{temperature_c}, gesture()); });
    connect(chart, &FreezingChart::markerReleased, this, [this] { m_markerGesture = {}; });
    connect(readings, &ReadingsPanel::readAtChosen, this, [this](double temperature_c) { m_document.setReadAt({temperature_c}); });
}

void MainWindow::layOutAfresh()
{
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    setCorner(Qt::TopRightCorner, Qt::RightDockWidgetArea);
    setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    const auto isNamed = [](const QDockWidget* dock, std::initializer_list<QLatin1String> names) {
        return std::ranges::find(names, dock->objectName()) != names.end();
    };
    QDockWidget* cautions = nullptr;
    QDockWidget* right = nullptr;
    for (QDockWidget* dock : std::as_const(m_docks)) {
        const bool isAtBottom = isNamed(dock, {QLatin1String("cautions"), QLatin1String("steps"), QLatin1String("versions"),
                                                  QLatin1String("scale"), QLatin1String("notes"), QLatin1String("keys")});
        dock->setFloating(false);
        if (dock == m_notebookDock) {
            addDockWidget(Qt::LeftDockWidgetArea, dock);
            dock->setVisible(width() >= roomForNotebook_px);
            continue;
        }
        addDockWidget(isAtBottom ? Qt::BottomDockWidgetArea : Qt::RightDockWidgetArea, dock);
        dock->setVisible(!isNamed(dock, {QLatin1String("scale"), QLatin1String("notes"), QLatin1String("keys")}));
        if (!isAtBottom)
            right = dock;
        else if (!cautions)
            cautions = dock;
        else
            tabifyDockWidget(cautions, dock);
    }
    cautions->raise();
    resizeDocks({right}, {std::max(rightColumn_px, int(width() * rightColumnShare))}, Qt::Horizontal);
    resizeDocks({m_notebookDock}, {notebook_px}, Qt::Horizontal);
    resizeDocks(m_docks.first(gaugeHeights_px.size()), gaugeHeights_px, Qt::Vertical);
    resizeDocks({cautions}, {cautions_px}, Qt::Vertical);
}

void MainWindow::putInRecipe(const std::string& ingredient)
{
    IngredientTable& table = *m_sheet->table();
    table.commitEditor();
    const auto current = table.rows().placeOf(table.currentIndex().row());
    const std::size_t at = current ? current->row + 1 : std::size_t(table.rows().blankRow());
    insertRows(m_document, {table.rows().component(), at}, {Row{ingredient, {}, {}, {}}});
    table.setCurrentIndex(table.rows().index(table.rows().rowOf(at), IngredientModel::AmountColumn));
}

void MainWindow::restoreLayout()
{
    const QSize available = screen()->availableGeometry().size();
    resize((available * shareOfScreen).expandedTo(smallestSize));
    if (available.width() < smallestSize.width() / shareOfScreen || available.height() < smallestSize.height() / shareOfScreen)
        setWindowState(Qt::WindowMaximized);
    layOutAfresh();
    restoreGeometry(state().value(geometryKey).toByteArray());
    // The screen may be a smaller one than last time: a projector's.
    if (!isMaximized())
        resize(size().boundedTo(available));
    if (const QByteArray layout = state().value(layoutKey).toByteArray(); !layout.isEmpty() && !restoreState(layout, layoutVersion))
        layOutAfresh();
}

void MainWindow::saveLayout()
{
    QSettings remembered = state();
    remembered.setValue(geometryKey, saveGeometry());
    remembered.setValue(layoutKey, saveState(layoutVersion));
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!m_files->mayLeave()) {
        event->ignore();
        return;
    }
    saveLayout();
    event->accept();
}

void MainWindow::changeEvent(QEvent* event)
{
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        drawIcons();
    else if (event->type() == QEvent::ActivationChange && isActiveWindow())
        m_files->saving().look();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (!urls.isEmpty() && urls.front().isLocalFile())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    m_files->openFile(event->mimeData()->urls().front().toLocalFile());
}

void MainWindow::nameWindow()
{
    setWindowTitle(
        tr("%1[*] – Firn", "window title").arg(m_document.displayName().replace(QLatin1String("[*]"), QLatin1String("[*][*]"))));
    setWindowModified(m_document.isModified());
    setWindowFilePath(m_document.path());
}

/// Views of the document write all of it again; lists ask for their texts when they are painted.
void MainWindow::writeTemperaturesAgain()
{
    m_document.showAgain();
    for (const QAbstractItemView* view : findChildren<QAbstractItemView*>())
        view->viewport()->update();
}

void MainWindow::drawIcons()
{
    m_rows->undoAction()->setIcon(inkedIcon(QStringLiteral("undo"), palette()));
    m_rows->redoAction()->setIcon(inkedIcon(QStringLiteral("redo"), palette()));
}

}  // namespace firn::app
