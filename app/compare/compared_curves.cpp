#include "compare/compared_curves.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>

namespace firn::app {

namespace {

constexpr double usualLineWidth = 2.0;
constexpr double usualSampleWidth = 32.0;
constexpr double usualDotRadius = 3.0;
constexpr double firstNameAt = 0.08;   // share of the height at which the lowest name stands
constexpr double roomForNames = 0.78;  // of the width, before the curves come down
constexpr double nameDistance = 1.35;  // in lines of text

}  // namespace

QPen penOfSide(std::size_t side, const GaugeColours& colours, double width)
{
    constexpr std::array styles{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
    QPen pen(side == 0 ? colours.ink : colours.curve, width, styles.at(side % styles.size()));
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

ComparedCurves::ComparedCurves(QWidget* parent)
    : Gauge(tr("Freezing curves"), parent)
{
    setObjectName(QStringLiteral("comparedCurves"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

QSize ComparedCurves::sizeHint() const { return {fontMetrics().averageCharWidth() * 64, lineHeight(font()) * 16}; }

QSize ComparedCurves::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 44, lineHeight(font()) * 11}; }

void ComparedCurves::show(const Comparison& comparison)
{
    m_curves.clear();
    QStringList spoken;
    for (const ComparedSide& side : comparison.sides) {
        const auto& point = side.analysis.freezing.freezingPoint;
        Curve& curve = m_curves.emplace_back();
        curve.name = QString::fromStdString(side.name);
        curve.begins = !point                                 ? tr("nothing freezes")
                       : side.analysis.freezing.steps.empty() ? tr("nothing freezes above %1").arg(chosenDegrees(coldestOfCurve))
                                                              : tr("freezes from %1").arg(degrees(point->temperature));
        curve.curve = side.analysis.freezing;
        curve.serveAt = side.analysis.conditions.serveAt;
        spoken
            << tr("%1: %2, %3 ice when served").arg(curve.name, curve.begins, percentText(side.analysis.texture.iceAtServing, 0));
    }
    setValueText(spoken.join(QStringLiteral("; ")));
    update();
}

QRectF ComparedCurves::plotArea() const
{
    const double line = lineHeight(font());
    const double left = fontMetrics().horizontalAdvance(percentText({1.0}, 0)) + closeSpace;
    const double right = 0.5 * fontMetrics().horizontalAdvance(chosenDegrees({0.0})) + gridStep;
    return {left, line + closeSpace, std::max(1.0, width() - left - right),
        std::max(1.0, height() - 3.0 * line - closeSpace - gridStep)};
}

QPointF ComparedCurves::pointAt(double temperature_c, double shareFrozen) const
{
    const QRectF area = plotArea();
    return {area.right() - std::clamp(temperature_c / coldestOfCurve.value, 0.0, 1.0) * area.width(),
        area.bottom() - shareFrozen * area.height()};
}

/// The warmest temperature at which one of the curves goes beyond what was measured.
std::optional<Celsius> ComparedCurves::extrapolatedFrom() const
{
    std::optional<Celsius> warmest;
    for (const Curve& curve : m_curves) {
        const auto first = std::ranges::find(curve.curve.steps, true, &FreezingStep::isExtrapolated);
        if (first != curve.curve.steps.end() && (!warmest || first->temperature > *warmest))
            warmest = first->temperature;
    }
    return warmest;
}

void ComparedCurves::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    painter.setRenderHint(QPainter::Antialiasing);
    paintAxes(painter, colours);
    paintServing(painter, colours);
    // The first one is drawn last, so that it lies on top.
    for (std::size_t side = m_curves.size(); side-- > 0;)
        paintCurve(painter, side, colours);
    for (std::size_t side = 0; side < m_curves.size(); ++side)
        paintName(painter, side, colours);
}

void ComparedCurves::paintAxes(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF area = plotArea();
    const int line = lineHeight(font());
    painter.setPen(colours.quietInk);
    painter.drawText(QRectF(0, 0, width(), line), Qt::AlignLeft | Qt::AlignVCenter, tr("water frozen"));
    if (const auto from = extrapolatedFrom())
        painter.drawText(QRectF(0, 0, area.right(), line), Qt::AlignRight | Qt::AlignVCenter,
            tr("extrapolated below %1").arg(chosenDegrees(*from)));
    for (const auto& [temperature, number] : degreeMarks(coldestOfCurve, false)) {
        const double x = pointAt(temperature.value, 0.0).x();
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x, area.bottom() + 3.0));
        painter.drawText(
            QRectF(x - area.width() / 2.0, area.bottom() + 3.0, area.width(), line), Qt::AlignHCenter | Qt::AlignVCenter, number);
    }
    QColor grid = colours.ink;
    grid.setAlphaF(0.12F);
    for (int frozen_percent = 0; frozen_percent <= 100; frozen_percent += 25) {
        const double y = qRound(pointAt(0.0, frozen_percent / 100.0).y()) - 0.5;
        painter.setPen(colours.quietInk);
        painter.drawText(QRectF(0, y - 0.5 * line, area.left() - gridStep, line), Qt::AlignRight | Qt::AlignVCenter,
            frozen_percent == 100 ? percentText({1.0}, 0) : figure(frozen_percent, 0));
        painter.setPen(frozen_percent == 0 ? colours.quietInk : grid);
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
}

/// One line for those that are served at one temperature.
void ComparedCurves::paintServing(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF area = plotArea();
    std::vector<double> drawn;
    double last = -1e9;
    for (const Curve& curve : m_curves) {
        if (std::ranges::find(drawn, curve.serveAt.value) != drawn.end())
            continue;
        drawn.push_back(curve.serveAt.value);
        const double x = pointAt(curve.serveAt.value, 0.0).x();
        painter.setPen(QPen(colours.quietInk, 1.0));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        const QString words = tr("served at %1").arg(chosenDegrees(curve.serveAt));
        const double wide = fontMetrics().horizontalAdvance(words);
        const double left = std::clamp(x - 0.5 * wide, area.left(), std::max(area.left(), width() - wide));
        if (std::abs(left - last) < wide + closeSpace)
            continue;
        last = left;
        painter.drawText(QRectF(left, area.bottom() + 3.0 + lineHeight(font()), wide + 2.0, lineHeight(font())),
            Qt::AlignLeft | Qt::AlignVCenter, words);
    }
}

void ComparedCurves::paintCurve(QPainter& painter, std::size_t side, const GaugeColours& colours) const
{
    const std::vector<FreezingStep>& steps = m_curves[side].curve.steps;
    if (steps.empty())
        return;
    QPainterPath path(pointAt(steps.front().temperature.value, steps.front().waterFrozen.value));
    for (const FreezingStep& step : steps)
        path.lineTo(pointAt(step.temperature.value, step.waterFrozen.value));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(penOfSide(side, colours, besideText(font(), usualLineWidth)));
    painter.drawPath(path);
}

/// In the free room under the curves, with a thin line to the curve that it belongs to.
void ComparedCurves::paintName(QPainter& painter, std::size_t side, const GaugeColours& colours) const
{
    const QRectF area = plotArea();
    const int line = lineHeight(font());
    const double fromBelow = firstNameAt * area.height() + double(m_curves.size() - 1 - side) * nameDistance * line;
    const double y = area.bottom() - fromBelow - 0.5 * line;
    const Curve& curve = m_curves[side];
    const double sample = besideText(font(), usualSampleWidth);
    const double left = area.left() + closeSpace;
    painter.setPen(penOfSide(side, colours, besideText(font(), usualLineWidth)));
    painter.drawLine(QPointF(left, y), QPointF(left + sample, y));
    const double room = roomForNames * area.width() - fontMetrics().horizontalAdvance(curve.begins) - sample - groupSpace;
    const QString text = tr("%1, %2", "a recipe's name, and when it freezes")
                             .arg(fontMetrics().elidedText(curve.name, Qt::ElideRight, int(std::max(40.0, room))), curve.begins);
    const double wide = fontMetrics().horizontalAdvance(text);
    const QRectF box(left + sample + closeSpace, y - 0.5 * line, wide + 2.0, line);
    painter.fillRect(box, colours.ground);
    painter.setPen(colours.ink);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, text);
    const double share = (area.bottom() - y) / area.height();
    const auto& steps = curve.curve.steps;
    const auto after = std::ranges::find_if(steps, [share](const FreezingStep& step) { return step.waterFrozen.value >= share; });
    if (after == steps.end() || after == steps.begin())
        return;
    const QPointF a = pointAt((after - 1)->temperature.value, (after - 1)->waterFrozen.value);
    const QPointF b = pointAt(after->temperature.value, after->waterFrozen.value);
    const double along = (y - a.y()) / (b.y() - a.y());
    const QPointF end(a.x() + along * (b.x() - a.x()), y);
    if (end.x() < box.right() + gridStep)
        return;
    QColor thin = colours.quietInk;
    thin.setAlphaF(0.7F);
    painter.setPen(QPen(thin, 1.0));
    painter.drawLine(QPointF(box.right() + gridStep, y), end);
    const double radius = besideText(font(), usualDotRadius);
    painter.setPen(Qt::NoPen);
    painter.setBrush(side == 0 ? colours.ink : colours.curve);
    painter.drawEllipse(end, radius, radius);
}

}  // namespace firn::app
