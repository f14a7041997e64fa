#include "teach/sources_window.h"

#include "bench/close_front.h"
#include "explain/sources.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QShortcut>
#include <QShowEvent>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <algorithm>
#include <array>
#include <numeric>
#include <span>

namespace firn::app {

namespace {

constexpr QSize usualSize{1180, 680};
constexpr int targetHeight_px = 28;
constexpr int cellPadding_px = 5;
// What, published, range, error, code: how they share the width.
constexpr std::array columnShares{17, 34, 18, 18, 13};
constexpr int codeColumn = int(columnShares.size()) - 1;

/// "0.000006" of "6e-6", which only those who program read.
QString withoutPowers(QString text)
{
    static const QRegularExpression number(QStringLiteral(R"(\b(\d+)(?:\.(\d+))?e-(\d+)\b)"));
    for (auto found = number.match(text); found.hasMatch(); found = number.match(text)) {
        const int decimals = int(found.captured(2).size()) + found.captured(3).toInt();
        text.replace(found.capturedStart(), found.capturedLength(), figure(found.captured().toDouble(), decimals));
    }
    return text;
}

/// Text with room above and below it.
class RoomyCells : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QStyleOptionViewItem whole = option;
        initStyleOption(&whole, index);
        option.widget->style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &whole, painter, option.widget);
        QStyleOptionViewItem inner = option;
        inner.rect.adjust(0, cellPadding_px, 0, -cellPadding_px);
        QStyledItemDelegate::paint(painter, inner, index);
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(0, 2 * cellPadding_px);
    }
};

}  // namespace

SourcesWindow::SourcesWindow(QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_search(new QLineEdit)
    , m_table(new QTableWidget)
    , m_count(new QLabel)
    , m_code(new QCheckBox(tr("&Where in the code")))
{
    setObjectName(QStringLiteral("sources"));
    setWindowTitle(tr("Sources of the numbers"));
    resize(usualSize);
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setClearButtonEnabled(true);
    m_search->setMinimumHeight(targetHeight_px);
    m_search->setPlaceholderText(tr("sugar, CRC Handbook, extrapolated"));
    auto* label = new QLabel(tr("&Search"));
    label->setBuddy(m_search);
    auto* copyRows = new QPushButton(tr("&Copy the chosen rows"));
    copyRows->setMinimumHeight(targetHeight_px);
    connect(copyRows, &QPushButton::clicked, this, &SourcesWindow::copy);
    connect(m_search, &QLineEdit::textChanged, this, &SourcesWindow::search);
    connect(m_search, &QLineEdit::returnPressed, m_table, qOverload<>(&QWidget::setFocus));
    connect(new QShortcut(QKeySequence::Copy, m_table, nullptr, nullptr, Qt::WidgetShortcut), &QShortcut::activated, this,
        &SourcesWindow::copy);
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, [this] { closeFront(*this); });
    m_code->setObjectName(QStringLiteral("code"));
    m_code->setMinimumHeight(targetHeight_px);
    connect(m_code, &QCheckBox::toggled, this, &SourcesWindow::fitRows);
    fill();

    auto* head = new QHBoxLayout;
    head->setSpacing(closeSpace);
    head->addWidget(label);
    head->addWidget(m_search, 1);
    head->addWidget(m_count);
    head->addWidget(m_code);
    head->addWidget(copyRows);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(groupSpace, closeSpace, groupSpace, groupSpace);
    layout->setSpacing(closeSpace);
    layout->addLayout(head);
    layout->addWidget(m_table, 1);
    connect(m_code, &QCheckBox::toggled, this, [this] { search(m_search->text()); });
    search({});
}

void SourcesWindow::fill()
{
    m_table->setObjectName(QStringLiteral("sourcesTable"));
    m_table->setAccessibleName(tr("Sources"));
    m_table->setColumnCount(int(columnShares.size()));
    m_table->setHorizontalHeaderLabels({tr("What"), tr("Published"), tr("Holds for"), tr("Error"), tr("In the code")});
    m_table->setItemDelegate(new RoomyCells(m_table));
    m_table->setWordWrap(true);
    m_table->setTextElideMode(Qt::ElideNone);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    const auto sources = allSources();
    m_table->setRowCount(int(sources.size()));
    for (int row = 0; row < int(sources.size()); ++row) {
        const SourceFacts& facts = sources[std::size_t(row)];
        const QString code = QString::fromUtf8(facts.code.data(), qsizetype(facts.code.size()));
        const QStringList texts{translatedName(facts.name), translatedName(facts.publication), translatedName(facts.range),
            translatedName(facts.error), code};
        for (int column = 0; column < int(texts.size()); ++column) {
            auto* item = new QTableWidgetItem(withoutPowers(capitalised(texts[column])));
            item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
            if (column == codeColumn)
                item->setText(code);
            m_table->setItem(row, column, item);
        }
    }
}

/// Rows that hold every word somewhere.
void SourcesWindow::search(const QString& words)
{
    const QStringList wanted = words.split(u' ', Qt::SkipEmptyParts);
    int shown = 0;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        QString text;
        for (int column = 0; column < shownColumns(); ++column)
            text += m_table->item(row, column)->text() + u'\n';
        const bool isFound =
            std::ranges::all_of(wanted, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
        m_table->setRowHidden(row, !isFound);
        shown += isFound ? 1 : 0;
    }
    m_count->setText(shown > 0 ? tr("%n sources", "found", shown) : tr("No source has these words."));
}

void SourcesWindow::choose(Source source)
{
    m_search->clear();
    const auto sources = allSources();
    const auto found = std::ranges::find(sources, source, &SourceFacts::source);
    const int row = int(found - sources.begin());
    m_table->setCurrentCell(row, 0);
    m_table->scrollToItem(m_table->item(row, 0), QAbstractItemView::PositionAtCenter);
    m_table->setFocus();
}

void SourcesWindow::copy()
{
    QStringList lines;
    for (const QModelIndex& chosen : m_table->selectionModel()->selectedRows()) {
        QStringList cells;
        for (int column = 0; column < shownColumns(); ++column)
            cells << m_table->item(chosen.row(), column)->text();
        lines << cells.join(u'\t');
    }
    if (!lines.isEmpty())
        QApplication::clipboard()->setText(lines.join(u'\n'));
}

void SourcesWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fitRows();
    if (!event->spontaneous())
        m_search->setFocus();
}

void SourcesWindow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitRows();
}

/// All, or those before the code.
int SourcesWindow::shownColumns() const { return m_code->isChecked() ? m_table->columnCount() : codeColumn; }

void SourcesWindow::fitRows()
{
    layout()->activate();
    m_table->setColumnHidden(codeColumn, !m_code->isChecked());
    const auto shares = std::span(columnShares).first(std::size_t(shownColumns()));
    const int all = std::accumulate(shares.begin(), shares.end(), 0);
    for (std::size_t column = 0; column < shares.size(); ++column)
        m_table->setColumnWidth(int(column), m_table->viewport()->width() * shares[column] / all);
    m_table->resizeRowsToContents();
}

SourcesWindow& showSources(QWidget& bench)
{
    auto* window = bench.findChild<SourcesWindow*>();
    if (!window)
        window = new SourcesWindow(&bench);
    window->show();
    window->raise();
    window->activateWindow();
    return *window;
}

void showSources(QWidget& bench, Source source) { showSources(bench).choose(source); }

}  // namespace firn::app
