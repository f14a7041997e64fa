// What Qt Charts does not draw: regions, axes in the user's language, and markers.
#include "gauges/curve_view.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QLineSeries>
#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr double usualGripRadius = 5.0;
constexpr double usualDotRadius = 3.5;

QString axisName() { return CurveView::tr("water frozen"); }
QString extrapolatedWord() { return CurveView::tr("extrapolated"); }

}  // namespace

void CurveView::drawBackground(QPainter* painter, const QRectF& exposed)
{
    const GaugeColours colours = coloursInWindow(palette());
    painter->fillRect(exposed, colours.ground);
    painter->setFont(font());
    paintRegions(*painter, colours);
    painter->setPen(QPen(colours.ink, 1.5));
    for (const CurveMarker& marker : m_markers) {
        const double x = xOf(marker.temperature_c);
        painter->drawLine(QPointF(x, plotArea().top() - gridStep), QPointF(x, plotArea().bottom() + lineHeight(font()) + gridStep));
    }
    paintAxes(*painter, colours);
    paintBeginning(*painter, colours);
    for (const CurveRegion& region : m_regions)
        paintRegionName(*painter, region, colours);
}

void CurveView::paintRegions(QPainter& painter, const GaugeColours& colours) const
{
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(Qt::NoPen);
    for (const CurveRegion& region : m_regions) {
        const QPointF topLeft(qRound(xOf(region.region.range.coldest.value)), plotArea().top());
        const QPointF bottomRight(qRound(xOf(region.region.range.warmest.value)), plotArea().bottom());
        painter.fillRect(QRectF(topLeft, bottomRight), regionColour(region.region.firmness, colours));
    }
    painter.setRenderHint(QPainter::Antialiasing);
}

bool CurveView::crossesCurve(const QRectF& box) const
{
    const double cold_c = coldestOfCurve.value + (box.left() - plotArea().left()) / pixelsPerDegree();
    const double warm_c = coldestOfCurve.value + (box.right() - plotArea().left()) / pixelsPerDegree();
    const auto crosses = [&](const std::vector<FreezingStep>& steps) {
        return curveY(steps, cold_c) < box.bottom() && curveY(steps, warm_c) > box.top();
    };
    return crosses(m_steps) || crosses(m_besideSteps);
}

/// No line and no other word of the drawing stands there.
bool CurveView::isFree(const QRectF& box) const
{
    const QRectF roomy = box.adjusted(-2.0, -2.0, 2.0, 2.0);
    const auto isStruck = [&](double temperature_c) {
        const double x = xOf(temperature_c);
        return x > roomy.left() && x < roomy.right();
    };
    const double gripRadius = besideText(font(), usualGripRadius);
    for (const CurveMarker& marker : m_markers) {
        const QPointF grip(xOf(marker.temperature_c), curveY(marker.temperature_c));
        if (isStruck(marker.temperature_c) || roomy.adjusted(-gripRadius, -gripRadius, gripRadius, gripRadius).contains(grip))
            return false;
    }
    return !crossesCurve(roomy) && !roomy.intersects(extrapolatedPlace())
           && (m_steps.empty() || !isStruck(m_steps.front().temperature.value));
}

/// Along the floor if it can be, else the nearest free place above; in the middle of its region or beside.
std::optional<QRectF> CurveView::regionNamePlace(const CurveRegion& region, bool isUpright) const
{
    const double left = xOf(region.region.range.coldest.value), right = xOf(region.region.range.warmest.value);
    const double length = fontMetrics().horizontalAdvance(region.name), thickness = lineHeight(font());
    const double letterHeight = fontMetrics().tightBoundingRect(region.name).height();
    // Upright letters need no more than their own height.
    const QSizeF size = isUpright ? QSizeF(letterHeight + 2.0, length) : QSizeF(length, thickness);
    const double roomBeside = right - left - size.width() - (isUpright ? 0.0 : closeSpace);
    const QRectF plot = plotArea().adjusted(0.0, gridStep, 0.0, -gridStep);
    if (region.name.isEmpty() || roomBeside < 0.0 || size.height() > plot.height())
        return std::nullopt;
    const double step = 0.5 * thickness;
    for (double bottom = plot.bottom(); bottom - size.height() >= plot.top(); bottom -= step) {
        for (double aside = 0.0; aside <= 0.5 * roomBeside; aside += step) {
            for (const double x : {0.5 * (left + right) - aside, 0.5 * (left + right) + aside}) {
                const QRectF box(QPointF(x - 0.5 * size.width(), bottom - size.height()), size);
                if (isFree(box))
                    return box;
            }
        }
    }
    return std::nullopt;
}

/// Along where there is room for it, else upright. None where there is no place free of lines.
void CurveView::paintRegionName(QPainter& painter, const CurveRegion& region, const GaugeColours& colours) const
{
    const auto along = regionNamePlace(region, false);
    const auto box = along ? along : regionNamePlace(region, true);
    if (!box)
        return;
    const double length = fontMetrics().horizontalAdvance(region.name), thickness = lineHeight(font());
    painter.save();
    painter.setPen(colours.ink);
    painter.translate(box->center());
    if (!along)
        painter.rotate(-90.0);
    painter.drawText(QRectF(-0.5 * length - 1.0, -0.5 * thickness, length + 2.0, thickness), Qt::AlignCenter, region.name);
    painter.restore();
}

void CurveView::paintAxes(QPainter& painter, const GaugeColours& colours) const
{
    const int line = lineHeight(font());
    painter.setPen(colours.quietInk);
    const bool areWide = fontMetrics().horizontalAdvance(chosenDegrees(coldestOfCurve)) * 1.3 >= 5 * pixelsPerDegree();
    for (const auto& [temperature, number] : degreeMarks(coldestOfCurve, areWide)) {
        const double x = xOf(temperature.value);
        painter.drawLine(QPointF(x, plotArea().bottom()), QPointF(x, plotArea().bottom() + 3.0));
        const double halfWidth = 0.5 * fontMetrics().horizontalAdvance(number) + 1.0;
        const QRectF place(x - halfWidth, plotArea().bottom() + 3.0, 2.0 * halfWidth, line);
        painter.fillRect(place, colours.ground);  // a marker's line passes behind the number
        painter.drawText(place, Qt::AlignCenter, number);
    }
    painter.drawText(QRectF(0, 0, plotArea().width(), line), Qt::AlignLeft | Qt::AlignVCenter, axisName());
    QColor gridColour = colours.ink;
    gridColour.setAlphaF(0.12F);
    for (int frozen_percent = 0; frozen_percent <= 100; frozen_percent += 25) {
        const double y = qRound(yOf(frozen_percent / 100.0)) - 0.5;
        const QString number = frozen_percent == 100 ? percentText({1.0}, 0) : figure(frozen_percent, 0);
        painter.setPen(colours.quietInk);
        painter.drawText(QRectF(0, y - 0.5 * line, plotArea().left() - gridStep, line), Qt::AlignRight | Qt::AlignVCenter, number);
        painter.setPen(frozen_percent == 0 ? colours.quietInk : gridColour);
        painter.drawLine(QPointF(plotArea().left(), y), QPointF(plotArea().right(), y));
    }
}

void CurveView::paintBeginning(QPainter& painter, const GaugeColours& colours) const
{
    const double width = fontMetrics().horizontalAdvance(m_beginning);
    if (m_steps.empty()) {
        QRectF box(0, 0, width + closeSpace, lineHeight(font()));
        box.moveCenter(plotArea().center());
        painter.fillRect(box, m_regions.empty() ? colours.ground : regionColour(m_regions.front().region.firmness, colours));
        painter.setPen(colours.quietInk);
        painter.drawText(box, Qt::AlignCenter, m_beginning);
        return;
    }
    const double x = xOf(m_steps.front().temperature.value);
    const QRectF place = beginningPlace();
    const double bottom = place.bottom();
    painter.setPen(QPen(colours.curve, 1.0, Qt::DotLine));
    painter.drawLine(QPointF(x, bottom), QPointF(x, yOf(m_steps.front().waterFrozen.value)));
    painter.setPen(colours.curve);
    painter.drawText(place, Qt::AlignCenter, m_beginning);
}

QRectF CurveView::beginningPlace() const
{
    if (m_steps.empty())
        return {};
    const double width = fontMetrics().horizontalAdvance(m_beginning);
    const double x = xOf(m_steps.front().temperature.value);
    const double afterAxisName = fontMetrics().horizontalAdvance(axisName()) + groupSpace;
    const double left = std::max(afterAxisName, std::min(plotArea().right(), x + 0.5 * width) - width);
    return {left - 1.0, 0, width + 2.0, double(lineHeight(font()))};
}

void CurveView::drawForeground(QPainter* painter, const QRectF& /*exposed*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    painter->setFont(font());
    paintExtrapolated(*painter, colours);
    if (!m_steps.empty()) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(colours.curve);
        const double radius = besideText(font(), usualDotRadius);
        painter->drawEllipse(
            QPointF(xOf(m_steps.front().temperature.value), yOf(m_steps.front().waterFrozen.value)), radius, radius);
    }
    paintLabels(*painter, true, colours);
    paintLabels(*painter, false, colours);
    if (!m_steps.empty())
        for (const CurveMarker& marker : m_markers)
            paintGrip(*painter, marker, colours);
}

/// Where the word on the dashes stands; empty where nothing is extrapolated.
QRectF CurveView::extrapolatedPlace() const
{
    if (m_extrapolated->count() < 2)
        return {};
    const double left = plotArea().left() + closeSpace, height = fontMetrics().height();
    const double width = fontMetrics().horizontalAdvance(extrapolatedWord());
    const double below = curveY(coldestOfCurve.value + (left + width - plotArea().left()) / pixelsPerDegree()) + gridStep;
    // A low curve leaves no room between itself and the names along the floor.
    const bool hasRoomBelow = below + 2.0 * lineHeight(font()) + gridStep <= plotArea().bottom();
    return {left, hasRoomBelow ? below : curveY(coldestOfCurve.value) - gridStep - height, width, height};
}

void CurveView::paintExtrapolated(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF place = extrapolatedPlace();
    if (place.isEmpty())
        return;
    painter.setPen(colours.ink);
    painter.drawText(QPointF(place.left(), place.top() + fontMetrics().ascent()), extrapolatedWord());
}

void CurveView::paintLabels(QPainter& painter, bool areHeads, const GaugeColours& colours) const
{
    const std::vector<QRectF> boxes = labelBoxes(areHeads);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const CurveMarker& marker = m_markers[i];
        const QRectF& box = boxes[i];
        if (!areHeads) {
            painter.setPen(QPen(colours.ink, 1.0));
            painter.setBrush(marker.isSelected ? colours.ink : colours.ground);
            painter.drawRect(box);
        } else {
            painter.fillRect(box, colours.ground);
        }
        painter.setPen(marker.isSelected && !areHeads ? colours.ground : colours.ink);
        painter.drawText(box, Qt::AlignCenter, areHeads ? marker.head : marker.foot);
    }
}

void CurveView::paintGrip(QPainter& painter, const CurveMarker& marker, const GaugeColours& colours) const
{
    const double gripRadius = besideText(font(), usualGripRadius);
    const QPointF centre(xOf(marker.temperature_c), curveY(marker.temperature_c));
    painter.setPen(QPen(colours.ink, 1.5));
    painter.setBrush(marker.isSelected ? colours.curve : colours.ground);
    if (marker.grip == CurveMarker::Grip::Circle)
        painter.drawEllipse(centre, gripRadius, gripRadius);
    else
        painter.drawRect(QRectF(centre - QPointF(gripRadius, gripRadius), QSizeF(2 * gripRadius, 2 * gripRadius)));
}

}  // namespace firn::app
