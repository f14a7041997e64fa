#include "teach/figure_link.h"

#include "gauges/palette.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyleOptionFocusRect>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int leastHeight_px = 24;  // of a target for a wet finger
constexpr int leastWidth_px = 60;

}  // namespace

FigureLink::FigureLink(const QString& name, QString figure, QWidget* parent)
    : QAbstractButton(parent)
    , m_name(name)
    , m_figure(std::move(figure))
{
    setAccessibleName(m_name);
    setAccessibleDescription(tr("Shows how this figure comes about"));
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(this, &QAbstractButton::clicked, this, [this] { emit chosen(m_figure); });
}

QSize FigureLink::sizeHint() const
{
    return {fontMetrics().horizontalAdvance(m_name) + 2, std::max(leastHeight_px, fontMetrics().height())};
}

QSize FigureLink::minimumSizeHint() const { return {std::min(leastWidth_px, sizeHint().width()), sizeHint().height()}; }

void FigureLink::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    QFont underlined = font();
    underlined.setUnderline(true);
    painter.setFont(underlined);
    painter.setPen(gaugeColours(palette()).curve);
    painter.drawText(
        rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, fontMetrics().elidedText(m_name, Qt::ElideRight, width()));
    if (hasFocus()) {
        QStyleOptionFocusRect option;
        option.initFrom(this);
        style()->drawPrimitive(QStyle::PE_FrameFocusRect, &option, &painter, this);
    }
}

void FigureLink::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

}  // namespace firn::app
