// The ribbon: what 100 g hold, constituent by constituent, in one order. Small in every row, large and written for the total.
#pragma once

#include "gauges/gauge.h"

#include <QRectF>
#include <vector>

namespace firn::app {

/// The ribbon in this place; every constituent that is there at all is at least one pixel wide.
void paintRibbon(QPainter& painter, const QRectF& place, const Ribbon& ribbon, const QPalette& palette);

/// "water 70.2 %, sugars 25.3 %, …"
QString ribbonText(const Ribbon& ribbon);

/// The total's ribbon with its names: inside where they fit, under it where they do not.
class RibbonBar : public Gauge {
    Q_OBJECT

public:
    explicit RibbonBar(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void show(const firn::Ribbon& ribbon);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    QRectF bar() const;
    void paintNamesBelow(QPainter& painter, const std::vector<std::size_t>& parts, const GaugeColours& colours) const;

    Ribbon m_ribbon{};
};

}  // namespace firn::app
