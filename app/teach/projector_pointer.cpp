#include "teach/projector_pointer.h"

#include "gauges/palette.h"

#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int usualSize_px = 20;
constexpr int shareOfHeight = 30;

}  // namespace

ProjectorPointer::ProjectorPointer(QWidget* parent)
    : QWidget(parent)
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAccessibleName(tr("Pointer"));
    hide();
}

void ProjectorPointer::pointAt(const QPoint& place)
{
    const int size = std::max(usualSize_px, parentWidget()->height() / shareOfHeight);
    setGeometry(QRect(place - QPoint(size / 2, size / 2), QSize(size, size)));
}

void ProjectorPointer::paintEvent(QPaintEvent* /*event*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QColor dot = colours.caution;
    dot.setAlphaF(0.75F);
    painter.setBrush(dot);
    painter.setPen(QPen(colours.ground, 2.0));
    painter.drawEllipse(rect().adjusted(1, 1, -2, -2));
}

}  // namespace firn::app
