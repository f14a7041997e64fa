// The freezing chart: how much of the water is ice at each temperature, what the texture is there, and two temperatures to drag.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

namespace firn::app {

class CurveView;
class TemperatureMarker;

class FreezingChart : public Gauge {
    Q_OBJECT

public:
    explicit FreezingChart(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// Where the curve is drawn, pixels of this widget: -30 °C at its left end, 0 °C at its right.
    QRectF plotArea() const;

public slots:
    void show(const firn::Analysis& analysis);

signals:
    void servingChosen(double temperature_c);
    void freezerChosen(double temperature_c);
    /// The marker was let go: what came before is one gesture.
    void markerReleased();

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void showMarkers();
    QString tipAt(const QPointF& position) const;
    QString regionAt(const QPointF& position) const;

    CurveView* m_view;
    TemperatureMarker* m_freezer;
    TemperatureMarker* m_serving;
    FreezingCurve m_curve;
    std::vector<FirmnessRegion> m_regions;
    bool m_isEmpty = true;  // nothing to draw: no mix, or one that is not frozen
    bool m_isUnfrozen = false;
};

}  // namespace firn::app
