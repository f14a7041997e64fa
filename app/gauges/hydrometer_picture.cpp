#include "gauges/hydrometer_picture.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QPainterPath>
#include <cmath>

namespace firn::app {

namespace {

constexpr int marksPerUnit = 500;  // one mark is 0.002
constexpr int numberedEvery = 5;
constexpr double meniscus = 4.0;

void paintMarks(QPainter& painter, const QRectF& stem, double level, double specificGravity, const GaugeColours& colours)
{
    const int textHeight = painter.fontMetrics().height();
    const double pixelsPerMark = 1.2 * textHeight / numberedEvery;
    const auto yOf = [&](int mark) { return level + (mark - specificGravity * marksPerUnit) * pixelsPerMark; };
    const int first = static_cast<int>(std::ceil(specificGravity * marksPerUnit - (level - stem.top()) / pixelsPerMark));
    painter.save();
    painter.setClipRect(stem.adjusted(0, 2, 0, 0), Qt::IntersectClip);
    painter.setPen(colours.ink);
    for (int mark = first; yOf(mark) < stem.bottom() + textHeight; ++mark) {
        const bool isNumbered = mark % numberedEvery == 0;
        const double y = yOf(mark);
        painter.drawLine(QPointF(stem.left(), y), QPointF(stem.left() + (isNumbered ? 10.0 : 6.0), y));
        if (isNumbered && y - 0.5 * textHeight > stem.top() + 2.0 && y + 0.5 * textHeight < stem.bottom() - meniscus) {
            const QRectF number(stem.left() + 12.0, y - 0.5 * textHeight, stem.width() - 15.0, textHeight);
            painter.drawText(number, Qt::AlignRight | Qt::AlignVCenter, figure(static_cast<double>(mark) / marksPerUnit, 2));
        }
    }
    painter.restore();
}

/// The liquid on one side of the stem: it climbs a little where it touches glass.
QPainterPath liquidBetween(double left, double right, double level, double bottom)
{
    QPainterPath path(QPointF(left, level - meniscus));
    path.quadTo(QPointF(left + 1.0, level), QPointF(left + 6.0, level));
    path.lineTo(right - 6.0, level);
    path.quadTo(QPointF(right - 1.0, level), QPointF(right, level - meniscus));
    path.lineTo(right, bottom);
    path.lineTo(left, bottom);
    path.closeSubpath();
    return path;
}

/// All above a wavy line at the bottom, as drawings break off what goes on below.
QPainterPath brokenOffBelow(const QRectF& place, const QRectF& jar)
{
    const double wave = 1.5 * meniscus, middle = place.bottom() - wave, third = jar.width() / 3.0;
    QPainterPath path(place.topLeft());
    path.lineTo(place.topRight());
    path.lineTo(place.right(), middle);
    path.lineTo(jar.right(), middle);
    path.cubicTo(jar.right() - third, middle - 2.0 * wave, jar.left() + third, middle + 2.0 * wave, jar.left(), middle);
    path.lineTo(place.left(), middle);
    path.closeSubpath();
    return path;
}

}  // namespace

void paintHydrometer(QPainter& painter, const QRectF& place, double specificGravity, const GaugeColours& colours)
{
    const double stemWidth = painter.fontMetrics().horizontalAdvance(figure(1.0, 2)) + 22.0;
    const double jarWidth = std::min(place.width() - 2.0, 2.0 * stemWidth);
    const double left = place.center().x() - 0.5 * jarWidth;
    const QRectF jar(left, place.top() + 0.24 * place.height(), jarWidth, 0.76 * place.height() - 1.0);
    const QRectF stem(place.center().x() - 0.5 * stemWidth, place.top() + 1.0, stemWidth, place.height() - 2.0);
    const double level = qRound(place.top() + 0.5 * place.height()) + 0.5;

    painter.save();
    painter.setClipPath(brokenOffBelow(place, jar));
    painter.setPen(QPen(colours.quietInk, 1.5));
    painter.setBrush(colours.paper);
    painter.drawRoundedRect(stem.adjusted(0, 0, 0, 12), 10.0, 10.0);
    QColor liquid = colours.parts[static_cast<std::size_t>(RibbonPart::Water)];
    painter.fillPath(liquidBetween(jar.left(), stem.left(), level, jar.bottom()), liquid);
    painter.fillPath(liquidBetween(stem.right(), jar.right(), level, jar.bottom()), liquid);
    liquid.setAlphaF(0.45F);
    painter.fillRect(QRectF(QPointF(stem.left(), level), QPointF(stem.right(), jar.bottom())), liquid);
    paintMarks(painter, stem, level, specificGravity, colours);
    painter.setPen(QPen(colours.quietInk, 2.0));
    painter.drawLine(jar.topLeft(), jar.bottomLeft());
    painter.drawLine(jar.topRight(), jar.bottomRight());
    painter.setPen(QPen(colours.curve, 2.0));
    painter.drawLine(QPointF(jar.left() + 2.0, level), QPointF(stem.left() + 10.0, level));
    painter.drawLine(QPointF(stem.right(), level), QPointF(jar.right() - 2.0, level));
    painter.restore();
}

}  // namespace firn::app
