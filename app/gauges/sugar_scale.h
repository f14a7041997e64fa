// The sugar scale: how much sugar the mix carries, 0 to 50 % by mass, against the bands that the trade gives to each kind of ice.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

#include <QPointF>
#include <QRectF>
#include <optional>

namespace firn::app {

class SugarScale : public Gauge {
    Q_OBJECT

public:
    explicit SugarScale(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// Where the needle touches the scale; at its end where there is more sugar than the scale has.
    QPointF needleTip() const;

    /// The scale from 0 to 50 %, pixels of this widget.
    QRectF scale() const;

    /// Marks another share of sugar beside that of the mix, with these words, until a mix is shown again.
    void mark(MassFraction sugars, const QString& words);

public slots:
    void show(const firn::Analysis& analysis);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// A trade band as a bracket in one of the rows under the scale.
    struct Bracket {
        TextureClass textureClass;
        QString name;
        double low = 0.0;  // mass fractions
        double high = 0.0;
        double nameLeft = 0.0;  // pixels
        int row = 0;
    };

    void placeFigures();
    void showCounted(const Texture& texture);
    double xOf(double share) const;
    double needleHalfWidth() const;
    QRectF rowUnderScale(int row) const;
    void placeBrackets();
    void paintFigures(QPainter& painter, const GaugeColours& colours) const;
    void paintScale(QPainter& painter, const GaugeColours& colours) const;
    void paintMeasured(QPainter& painter, const GaugeColours& colours) const;
    int figureHeight() const;
    void paintNeedle(QPainter& painter, const GaugeColours& colours) const;
    void paintBracket(QPainter& painter, const Bracket& bracket, const GaugeColours& colours) const;

    bool m_isEmpty = true;
    MassFraction m_sugars;
    MassFraction m_uncertainty;
    std::optional<double> m_refractometer_brix;
    std::optional<MixEstimate> m_measured;
    QString m_measuredText;   // empty where nothing is measured
    bool m_isMarked = false;  // in the place of what is measured
    TextureClass m_textureClass = TextureClass::Nothing;
    MassFraction m_counted;  // what the band of the mix's kind counts
    QString m_countedWords;  // where that is not all sugars
    std::vector<Bracket> m_brackets;
    std::size_t m_rowCount = 0;
};

}  // namespace firn::app
