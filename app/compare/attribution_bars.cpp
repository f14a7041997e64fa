#include "compare/attribution_bars.h"

#include "compare/comparison_lines.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace firn::app {

namespace {

constexpr double rowHeight_px = 24.0;
constexpr double thickness = 0.45;     // of a row
constexpr double mostForWords = 0.42;  // of the width

}  // namespace

AttributionBars::AttributionBars(QWidget* parent)
    : Gauge(tr("What did it"), parent)
{
    setObjectName(QStringLiteral("attributionBars"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

double AttributionBars::barHeight() const { return besideText(font(), rowHeight_px); }

QSize AttributionBars::sizeHint() const
{
    return {fontMetrics().averageCharWidth() * 60, qRound(double(m_bars.size()) * barHeight()) + gridStep};
}

QSize AttributionBars::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 36, sizeHint().height()}; }

void AttributionBars::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateGeometry();
}

void AttributionBars::show(const Attribution& attribution, const AttributedKind& kind)
{
    m_bars.clear();
    const AttributedFigure& figure = attribution.*kind.figure;
    const auto numberOf = [&kind](
                              double part) { return withUnit(changeText(part, kind.decimals, kind.unit), shownUnit(kind.unit)); };
    if (!figure.whyNone) {
        std::vector<std::size_t> order(figure.parts.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::ranges::stable_sort(order, std::greater<>(), [&](std::size_t i) { return std::abs(figure.parts[i]); });
        const std::vector<double> shown = roundedParts(figure, kind.decimals);
        for (const std::size_t i : order)
            m_bars.push_back({translated(attribution.changes[i].what), numberOf(shown[i]), figure.parts[i]});
        if (!m_bars.empty())
            m_bars.push_back({tr("together"), numberOf(shownWhole(figure, kind.decimals)), *figure.to - *figure.from, true});
    }
    QStringList spoken;
    for (const Bar& bar : m_bars)
        spoken << tr("%1: %2").arg(bar.what, bar.number);
    setValueText(spoken.join(QStringLiteral("; ")));
    setVisible(!m_bars.empty());
    updateGeometry();
    update();
}

void AttributionBars::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    double words = 0.0, numbers = 0.0, least = 0.0, most = 0.0;
    for (const Bar& bar : m_bars) {
        words = std::max(words, double(fontMetrics().horizontalAdvance(bar.what)));
        numbers = std::max(numbers, double(fontMetrics().horizontalAdvance(bar.number)));
        least = std::min(least, bar.part);
        most = std::max(most, bar.part);
    }
    words = std::min(words, mostForWords * width());
    const double left = words + groupSpace, right = width() - numbers - groupSpace;
    const double perUnit = most > least ? std::max(1.0, right - left) / (most - least) : 0.0;
    const double zero = qRound(left - least * perUnit);
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        const Bar& bar = m_bars[i];
        const QRectF row(0, double(i) * barHeight(), width(), barHeight());
        if (bar.isSum) {
            painter.setPen(colours.hairline);
            painter.drawLine(row.topLeft(), row.topRight());
        }
        painter.setPen(colours.ink);
        painter.drawText(QRectF(0, row.top(), words + 1.0, row.height()), Qt::AlignLeft | Qt::AlignVCenter,
            fontMetrics().elidedText(bar.what, Qt::ElideRight, int(words) + 1));
        painter.drawText(QRectF(right, row.top(), width() - right, row.height()), Qt::AlignRight | Qt::AlignVCenter, bar.number);
        const double end = zero + bar.part * perUnit;
        const double top = qRound(row.center().y() - 0.5 * thickness * row.height());
        const QRectF box(QPointF(std::min(zero, end), top), QPointF(std::max(zero, end), top + qRound(thickness * row.height())));
        // The sum is an open bar: it is not one more part.
        painter.setPen(bar.isSum ? QPen(colours.ink, 1.0) : QPen(Qt::NoPen));
        painter.setBrush(bar.isSum ? QBrush(Qt::NoBrush) : QBrush(colours.curve));
        if (box.width() >= 1.0)
            painter.drawRect(box);
    }
    painter.setPen(colours.quietInk);
    if (!m_bars.empty())
        painter.drawLine(QPointF(zero, 0), QPointF(zero, double(m_bars.size()) * barHeight()));
}

}  // namespace firn::app
