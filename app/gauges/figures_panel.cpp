#include "gauges/figures_panel.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int mostColumns = 4;
constexpr int columnGap = 12;
constexpr int usualItemCount = 12;
constexpr double leastLactose_g = 0.05;  // rounds to 0.1

}  // namespace

FiguresPanel::FiguresPanel(QWidget* parent)
    : Gauge(tr("Figures of the mix"), parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    show(Analysis{});
}

QSize FiguresPanel::sizeHint() const
{
    const int width = fontMetrics().averageCharWidth() * 60;
    return {width, heightForWidth(width)};
}

QSize FiguresPanel::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 50, 3 * (lineHeight(font()) + gridStep / 2)};
}

int FiguresPanel::heightForWidth(int width) const { return rowsIn(width) * (lineHeight(font()) + gridStep / 2); }

void FiguresPanel::show(const Analysis& analysis)
{
    m_isEmpty = analysis.mix.isEmpty();
    const QString amount = figure(1000.0, 0), share = figure(100.0, 0), temperature = figure(-10.0, 0), none = tr("none");
    const auto& [water, sugars, fat, milkFat, protein, alcohol, totalSolids, milkSolidsNotFat] = analysis.shares;
    const std::optional<FreezingPoint>& freezingPoint = analysis.freezing.freezingPoint;
    const QString alcoholByVolume = withUnit(figure(analysis.alcohol_percentByVolume, 1), QStringLiteral("%"));
    m_items.clear();
    add(tr("mass"), gramsText(analysis.mass), amount);
    add(tr("volume at 20 °C"), millilitresText(analysis.volume_20c), amount);
    if (analysis.overrun_percent > 0.0)
        add(tr("with air"), millilitresText(analysis.finishedVolume), amount);
    add(tr("total solids"), percentText(totalSolids), share);
    add(tr("sugars"), percentText(sugars), share);
    add(tr("fat"), percentText(fat), share);
    add(tr("protein"), percentText(protein), share);
    add(tr("freezing point"), freezingPoint ? degrees(freezingPoint->temperature) : none, temperature);
    add(tr("by the textbook"), analysis.textbook ? degrees(analysis.textbook->freezingPoint) : none, temperature);
    add(tr("alcohol by mass"), percentText(alcohol), share);
    add(tr("alcohol by volume"), alcoholByVolume, share);
    add(tr("as sweet as sucrose at"), withUnit(figure(analysis.sweetness_percentSucrose, 0), QStringLiteral("%")), share);
    if (analysis.lactose_gPer100gWater >= leastLactose_g)
        add(tr("lactose in 100 g water"), lactoseText(analysis.lactose_gPer100gWater), share);
    QStringList spoken;
    for (const Item& item : m_items)
        spoken << tr("%1: %2", "a figure and its value").arg(item.label, item.beforeMark + item.afterMark);
    setValueText(m_isEmpty ? tr("The figures come with the first ingredient") : spoken.join(u'\n'));
    updateGeometry();
    update();
}

void FiguresPanel::add(const QString& label, const QString& figureWithUnit, const QString& widest)
{
    const QChar decimalMark = QLocale().decimalPoint().at(0);
    const auto mark = std::find_if(
        figureWithUnit.begin(), figureWithUnit.end(), [decimalMark](QChar c) { return c.isSpace() || c == decimalMark; });
    const auto length = mark - figureWithUnit.begin();
    m_items.push_back({label, figureWithUnit.left(length), figureWithUnit.mid(length), widest});
}

int FiguresPanel::Column::width() const { return label + closeSpace + beforeMark + afterMark; }

std::vector<FiguresPanel::Column> FiguresPanel::columnsOf(int rows) const
{
    const auto widen = [this](int& width, const QString& text) { width = std::max(width, fontMetrics().horizontalAdvance(text)); };
    std::vector<Column> columns;
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        if (i % static_cast<std::size_t>(rows) == 0)
            columns.emplace_back();
        widen(columns.back().label, m_items[i].label);
        widen(columns.back().beforeMark, m_items[i].beforeMark);
        widen(columns.back().beforeMark, m_items[i].widest);
        widen(columns.back().afterMark, m_items[i].afterMark);
    }
    return columns;
}

/// The fewest rows that the width allows, so that the table is as flat as can be.
int FiguresPanel::rowsIn(int width) const
{
    const int items = std::max(static_cast<int>(m_items.size()), usualItemCount);
    for (int count = mostColumns; count > 1; --count) {
        const int rows = (items + count - 1) / count;
        int needed = -columnGap;
        for (const Column& column : columnsOf(rows))
            needed += column.width() + columnGap;
        if (needed <= width)
            return rows;
    }
    return items;
}

void FiguresPanel::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (m_isEmpty) {
        paintHint(painter, rect(), valueText(), colours);
        return;
    }
    const int rows = rowsIn(width()), rowHeight = lineHeight(font()) + gridStep / 2;
    const std::vector<Column> columns = columnsOf(rows);
    int spare = width() + columnGap;
    for (const Column& column : columns)
        spare -= column.width() + columnGap;
    const int stretch = std::clamp(spare / static_cast<int>(columns.size()), 0, 2 * columnGap);
    double left = 0.0;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const double mark = left + columns[c].label + closeSpace + columns[c].beforeMark;
        const auto first = c * static_cast<std::size_t>(rows),
                   last = std::min(m_items.size(), first + static_cast<std::size_t>(rows));
        int baseline = fontMetrics().ascent();
        for (std::size_t i = first; i < last; ++i, baseline += rowHeight) {
            const Item& item = m_items[i];
            painter.setPen(colours.quietInk);
            painter.drawText(QPointF(left, baseline), item.label);
            painter.setPen(colours.ink);
            painter.drawText(QPointF(mark - fontMetrics().horizontalAdvance(item.beforeMark), baseline), item.beforeMark);
            painter.drawText(QPointF(mark, baseline), item.afterMark);
        }
        left += columns[c].width() + columnGap + stretch;
    }
}

}  // namespace firn::app
