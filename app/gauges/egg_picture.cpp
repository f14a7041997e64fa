#include "gauges/egg_picture.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QPainter>
#include <QPolygonF>
#include <QRadialGradient>
#include <QTransform>
#include <algorithm>

namespace firn::app {

namespace {

// The glass, millimetres: wide enough for the egg to lie down, deep enough for it to stand free of the bottom.
constexpr double glassWidth_mm = 66.0;
constexpr double glassDepth_mm = 69.0;
constexpr double liquidDepth_mm = 57.0;
constexpr double scaleBar_mm = 20.0;
constexpr double blunter = 0.88;  // the upper half of the egg's length against half of it; the lower half has the rest

/// A standing egg around the origin, its widest place at height 0; the tips are at -blunter and 2 - blunter half lengths.
QPainterPath eggOutline(double breadth, double length)
{
    const double halfBreadth = 0.5 * breadth, above = 0.5 * length * blunter, below = length - above;
    QPainterPath path(QPointF(-halfBreadth, 0.0));
    path.arcTo(QRectF(-halfBreadth, -above, breadth, 2.0 * above), 180.0, -180.0);
    path.arcTo(QRectF(-halfBreadth, -below, breadth, 2.0 * below), 0.0, -180.0);
    path.closeSubpath();
    return path;
}

/// How far the egg's tip stands above the surface; nothing where it sinks. The blunt half is half a spheroid of its own: squeezed in
/// height, it is cut at the same share of its height where the cut has the same width.
Millimetres tipAbove(const EggFloat& egg)
{
    if (!egg.floats)
        return {};
    const double cutShare = egg.exposedHeight / (0.5 * egg.breadth);
    return cutShare * blunter * 0.5 * egg.length;
}

void paintArrow(QPainter& painter, QPointF tip, double direction)
{
    painter.drawLine(tip, tip + QPointF(-4.0 * direction, -2.5));
    painter.drawLine(tip, tip + QPointF(-4.0 * direction, 2.5));
}

/// The width of the patch, written over the egg as on a drawing.
void paintWidth(QPainter& painter, const EggPicture& picture, const EggFloat& egg, const GaugeColours& colours)
{
    const double y = std::min(picture.glass.top(), picture.egg.boundingRect().top()) - gridStep;
    const QPointF left(picture.patch.x1(), y), right(picture.patch.x2(), y);
    QColor thin = colours.curve;
    thin.setAlphaF(0.6F);
    painter.setPen(QPen(thin, 1.0));
    painter.drawLine(QPointF(left.x(), y - 3.0), picture.patch.p1());
    painter.drawLine(QPointF(right.x(), y - 3.0), picture.patch.p2());
    painter.setPen(QPen(colours.curve, 1.5));
    painter.drawLine(left, right);
    if (right.x() - left.x() > 10.0) {
        paintArrow(painter, left, -1.0);
        paintArrow(painter, right, 1.0);
    }
    const QString text = millimetresText(egg.exposedWidth);
    const double textLeft = 0.5 * (left.x() + right.x() - painter.fontMetrics().horizontalAdvance(text));
    painter.drawText(QPointF(textLeft, y - 3.0 - painter.fontMetrics().descent()), text);
}

void paintScaleBar(QPainter& painter, const QLineF& bar, const GaugeColours& colours)
{
    painter.setPen(QPen(colours.quietInk, 1.0));
    painter.drawLine(bar);
    for (const QPointF& end : {bar.p1(), bar.p2()})
        painter.drawLine(end - QPointF(3.0, 0.0), end + QPointF(3.0, 0.0));
    const double baseline = bar.center().y() + 0.5 * (painter.fontMetrics().ascent() - painter.fontMetrics().descent());
    painter.drawText(QPointF(bar.x1() + 6.0, baseline), millimetresText({scaleBar_mm}));
}

}  // namespace

EggPicture eggPicture(const EggFloat& egg, const QRectF& place, const QFontMetrics& metrics)
{
    EggPicture picture;
    const double widthOverGlass = metrics.height() + gridStep + 2.0;
    const double barRoom = metrics.horizontalAdvance(millimetresText({scaleBar_mm})) + groupSpace;
    // In the strongest syrups the egg stands higher than the glass.
    const double height_mm = std::max(glassDepth_mm, liquidDepth_mm + tipAbove(egg).value);
    picture.pixelsPerMillimetre =
        std::max(0.1, std::min((place.height() - widthOverGlass - 4.0) / height_mm, (place.width() - barRoom) / glassWidth_mm));
    const double scale = picture.pixelsPerMillimetre;
    const double left = place.center().x() - 0.5 * (glassWidth_mm * scale + barRoom);
    const double bottom = place.bottom() - 4.0;
    picture.glass = QRectF(left, bottom - glassDepth_mm * scale, glassWidth_mm * scale, glassDepth_mm * scale);
    picture.surface = bottom - liquidDepth_mm * scale;
    picture.scaleBar =
        QLineF(picture.glass.right() + closeSpace, bottom - scaleBar_mm * scale, picture.glass.right() + closeSpace, bottom);

    const QPainterPath standing = eggOutline(egg.breadth.value * scale, egg.length.value * scale);
    const double middle = picture.glass.center().x();
    if (egg.floats) {
        const double tip = picture.surface - tipAbove(egg).value * scale;
        picture.egg = standing.translated(middle, tip - standing.boundingRect().top());
        const double halfPatch = 0.5 * egg.exposedWidth.value * scale;
        picture.patch = QLineF(middle - halfPatch, picture.surface, middle + halfPatch, picture.surface);
    } else {
        picture.egg = QTransform().rotate(90.0).map(standing);
        picture.egg.translate(
            QPointF(middle, bottom) - QPointF(picture.egg.boundingRect().center().x(), picture.egg.boundingRect().bottom()));
        picture.patch = QLineF(middle, picture.surface, middle, picture.surface);
    }
    return picture;
}

void paintEgg(QPainter& painter, const EggFloat& egg, const QRectF& place, const GaugeColours& colours)
{
    const EggPicture picture = eggPicture(egg, place, painter.fontMetrics());
    const QRectF liquid(QPointF(picture.glass.left(), picture.surface), picture.glass.bottomRight());
    const QRectF outline = picture.egg.boundingRect();
    QRadialGradient shell(outline.center() - QPointF(0.15 * outline.width(), 0.2 * outline.height()), 0.65 * outline.height());
    shell.setColorAt(0.0, colours.shell.lighter(108));
    shell.setColorAt(1.0, colours.shell);
    QColor tint = colours.parts[static_cast<std::size_t>(RibbonPart::Water)];
    painter.fillRect(liquid, tint);
    painter.setPen(QPen(colours.quietInk, 1.0));
    painter.setBrush(shell);
    painter.drawPath(picture.egg);
    // Seen through the liquid.
    tint.setAlphaF(0.25F);
    painter.save();
    painter.setClipRect(liquid);
    painter.fillPath(picture.egg, tint);
    painter.restore();

    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.quietInk, 2.0));
    painter.drawPolyline(
        QPolygonF{{picture.glass.topLeft(), picture.glass.bottomLeft(), picture.glass.bottomRight(), picture.glass.topRight()}});
    painter.setPen(QPen(colours.curve, 1.0));
    painter.drawLine(QPointF(picture.glass.left() + 1.0, picture.surface), QPointF(picture.glass.right() - 1.0, picture.surface));
    if (egg.floats) {
        painter.setPen(QPen(colours.curve, 3.0, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(picture.patch);
        paintWidth(painter, picture, egg, colours);
    }
    paintScaleBar(painter, picture.scaleBar, colours);
}

}  // namespace firn::app
