#include "tasting/tasting_window.h"

#include "bench/close_front.h"
#include "bench/fields.h"
#include "bench/ink_label.h"
#include "bench/message_bar.h"
#include "bench/save_shortcut.h"
#include "bench/tool_tip.h"
#include "bench/undo_shortcut.h"
#include "document/places.h"
#include "document/tasting_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_window.h"
#include "recipe/blind_sheet.h"
#include "tasting/blind_view.h"
#include "tasting/scales_view.h"
#include "tasting/scores_view.h"
#include "tasting/taster_cautions.h"
#include "tasting/tasting_form.h"
#include "tasting/tasting_wording.h"
#include "tasting/triangle_view.h"
#include "teach/derivation_window.h"

#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTabWidget>
#include <QVBoxLayout>

namespace firn::app {

namespace {

const QString geometryKey = QStringLiteral("tasting/geometry");
constexpr QSize usualSize{1180, 660};
constexpr double list_px = 230.0;
constexpr double tabs_px = 420.0;
constexpr double target_px = 26.0;

}  // namespace

TastingWindow::TastingWindow(Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_messages(new MessageBar)
    , m_list(new QListWidget)
    , m_delete(new QPushButton(tr("Delete")))
    , m_hint(new InkLabel(InkLabel::Quiet, this))
    , m_cautions(new InkLabel(InkLabel::Caution, this))
    , m_formArea(nullptr)
    , m_form(new TastingForm(document, questions))
    , m_tabs(new QTabWidget)
    , m_scores(new ScoresView(document))
    , m_scales(new ScalesView(document))
    , m_blind(new BlindView(document, questions))
    , m_triangle(new TriangleView)
{
    setObjectName(QStringLiteral("tastingWindow"));
    layOut();
    const auto onKey = [this](const QKeySequence& keys, auto action) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, action);
    };
    onKey(Qt::Key_Escape, [this] { closeFront(*this); });
    onKey(QKeySequence::New, [this] { add(); });
    takeRecipesUndo(*this, m_document, *m_messages);
    takeRecipesSave(*this, *parent, m_document, *m_messages);
    connect(&document, &Document::replaced, m_form, &TastingForm::forget);
    connect(&document, &Document::changed, this, &TastingWindow::refresh);
    connect(&document, &Document::pathChanged, this, &TastingWindow::nameWindow);
    connect(m_form, &TastingForm::measuringWanted, this, [this, parent] { showMeasuring(m_document, *parent); });
    connect(m_scores, &ScoresView::figureWanted, this, &TastingWindow::figureWanted);
    connect(m_triangle, &TriangleView::figureWanted, this, &TastingWindow::figureWanted);
    connect(m_blind, &BlindView::said, m_messages, &MessageBar::tell);
    resize(usualSize);
    restoreGeometry(state().value(geometryKey).toByteArray());
}

/// A field that loses the focus may still have something to say: the window hides while it is whole, and can hear it.
TastingWindow::~TastingWindow() { hide(); }

void TastingWindow::layOut()
{
    m_formArea = scrolled(m_form, Qt::ScrollBarAlwaysOff);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(scrolled(m_scores, Qt::ScrollBarAlwaysOff), tr("Scores"));
    m_tabs->addTab(m_scales, tr("Scales"));
    m_tabs->addTab(m_blind, tr("Blind tasting"));
    m_tabs->addTab(m_triangle, tr("Triangle test"));
    m_tabs->setMinimumWidth(qRound(besideText(font(), tabs_px)));
    auto* body = new QWidget;
    auto* columns = new QHBoxLayout(body);
    columns->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    columns->setSpacing(groupSpace);
    columns->addWidget(log());
    columns->addWidget(m_formArea, 3);
    columns->addWidget(m_tabs, 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(body, 1);
    layout->addWidget(m_messages);
}

QWidget* TastingWindow::log()
{
    m_list->setObjectName(QStringLiteral("tastings"));
    m_list->setAccessibleName(tr("Tastings"));
    m_list->setWordWrap(true);
    m_list->setSpacing(gridStep / 2);
    m_hint->setText(tr("No tasting yet. Add one while you taste."));
    m_cautions->setObjectName(QStringLiteral("tasterCautions"));
    m_cautions->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* addButton = new QPushButton(tr("&New tasting"));
    addButton->setObjectName(QStringLiteral("addTasting"));
    m_delete->setObjectName(QStringLiteral("deleteTasting"));
    for (QPushButton* each : {addButton, m_delete})
        each->setMinimumHeight(qRound(besideText(font(), target_px)));
    connect(addButton, &QPushButton::clicked, this, &TastingWindow::add);
    connect(m_delete, &QPushButton::clicked, this, &TastingWindow::remove);
    connect(m_list, &QListWidget::currentRowChanged, this, &TastingWindow::showChosen);
    connect(new QShortcut(Qt::Key_Delete, m_list, nullptr, nullptr, Qt::WidgetShortcut), &QShortcut::activated, this,
        &TastingWindow::remove);
    auto* column = new QWidget;
    column->setFixedWidth(qRound(besideText(font(), list_px)));
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(titleLabel(tr("Tastings")));
    layout->addWidget(m_hint);
    layout->addWidget(m_list, 3);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(addButton, 1);
    buttons->addWidget(m_delete);
    layout->addLayout(buttons);
    layout->addWidget(scrolled(m_cautions, Qt::ScrollBarAlwaysOff), 2);
    return column;
}

void TastingWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
}

void TastingWindow::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    state().setValue(geometryKey, saveGeometry());
    m_messages->dismiss();
}

void TastingWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        refresh();
}

void TastingWindow::refresh()
{
    // Nobody looks while it is hidden, and typing an amount should not wait for it.
    if (!isVisible())
        return;
    fillList();
    showChosen();
    m_scores->show();
    m_scales->show();
    m_blind->show();
    nameWindow();
}

void TastingWindow::fillList()
{
    const Recipe& recipe = m_document.recipe();
    const int count = m_list->count();
    const int before = m_list->currentRow();
    const QSignalBlocker blocker(m_list);
    calm(*m_list);
    m_list->clear();
    for (auto tasting = recipe.tastings.rbegin(); tasting != recipe.tastings.rend(); ++tasting) {
        const QString text = tastingText(*tasting, recipe);
        auto* item = new QListWidgetItem(text, m_list);
        item->setToolTip(toolTipText(text));
    }
    // A new one comes first, and is what a person goes on with.
    const int wanted = m_list->count() > count ? 0 : std::max(0, before);
    m_list->setCurrentRow(std::min(wanted, m_list->count() - 1));
    if (m_list->count() != count)
        m_form->forget();
    m_list->setVisible(m_list->count() > 0);
    m_hint->setVisible(m_list->count() == 0);
    m_delete->setEnabled(m_list->count() > 0);
}

std::optional<std::size_t> TastingWindow::chosen() const
{
    const std::size_t count = m_document.recipe().tastings.size();
    const int row = m_list->currentRow();
    return row < 0 || std::size_t(row) >= count ? std::nullopt : std::optional(count - 1 - std::size_t(row));
}

void TastingWindow::showChosen()
{
    const auto place = chosen();
    m_form->setVisible(place.has_value());
    if (place)
        m_form->show(*place);
    showCautions();
}

void TastingWindow::showCautions()
{
    const Recipe& recipe = m_document.recipe();
    std::vector<std::string> versions{{}};
    if (const auto place = chosen()) {
        const Tasting& tasting = recipe.tastings[*place];
        const auto version = versionOf(tasting, recipe);
        if (version)
            versions = {*version};
        else if (const BlindSheet* sheet = sheetWith(recipe, tasting.code)) {
            versions.clear();
            for (const CodedSample& sample : sheet->samples)
                versions.push_back(sample.version);
        }
    }
    QStringList sentences{translated(beforeTasting())};
    for (const Sentence& caution : tasterCautions(recipe, m_document.catalogue(), versions))
        sentences.append(translated(caution));
    m_cautions->setText(sentences.join(u'\n'));
}

void TastingWindow::add()
{
    m_messages->dismiss();
    addTasting(m_document);
    m_form->takeFocus();
}

void TastingWindow::remove()
{
    if (const auto place = chosen())
        removeTasting(m_document, *place);
}

void TastingWindow::nameWindow()
{
    setWindowTitle(tr("Tasting: %1").arg(m_document.displayName().replace(QLatin1String("[*]"), QLatin1String("[*][*]"))));
}

void showTasting(Document& document, Questions& questions, QWidget& bench)
{
    auto* window = bench.findChild<TastingWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) {
        window = new TastingWindow(document, questions, &bench);
        if (auto* derivations = bench.findChild<DerivationWindow*>(QString(), Qt::FindDirectChildrenOnly))
            QObject::connect(window, &TastingWindow::figureWanted, derivations, &DerivationWindow::openOf);
    }
    window->show();
    window->raise();
    window->activateWindow();
}

}  // namespace firn::app
