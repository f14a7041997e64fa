// What the cook's instruments will show in this mix: refractometer, hydrometer and floating egg, drawn as they are read.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

#include <array>

namespace firn::app {

class DegreesSpin;
class MarkedLines;

class ReadingsPanel : public Gauge {
    Q_OBJECT

public:
    explicit ReadingsPanel(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void show(const firn::Analysis& analysis);

signals:
    void readAtChosen(double temperature_c);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// What one instrument shows, what that is, and what was measured with it.
    struct Shown {
        QString figure;
        QString caption;
        QString measured;
        QString key;  // of the figure in the report; empty where it opens to nothing
    };

    /// One instrument's column: its picture, and under it the rest.
    struct Column {
        QRectF picture;
        QRectF figure;
        QRectF caption;
    };

    Column column(int index) const;
    double columnWidth(int index) const;
    int captionHeight() const;
    int footHeight() const;
    int usedHeight() const;
    void layOut();
    void placeFigures();
    void write(const Analysis& analysis);
    void paintShown(QPainter& painter, int index, const GaugeColours& colours) const;

    DegreesSpin* m_readAt;
    MarkedLines* m_disturbances;
    std::optional<Readings> m_readings;
    std::optional<InstrumentReadings> m_instruments;
    std::array<Shown, 3> m_shown;  // refractometer, hydrometer, egg
    QString m_alsoBrix, m_alsoBaume;
};

}  // namespace firn::app
