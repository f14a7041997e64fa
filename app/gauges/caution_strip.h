// What a cook should know before going on, the most serious first.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

namespace firn::app {

class MarkedLines;

class CautionStrip : public Gauge {
    Q_OBJECT

public:
    explicit CautionStrip(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void show(const firn::Analysis& analysis);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    MarkedLines* m_lines;
};

}  // namespace firn::app
