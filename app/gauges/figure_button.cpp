#include "gauges/figure_button.h"

#include "gauges/palette.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyleOptionFocusRect>

namespace firn::app {

FigureButton::FigureButton(const QString& name, QString figure, QWidget* parent)
    : QAbstractButton(parent)
    , m_figure(std::move(figure))
{
    setAccessibleName(name);
    setAccessibleDescription(tr("Explains this number"));
    setToolTip(invitation());
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    setFocusPolicy(Qt::StrongFocus);
    connect(this, &QAbstractButton::clicked, this, [this] { emit chosen(m_figure); });
}

void FigureButton::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    if (underMouse()) {
        painter.setPen(gaugeColours(palette()).curve);
        painter.drawLine(rect().bottomLeft(), rect().bottomRight());
    }
    paintFocus(painter);
}

void FigureButton::paintFocus(QPainter& painter)
{
    if (!hasFocus())
        return;
    QStyleOptionFocusRect option;
    option.initFrom(this);
    style()->drawPrimitive(QStyle::PE_FrameFocusRect, &option, &painter, this);
}

void FigureButton::keyPressEvent(QKeyEvent* event)
{
    // In the windows beside the bench, which its menu does not reach.
    if (event->key() == Qt::Key_E && event->modifiers() == Qt::ControlModifier) {
        click();
        return;
    }
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        click();
        break;
    case Qt::Key_Left:
    case Qt::Key_Up:
        emit left(-1);
        break;
    case Qt::Key_Right:
    case Qt::Key_Down:
        emit left(1);
        break;
    default:
        QAbstractButton::keyPressEvent(event);
    }
}

QString invitation() { return FigureButton::tr("Explain this number"); }

}  // namespace firn::app
