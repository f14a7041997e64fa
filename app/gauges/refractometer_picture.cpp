#include "gauges/refractometer_picture.h"

#include "gauges/wording.h"

#include <QPainterPath>
#include <algorithm>

namespace firn::app {

namespace {

/// The scale of the eyepiece: up to 50 °Bx, and a coarser one for stronger syrups.
struct Eyepiece {
    QRectF field;
    double end_brix;

    double yOf(double brix) const { return field.bottom() - field.height() * (0.1 + 0.8 * std::clamp(brix / end_brix, 0.0, 1.0)); }
};

void paintScale(QPainter& painter, const Eyepiece& eyepiece, const QColor& colour)
{
    const double x = eyepiece.field.center().x() - 0.08 * eyepiece.field.width();
    const double tick = 0.07 * eyepiece.field.width();
    const int textHeight = painter.fontMetrics().height();
    painter.setPen(colour);
    painter.drawLine(QPointF(x, eyepiece.yOf(0.0)), QPointF(x, eyepiece.yOf(eyepiece.end_brix)));
    for (int brix = 0; brix <= qRound(eyepiece.end_brix); brix += 2) {
        const bool isNumbered = brix % 10 == 0;
        const double y = qRound(eyepiece.yOf(brix)) + 0.5;
        painter.drawLine(QPointF(x, y), QPointF(x + (isNumbered ? 1.6 * tick : tick), y));
        const bool hasRoom = eyepiece.yOf(0.0) - eyepiece.yOf(10.0) > 1.1 * textHeight || brix % 20 == 0;
        if (isNumbered && hasRoom)
            painter.drawText(QRectF(x + 2.2 * tick, y - 0.5 * textHeight, 40.0, textHeight), Qt::AlignVCenter, figure(brix, 0));
    }
}

}  // namespace

void paintRefractometer(QPainter& painter, const QRectF& place, std::optional<double> reading_brix, const GaugeColours& colours)
{
    const double diameter = std::min(place.width(), place.height()) - 4.0;
    QRectF field(0, 0, diameter, diameter);
    field.moveCenter(place.center());
    const Eyepiece eyepiece{field, reading_brix.value_or(0.0) > 50.0 ? 95.0 : 50.0};
    const double line = reading_brix ? eyepiece.yOf(*reading_brix) : field.bottom();
    const QRectF dark(field.topLeft(), QPointF(field.right(), line)), bright(QPointF(field.left(), line), field.bottomRight());

    painter.save();
    QPainterPath round;
    round.addEllipse(field);
    painter.setClipPath(round);
    painter.fillRect(dark, colours.fieldDark);
    painter.fillRect(bright, colours.fieldBright);
    // The scale is light on the dark part and dark on the bright one, as both must be read.
    painter.setClipRect(dark, Qt::IntersectClip);
    paintScale(painter, eyepiece, colours.fieldBright);
    painter.setClipPath(round);
    painter.setClipRect(bright, Qt::IntersectClip);
    paintScale(painter, eyepiece, colours.fieldInk);
    painter.restore();

    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.quietInk, 3.0));
    painter.drawEllipse(field);
}

}  // namespace firn::app
