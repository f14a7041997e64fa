// What 100 g hold, constituent by constituent, in grams and as a bar.
#pragma once

#include "gauges/gauge.h"
#include "mix/composition_table.h"

namespace firn::app {

class CompositionTable : public Gauge {
    Q_OBJECT

public:
    explicit CompositionTable(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

public slots:
    void show(const firn::Composition& composition);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void changeEvent(QEvent* event) override;

private:
    int decimals() const;
    int rowHeight() const;
    int nameWidth() const;
    int numberWidth() const;

    std::vector<CompositionLine> m_lines;
};

}  // namespace firn::app
