#include "bench/clear_frames.h"

#include "gauges/palette.h"

#include <QPainter>
#include <QStyleOption>

namespace firn::app {

namespace {

constexpr int smallestTarget_px = 24;  // what a wet finger still hits
constexpr float frameInk = 0.6F;

void drawFrame(QPainter& painter, const QStyleOption& option)
{
    QColor ink = gaugeColours(option.palette).quietInk;
    ink.setAlphaF(frameInk);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink);
    painter.drawRect(option.rect.adjusted(0, 0, -1, -1));
    painter.restore();
}

bool hasFocus(const QStyleOption& option) { return option.state.testFlag(QStyle::State_HasFocus); }

}  // namespace

void ClearFrames::drawPrimitive(
    PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const
{
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    // The style marks the focus clearly.
    if (element == PE_IndicatorCheckBox || (element == PE_FrameLineEdit && !hasFocus(*option)))
        drawFrame(*painter, *option);
}

void ClearFrames::drawComplexControl(
    ComplexControl control, const QStyleOptionComplex* option, QPainter* painter, const QWidget* widget) const
{
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_SpinBox && !hasFocus(*option))
        drawFrame(*painter, *option);
}

QSize ClearFrames::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size, const QWidget* widget) const
{
    const QSize wanted = QProxyStyle::sizeFromContents(type, option, size, widget);
    return type == CT_CheckBox ? wanted.expandedTo({0, smallestTarget_px}) : wanted;
}

}  // namespace firn::app
