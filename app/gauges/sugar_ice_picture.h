// Why the trade has its bands of sugar, as a picture: ice when served against sugar, the bands on it, and the mix as a point.
#pragma once

#include "gauges/palette.h"
#include "texture/sugar_ice_curve.h"

#include <QWidget>

namespace firn::app {

/// Where it is small, as in a panel, it leaves out every second number, the books and the names that do not fit.
class SugarIcePicture : public QWidget {
    Q_OBJECT

public:
    explicit SugarIcePicture(QWidget* parent = nullptr);

    void showCurve(const SugarIceCurve& curve);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Sugars {
        MassFraction low, high;
    };

    bool isCompact() const;
    int rowCount() const;
    QRectF plot() const;
    double xOf(MassFraction sugars) const;
    double yOf(MassFraction ice) const;
    QRectF row(int index) const;
    void paintAxes(QPainter& painter, const GaugeColours& colours) const;
    void paintBand(QPainter& painter, const BandOnCurve& band, const GaugeColours& colours) const;
    void paintBrackets(QPainter& painter, const GaugeColours& colours) const;
    void paintBracket(QPainter& painter, const QRectF& place, Sugars band, const QString& name, const QColor& colour) const;
    void paintCurve(QPainter& painter, const GaugeColours& colours) const;
    void paintMix(QPainter& painter, const GaugeColours& colours) const;

    SugarIceCurve m_curve;
};

}  // namespace firn::app
