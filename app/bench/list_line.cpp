#include "bench/list_line.h"

namespace firn::app {

void paintChosen(QPainter& painter, const QRect& place, const QColor& colour)
{
    QColor tint = colour;
    tint.setAlphaF(0.14F);
    painter.fillRect(place, tint);
    painter.fillRect(QRect(place.topLeft(), QSize(chosenMark_px, place.height())), colour);
}

int drawShortened(QPainter& painter, const QRect& place, const QString& text, Qt::Alignment side)
{
    const QString shown = painter.fontMetrics().elidedText(text, Qt::ElideRight, place.width());
    painter.drawText(place, int(side | Qt::AlignVCenter | Qt::TextSingleLine), shown);
    return painter.fontMetrics().horizontalAdvance(shown);
}

}  // namespace firn::app
