// What did it: a bar for each change, to the left or right of nothing, and their sum under them.
#pragma once

#include "compare/attribution_wording.h"
#include "gauges/gauge.h"

namespace firn::app {

class AttributionBars : public Gauge {
    Q_OBJECT

public:
    explicit AttributionBars(QWidget* parent = nullptr);

    /// The largest part first. Nothing for a figure that has no parts.
    void show(const Attribution& attribution, const AttributedKind& kind);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void changeEvent(QEvent* event) override;

private:
    struct Bar {
        QString what;
        QString number;
        double part;
        bool isSum = false;
    };
    double barHeight() const;

    std::vector<Bar> m_bars;
};

}  // namespace firn::app
