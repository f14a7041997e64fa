// Freezing curves of several recipes over one another: the first solid, the others dashed and dotted, each with its name.
#pragma once

#include "compare/comparison.h"
#include "gauges/gauge.h"

namespace firn::app {

/// The line of the side with this number, wherever it is drawn.
QPen penOfSide(std::size_t side, const GaugeColours& colours, double width);

class ComparedCurves : public Gauge {
    Q_OBJECT

public:
    explicit ComparedCurves(QWidget* parent = nullptr);

    void show(const Comparison& comparison);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    struct Curve {
        QString name;
        QString begins;  // "begins to freeze at −2.3 °C"
        FreezingCurve curve;
        Celsius serveAt;
    };

    QRectF plotArea() const;
    QPointF pointAt(double temperature_c, double shareFrozen) const;
    std::optional<Celsius> extrapolatedFrom() const;
    void paintAxes(QPainter& painter, const GaugeColours& colours) const;
    void paintServing(QPainter& painter, const GaugeColours& colours) const;
    void paintCurve(QPainter& painter, std::size_t side, const GaugeColours& colours) const;
    void paintName(QPainter& painter, std::size_t side, const GaugeColours& colours) const;

    std::vector<Curve> m_curves;
};

}  // namespace firn::app
