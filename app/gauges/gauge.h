// What every gauge shares: its ground, a name and a value that a screen reader can say, and a hint while there is nothing to show.
#pragma once

#include "gauges/palette.h"

#include <QWidget>

namespace firn::app {

class Gauge : public QWidget {
    Q_OBJECT

public:
    /// The sentence that says what the picture says.
    QString valueText() const { return m_valueText; }

protected:
    Gauge(const QString& name, QWidget* parent);

    /// Sets the sentence, and announces it where it has changed.
    void setValueText(const QString& sentence);

    /// Draws on the ground, which is filled already.
    virtual void paintGauge(QPainter& painter, const GaugeColours& colours) = 0;

    void paintEvent(QPaintEvent* event) final;

private:
    QString m_valueText;
};

/// A quiet sentence at the top of a place that has nothing to show yet.
void paintHint(QPainter& painter, const QRect& place, const QString& hint, const GaugeColours& colours);

}  // namespace firn::app
