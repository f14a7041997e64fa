// What the cook's instruments will show in this mix: refractometer, hydrometer and floating egg, drawn as they are read.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

class QSpinBox;

namespace firn::app {

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
    /// One instrument's column: its picture, and under it a figure and what it is.
    struct Column {
        QRectF picture;
        QRectF figure;
        QRectF caption;
    };

    Column column(int index) const;
    QString baumeCaption() const;
    int captionHeight() const;
    int footHeight() const;
    int usedHeight() const;
    void layOut();
    static void paintFigure(
        QPainter& painter, const Column& column, const QString& figure, const QString& caption, const GaugeColours& colours);

    QSpinBox* m_readAt;
    MarkedLines* m_disturbances;
    std::optional<Readings> m_readings;
};

}  // namespace firn::app
