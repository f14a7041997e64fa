// The scores on one scale: a line for each version, a mark for each tasting, and their mean.
#pragma once

#include "gauges/gauge.h"
#include "tasting/scores.h"

namespace firn::app {

class ScoreChart : public Gauge {
    Q_OBJECT

public:
    explicit ScoreChart(QWidget* parent = nullptr);

    /// `names` are those of the versions, in the order in which they stand in the scores.
    void show(const TastingScale& scale, const ScoresOnScale& scores, const QStringList& names);
    void showNothing(const QString& hint);

    /// Where a score on the line of this version is drawn, pixels of this widget.
    QPointF placeOf(std::size_t version, double value) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    void placeFigures();
    QRectF wordsOf(std::size_t version) const;
    void paintEnds(QPainter& painter, const GaugeColours& colours) const;
    void paintVersion(QPainter& painter, const GaugeColours& colours, std::size_t version) const;
    QRectF lineArea() const;

    TastingScale m_scale;
    ScoresOnScale m_scores;
    QStringList m_names;
    QString m_hint;
};

}  // namespace firn::app
