#include "gauges/figures_panel.h"

#include "gauges/figure_button.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
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

QSize FiguresPanel::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, 3 * rowHeight()}; }

int FiguresPanel::heightForWidth(int width) const { return rowsIn(width) * rowHeight(); }

/// So that a finger hits one figure.
int FiguresPanel::rowHeight() const { return std::max(FigureButton::leastSize_px, lineHeight(font()) + gridStep / 2); }

void FiguresPanel::show(const Analysis& analysis)
{
    m_isEmpty = analysis.mix.isEmpty();
    const QString amount = figure(1000.0, 0), share = figure(100.0, 0), temperature = figure(-10.0, 0), none = tr("none");
    const auto& [water, sugars, fat, milkFat, protein, alcohol, totalSolids, milkSolidsNotFat] = analysis.shares;
    const std::optional<FreezingPoint>& freezingPoint = analysis.freezing.freezingPoint;
    const QString alcoholByVolume = withUnit(figure(analysis.alcohol_percentByVolume, 1), QStringLiteral("%"));
    m_items.clear();
    add(tr("mass"), gramsText(analysis.mass), amount, "mass_g");
    add(tr("volume at 20 °C"), millilitresText(analysis.volume_20c), amount, "volume_ml_20c");
    if (analysis.overrun_percent > 0.0)
        add(tr("with air"), millilitresText(analysis.finishedVolume), amount, "finished_volume_ml_20c");
    add(tr("total solids"), percentText(totalSolids), share, "percent.total_solids");
    add(tr("sugars"), percentText(sugars), share, "percent.sugars");
    add(tr("fat"), percentText(fat), share, "percent.fat");
    add(tr("protein"), percentText(protein), share, "percent.protein");
    if (analysis.texture.process != Process::Unfrozen) {
        add(tr("freezing point"), freezingPoint ? degrees(freezingPoint->temperature) : none, temperature, "freezing_point_c");
        add(tr("by the textbook"), analysis.textbook ? degrees(analysis.textbook->freezingPoint) : none, temperature,
            "freezing_point_textbook_c");
    }
    add(tr("alcohol by mass"), percentText(alcohol), share, "percent.alcohol");
    add(tr("alcohol by volume"), alcoholByVolume, share, "percent.alcohol_by_volume");
    add(tr("as sweet as sucrose at"), withUnit(figure(analysis.sweetness_percentSucrose, 0), QStringLiteral("%")), share,
        "sweetness_percent_sucrose");
    if (analysis.lactose_gPer100gWater >= leastLactose_g)
        add(tr("lactose in 100 g water"), lactoseText(analysis.lactose_gPer100gWater), share, "lactose_g_per_100_g_water");
    QStringList spoken;
    for (const Item& item : m_items)
        spoken << spokenText(item);
    setValueText(m_isEmpty ? tr("The figures come with the first ingredient") : spoken.join(u'\n'));
    updateGeometry();
    placeFigures();
    update();
}

QString FiguresPanel::spokenText(const Item& item)
{
    return tr("%1: %2", "a figure and its value").arg(item.label, item.beforeMark + item.afterMark);
}

void FiguresPanel::add(const QString& label, const QString& figureWithUnit, const QString& widest, const char* key)
{
    const QChar decimalMark = QLocale().decimalPoint().at(0);
    const auto mark = std::find_if(
        figureWithUnit.begin(), figureWithUnit.end(), [decimalMark](QChar c) { return c.isSpace() || c == decimalMark; });
    const auto length = mark - figureWithUnit.begin();
    m_items.push_back(
        {label, figureWithUnit.left(length), figureWithUnit.mid(length), widest, QLatin1String(key), figureWithUnit == tr("none")});
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

/// Of each figure, column by column.
std::vector<QRect> FiguresPanel::places() const
{
    const int rows = rowsIn(width());
    const std::vector<Column> columns = columnsOf(rows);
    int spare = width() + columnGap;
    for (const Column& column : columns)
        spare -= column.width() + columnGap;
    const int stretch = std::clamp(spare / static_cast<int>(columns.size()), 0, 2 * columnGap);
    std::vector<QRect> places;
    int left = 0;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        for (int row = 0; row < rows && places.size() < m_items.size(); ++row)
            places.emplace_back(left, row * rowHeight(), columns[c].width(), rowHeight());
        left += columns[c].width() + columnGap + stretch;
    }
    return places;
}

void FiguresPanel::placeFigures()
{
    const std::vector<QRect> all = places();
    std::vector<FigurePlace> figures;
    for (std::size_t i = 0; i < m_items.size() && !m_isEmpty; ++i) {
        if (!m_items[i].isNone)
            figures.push_back({m_items[i].key, spokenText(m_items[i]), all[i]});
    }
    setFigures(figures);
}

void FiguresPanel::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    placeFigures();
}

void FiguresPanel::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        placeFigures();
    }
}

void FiguresPanel::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (m_isEmpty) {
        paintHint(painter, rect(), valueText(), colours);
        return;
    }
    const std::vector<Column> columns = columnsOf(rowsIn(width()));
    const auto rows = static_cast<std::size_t>(rowsIn(width()));
    const std::vector<QRect> all = places();
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        const Item& item = m_items[i];
        const Column& column = columns[i / rows];
        const int left = all[i].left(), mark = left + column.label + closeSpace + column.beforeMark;
        const int baseline = all[i].top() + (rowHeight() - lineHeight(font())) / 2 + fontMetrics().ascent();
        painter.setPen(colours.quietInk);
        painter.drawText(QPointF(left, baseline), item.label);
        painter.setPen(colours.ink);
        painter.drawText(QPointF(mark - fontMetrics().horizontalAdvance(item.beforeMark), baseline), item.beforeMark);
        painter.drawText(QPointF(mark, baseline), item.afterMark);
    }
}

}  // namespace firn::app
