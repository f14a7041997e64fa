#include "catalogue/tick_box.h"

#include "gauges/palette.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOptionButton>

namespace firn::app {

namespace {

constexpr int smallestTarget_px = 24;  // for a wet finger

}  // namespace

QSize TickBox::sizeHint() const { return QCheckBox::sizeHint().expandedTo({0, smallestTarget_px}); }

void TickBox::paintEvent(QPaintEvent* event)
{
    QCheckBox::paintEvent(event);
    // The style's own frame is a darker shade of the window, which is lost on a dark one.
    QStyleOptionButton option;
    initStyleOption(&option);
    QPainter painter(this);
    painter.setPen(gaugeColours(palette()).quietInk);
    painter.drawRect(style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, this).adjusted(0, 0, -1, -1));
}

}  // namespace firn::app
