// The Pearson square as it is drawn by hand: two strengths at the left, the one wanted in the middle, and at the right, across each diagonal,
// the difference, which is the part of the strength in the same line.
#pragma once

#include "gauges/gauge.h"
#include "syrups/syrup_job.h"

namespace firn::app {

class PearsonPicture : public Gauge {
    Q_OBJECT

public:
    explicit PearsonPicture(QWidget* parent = nullptr);

    /// An empty square where there is none.
    void show(const std::optional<DrawnSquare>& square);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    QRectF box() const;
    void paintDiagonal(QPainter& painter, QPointF from, QPointF to, double gap) const;
    void paintRow(
        QPainter& painter, const GaugeColours& colours, double middle, MassFraction strength, double parts, Grams mass) const;

    std::optional<DrawnSquare> m_square;
};

}  // namespace firn::app
