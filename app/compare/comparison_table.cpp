#include "compare/comparison_table.h"

#include "bench/fields.h"
#include "bench/tool_tip.h"
#include "gauges/figure_button.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QScopedValueRollback>
#include <algorithm>
#include <numeric>

namespace firn::app {

namespace {

constexpr double rowHeight_px = 24.0;
constexpr int widestCell = 30;  // in characters

QFont heavier(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

}  // namespace

ComparisonTable::ComparisonTable(QWidget* parent)
    : QTableWidget(parent)
{
    setObjectName(QStringLiteral("compareTable"));
    setAccessibleName(tr("Rows and figures side by side"));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(true);
    setCornerButtonEnabled(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter);
    horizontalHeader()->setTextElideMode(Qt::ElideRight);
    verticalHeader()->hide();
    calm(*this);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    connect(this, &QAbstractItemView::doubleClicked, this, &ComparisonTable::open);
}

void ComparisonTable::show(const Comparison& comparison)
{
    const QStringList columns = columnNames(comparison);
    std::vector<ComparisonLine> lines = linesOf(comparison);
    if (columns == m_columns && lines == m_lines)
        return;
    m_columns = columns;
    m_lines = std::move(lines);
    fill();
}

void ComparisonTable::fill()
{
    if (m_columns.isEmpty())
        return;
    const int current = currentRow(), column = currentColumn();
    clearSpans();
    setRowCount(0);
    setColumnCount(int(m_columns.size()));
    setRowCount(int(m_lines.size()));
    for (int i = 0; i < columnCount(); ++i) {
        auto* item = new QTableWidgetItem(m_columns.at(i));
        item->setToolTip(toolTipText(m_columns.at(i)));
        // A change stands close behind its value.
        item->setTextAlignment((i == 0 || (i > 2 && i % 2 == 1) ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        setHorizontalHeaderItem(i, item);
    }
    for (int row = 0; row < rowCount(); ++row)
        fillLine(row, m_lines[std::size_t(row)]);
    fit();
    if (current >= 0 && current < rowCount())
        setCurrentCell(current, std::min(column, columnCount() - 1));
}

void ComparisonTable::fillLine(int row, const ComparisonLine& line)
{
    const GaugeColours colours = coloursInWindow(palette());
    auto* label = new QTableWidgetItem(line.label);
    label->setToolTip(toolTipText(line.label));
    label->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setItem(row, 0, label);
    if (line.kind != ComparisonLine::Cells) {
        setSpan(row, 0, 1, columnCount());
        if (line.kind == ComparisonLine::Section) {
            label->setFont(titleFont(font()));
            label->setFlags(Qt::ItemIsEnabled);
            label->setTextAlignment(Qt::AlignLeft | Qt::AlignBottom);
        }
        return;
    }
    for (int i = 0; i < int(line.cells.size()) && i + 1 < columnCount(); ++i) {
        auto* item = new QTableWidgetItem(line.cells.at(i));
        const bool isChange = isChangeCell(std::size_t(i));
        item->setTextAlignment((isChange ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        const bool opens = !line.figures.at(i).isEmpty();
        item->setToolTip(toolTipText(
            opens ? line.cells.at(i) + u'\n' + tr("Double-click or press Enter to explain this number") : line.cells.at(i)));
        if (line.isOther[std::size_t(i)]) {
            item->setFont(heavier(font()));
            item->setForeground(isChange ? colours.curve : colours.ink);
        } else if (isChange) {
            item->setForeground(colours.quietInk);
        }
        setItem(row, i + 1, item);
    }
}

void ComparisonTable::fit()
{
    if (m_isFitting || m_columns.isEmpty())
        return;
    const QScopedValueRollback<bool> once(m_isFitting, true);
    fitWidths();
    fitHeights();
    fitWidths();  // the heights may have brought a scroll bar
}

/// Names have the room that they need, and what the values leave; a long list of steps is told by its tool tip.
void ComparisonTable::fitWidths()
{
    const int widest = widestCell * fontMetrics().averageCharWidth();
    std::vector<int> widths(m_columns.size());
    const auto ask = [&](std::size_t column, const QString& text, const QFont& font) {
        const int needed = QFontMetrics(font).horizontalAdvance(text) + 3 * gridStep;
        widths[column] = std::max(widths[column], std::min(widest, needed));
    };
    for (std::size_t column = 0; column < widths.size(); ++column)
        ask(column, m_columns.at(qsizetype(column)), heavier(font()));
    for (const ComparisonLine& line : m_lines) {
        if (line.kind == ComparisonLine::Cells)
            ask(0, line.label, font());
        for (std::size_t i = 0; i < std::size_t(line.cells.size()) && i + 1 < widths.size(); ++i)
            ask(i + 1, line.cells.at(qsizetype(i)), line.isOther[i] ? heavier(font()) : font());
    }
    const int values = std::accumulate(widths.begin() + 1, widths.end(), 0);
    widths.front() = std::max(widths.front(), viewport()->width() - values);
    for (int column = 0; column < columnCount(); ++column)
        setColumnWidth(column, widths[std::size_t(column)]);
}

/// Lines of one row stay low; sentences take the lines that they need at this width.
void ComparisonTable::fitHeights()
{
    const int low = qRound(besideText(font(), rowHeight_px));
    for (int row = 0; row < rowCount(); ++row) {
        const ComparisonLine& line = m_lines[std::size_t(row)];
        if (line.kind == ComparisonLine::Section) {
            setRowHeight(row, qRound(1.4 * low));
        } else if (line.kind == ComparisonLine::Sentence) {
            const int width = viewport()->width() - closeSpace;
            const QRect needed =
                fontMetrics().boundingRect(QRect(0, 0, qMax(1, width), QWIDGETSIZE_MAX), Qt::TextWordWrap, line.label);
            setRowHeight(row, qMax(low, needed.height() + closeSpace));
        } else {
            setRowHeight(row, low);
        }
    }
}

void ComparisonTable::resizeEvent(QResizeEvent* event)
{
    QTableWidget::resizeEvent(event);
    fit();
}

void ComparisonTable::changeEvent(QEvent* event)
{
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        if (event->type() == QEvent::PaletteChange)
            calm(*this);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
        fill();
    }
}

/// Empty where the cell has no figure.
QString ComparisonTable::figureAt(const QModelIndex& cell) const
{
    return cell.isValid() ? m_lines[std::size_t(cell.row())].figures.value(cell.column() - 1) : QString();
}

void ComparisonTable::open(const QModelIndex& cell)
{
    const QString figure = figureAt(cell);
    if (figure.isEmpty())
        return;
    const auto place = std::size_t(cell.column() - 1);
    emit figureChosen(figure, sideOfCell(place), isChangeCell(place));
}

void ComparisonTable::openCurrent() { open(currentIndex()); }

void ComparisonTable::contextMenuEvent(QContextMenuEvent* event)
{
    const bool isByKey = event->reason() == QContextMenuEvent::Keyboard;
    const QModelIndex cell = isByKey ? currentIndex() : indexAt(event->pos());
    if (figureAt(cell).isEmpty())
        return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(invitation(), this, [this, cell = QPersistentModelIndex(cell)] { open(cell); });
    menu->popup(isByKey ? viewport()->mapToGlobal(visualRect(cell).center()) : event->globalPos());
}

/// Enter opens; copying takes the chosen rows, with tabs.
void ComparisonTable::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        openCurrent();
        return;
    }
    if (!event->matches(QKeySequence::Copy)) {
        QTableWidget::keyPressEvent(event);
        return;
    }
    QStringList text;
    for (int row = 0; row < rowCount(); ++row) {
        const ComparisonLine& line = m_lines[std::size_t(row)];
        if (selectionModel()->isRowSelected(row))
            text << (QStringList{line.label} + line.cells).join(u'\t');
    }
    QApplication::clipboard()->setText(text.join(u'\n'));
}

}  // namespace firn::app
