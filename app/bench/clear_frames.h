// The desktop's style with frames that are seen on a dark ground too: its own are a darker shade of the window, which is lost there.
#pragma once

#include <QProxyStyle>

namespace firn::app {

class ClearFrames : public QProxyStyle {
    Q_OBJECT

public:
    void drawPrimitive(
        PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const override;
    void drawComplexControl(
        ComplexControl control, const QStyleOptionComplex* option, QPainter* painter, const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size, const QWidget* widget) const override;
};

}  // namespace firn::app
