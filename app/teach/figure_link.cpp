#include "teach/figure_link.h"

#include "gauges/palette.h"

#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int leastWidth_px = 60;

}  // namespace

FigureLink::FigureLink(const QString& name, const QString& figure, QWidget* parent)
    : FigureButton(name, figure, parent)
    , m_name(name)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(this, &FigureButton::left, this, [this](int step) { step > 0 ? focusNextChild() : focusPreviousChild(); });
}

QSize FigureLink::sizeHint() const
{
    return {fontMetrics().horizontalAdvance(m_name) + 2, std::max(leastSize_px, fontMetrics().height())};
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
    paintFocus(painter);
}

}  // namespace firn::app
