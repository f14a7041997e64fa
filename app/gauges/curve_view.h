// The drawing of a freezing curve: the line by Qt Charts, and behind and before it the texture regions and the markers.
#pragma once

#include "freezing/freezing_curve.h"
#include "gauges/palette.h"

#include <QChartView>
#include <QRegion>
#include <QString>
#include <optional>
#include <vector>

class QLineSeries;

namespace firn::app {

/// A vertical line on the chart: a word at its head, another at its foot, and a grip where it meets the curve.
struct CurveMarker {
    enum class Grip { Circle, Square };

    double temperature_c = 0.0;
    QString head;
    QString foot;
    Grip grip = Grip::Circle;
    bool isSelected = false;
};

/// A stretch of temperatures with its name.
struct CurveRegion {
    FirmnessRegion region;
    QString name;
};

class CurveView : public QChartView {
    Q_OBJECT

public:
    explicit CurveView(QWidget* parent = nullptr);

    /// The place of the curve itself, pixels of this widget: -30 °C at its left, all water frozen at its top.
    QRectF plotArea() const;
    double xOf(double temperature_c) const;
    double pixelsPerDegree() const;
    /// Where a press takes hold of a marker: along its line, and on its own labels rather than on another's.
    QRegion handleOf(std::size_t marker) const;

    /// The labels of a marker alone.
    QRegion labelsOf(std::size_t marker) const;
    /// Where the words over the first point stand; empty where there is no curve.
    QRectF beginningPlace() const;
    /// The point of the curve that is drawn here, counted from the first; none away from the line.
    std::optional<std::size_t> pointAt(const QPointF& position) const;

    void setCurve(const FreezingCurve& curve);
    /// Another mix's curve, dotted; nothing for one without steps.
    void setBeside(const FreezingCurve& curve);
    void setRegions(std::vector<CurveRegion> regions);
    void setMarkers(std::vector<CurveMarker> markers);
    /// What is written over the first point, or in the middle of a chart without a curve.
    void setBeginning(const QString& words) { m_beginning = words; }
    QString beginning() const { return m_beginning; }

protected:
    void drawBackground(QPainter* painter, const QRectF& exposed) override;
    void drawForeground(QPainter* painter, const QRectF& exposed) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    double yOf(double shareFrozen) const;
    double curveY(double temperature_c) const { return curveY(m_steps, temperature_c); }
    double curveY(const std::vector<FreezingStep>& steps, double temperature_c) const;
    bool crossesCurve(const QRectF& box) const;
    bool isFree(const QRectF& box) const;
    void layOut();
    void applyStyle();
    void paintRegions(QPainter& painter, const GaugeColours& colours) const;
    std::optional<QRectF> regionNamePlace(const CurveRegion& region, bool isUpright) const;
    void paintRegionName(QPainter& painter, const CurveRegion& region, const GaugeColours& colours) const;
    QRectF extrapolatedPlace() const;
    void paintAxes(QPainter& painter, const GaugeColours& colours) const;
    void paintBeginning(QPainter& painter, const GaugeColours& colours) const;
    void paintExtrapolated(QPainter& painter, const GaugeColours& colours) const;
    std::vector<QRectF> labelBoxes(bool areHeads) const;
    void paintLabels(QPainter& painter, bool areHeads, const GaugeColours& colours) const;
    void paintGrip(QPainter& painter, const CurveMarker& marker, const GaugeColours& colours) const;

    QLineSeries* m_measured;
    QLineSeries* m_extrapolated;
    QLineSeries* m_beside;
    std::vector<FreezingStep> m_steps;
    std::vector<FreezingStep> m_besideSteps;
    std::vector<CurveRegion> m_regions;
    std::vector<CurveMarker> m_markers;
    QString m_beginning;
};

}  // namespace firn::app
