// What every gauge shares: its ground, a name and a value that a screen reader can say, and a hint while there is nothing to show.
#pragma once

#include "gauges/palette.h"

#include <QWidget>
#include <vector>

namespace firn::app {

class FigureButton;

/// Where a gauge draws a figure of the report.
struct FigurePlace {
    QString figure;  // its key
    QString name;    // and value, for a screen reader: "sugars: 26.1 %"
    QRect place;
};

class Gauge : public QWidget {
    Q_OBJECT

public:
    /// The sentence that says what the picture says.
    QString valueText() const { return m_valueText; }

    /// The button over a figure; none where it is not shown.
    FigureButton* buttonOf(const QString& figure) const;

signals:
    /// Somebody wants to know how a figure comes about; its key in the report.
    void figureChosen(const QString& figure);

protected:
    Gauge(const QString& name, QWidget* parent);

    /// Sets the sentence, and announces it where it has changed.
    void setValueText(const QString& sentence);

    /// Lays a button over each figure, large enough to hit. One of them is reached by Tab, the others from there by the arrow keys.
    void setFigures(const std::vector<FigurePlace>& figures);

    /// Draws on the ground, which is filled already.
    virtual void paintGauge(QPainter& painter, const GaugeColours& colours) = 0;

    void paintEvent(QPaintEvent* event) final;

private:
    void goToFigure(std::size_t from, int step);

    QString m_valueText;
    std::vector<FigureButton*> m_figures;
};

/// A quiet sentence at the top of a place that has nothing to show yet.
void paintHint(QPainter& painter, const QRect& place, const QString& hint, const GaugeColours& colours);

}  // namespace firn::app
