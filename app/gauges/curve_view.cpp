#include "gauges/curve_view.h"

#include "gauges/label_row.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QChart>
#include <QEvent>
#include <QLineSeries>
#include <QPen>
#include <QValueAxis>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace firn::app {

namespace {

constexpr double usualCurveWidth = 2.5;
constexpr double usualHandleWidth = 28.0;
constexpr double usualReach = 12.0;  // from the line, where a press means it

QValueAxis* fixedAxis(double low, double high)
{
    auto* axis = new QValueAxis;
    axis->setRange(low, high);
    axis->setVisible(false);
    return axis;
}

QPointF pointOf(const FreezingStep& step) { return {step.temperature.value, percent(step.waterFrozen)}; }

}  // namespace

CurveView::CurveView(QWidget* parent)
    : QChartView(parent)
    , m_measured(new QLineSeries)
    , m_extrapolated(new QLineSeries)
    , m_beside(new QLineSeries)
{
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->setBackgroundVisible(false);
    chart()->legend()->hide();
    chart()->setMargins({});
    chart()->addAxis(fixedAxis(coldestOfCurve.value, 0.0), Qt::AlignBottom);
    chart()->addAxis(fixedAxis(0.0, 100.0), Qt::AlignLeft);
    for (QLineSeries* series : {m_measured, m_extrapolated, m_beside}) {
        chart()->addSeries(series);
        for (QAbstractAxis* axis : chart()->axes())
            series->attachAxis(axis);
    }
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setInteractive(false);
    setFocusPolicy(Qt::NoFocus);
    setViewportUpdateMode(FullViewportUpdate);
    setMinimumSize(0, 0);
    applyStyle();
}

QRectF CurveView::plotArea() const
{
    const int line = lineHeight(font());
    const double left = fontMetrics().horizontalAdvance(percentText({1.0}, 0)) + closeSpace;
    const double right = 0.5 * fontMetrics().horizontalAdvance(chosenDegrees({0.0})) + gridStep;
    const double top = 2.0 * line + gridStep, bottom = 2.0 * line + 2.0 * gridStep;
    return {left, top, std::max(1.0, width() - left - right), std::max(1.0, height() - top - bottom)};
}

double CurveView::pixelsPerDegree() const { return plotArea().width() / -coldestOfCurve.value; }

double CurveView::xOf(double temperature_c) const
{
    return plotArea().right() + std::clamp(temperature_c, coldestOfCurve.value, 0.0) * pixelsPerDegree();
}

double CurveView::yOf(double shareFrozen) const { return plotArea().bottom() - shareFrozen * plotArea().height(); }

/// Where the drawn line is at a temperature; on the floor where nothing has frozen.
double CurveView::curveY(const std::vector<FreezingStep>& steps, double temperature_c) const
{
    const auto colder = std::find_if(
        steps.begin(), steps.end(), [temperature_c](const FreezingStep& step) { return step.temperature.value <= temperature_c; });
    if (colder == steps.end())
        return yOf(steps.empty() || temperature_c > coldestOfCurve.value ? 0.0 : steps.back().waterFrozen.value);
    if (colder == steps.begin())
        return yOf(colder->temperature.value == temperature_c ? colder->waterFrozen.value : 0.0);
    const auto warmer = std::prev(colder);
    const double along = (warmer->temperature.value - temperature_c) / (warmer->temperature - colder->temperature).value;
    return yOf(warmer->waterFrozen.value + along * (colder->waterFrozen - warmer->waterFrozen).value);
}

void CurveView::setCurve(const FreezingCurve& curve)
{
    m_steps = curve.steps;
    const auto firstGuess =
        std::find_if(m_steps.begin(), m_steps.end(), [](const FreezingStep& step) { return step.isExtrapolated; });
    QList<QPointF> measured, extrapolated;
    std::transform(m_steps.begin(), firstGuess, std::back_inserter(measured), pointOf);
    if (firstGuess != m_steps.end() && !measured.isEmpty())
        extrapolated << measured.last();  // so that the dashes go on where the line ends
    std::transform(firstGuess, m_steps.end(), std::back_inserter(extrapolated), pointOf);
    m_measured->replace(measured);
    m_extrapolated->replace(extrapolated);
    viewport()->update();
}

void CurveView::setBeside(const FreezingCurve& curve)
{
    QList<QPointF> points;
    std::ranges::transform(curve.steps, std::back_inserter(points), pointOf);
    m_besideSteps = curve.steps;
    m_beside->replace(points);
    viewport()->update();
}

void CurveView::setRegions(std::vector<CurveRegion> regions)
{
    m_regions = std::move(regions);
    viewport()->update();
}

void CurveView::setMarkers(std::vector<CurveMarker> markers)
{
    m_markers = std::move(markers);
    viewport()->update();
}

/// One box for each marker, over or under its line, and aside where two would touch.
std::vector<QRectF> CurveView::labelBoxes(bool areHeads) const
{
    std::vector<std::size_t> fromColdest(m_markers.size());
    std::iota(fromColdest.begin(), fromColdest.end(), std::size_t{0});
    std::stable_sort(fromColdest.begin(), fromColdest.end(),
        [this](std::size_t a, std::size_t b) { return m_markers[a].temperature_c < m_markers[b].temperature_c; });
    std::vector<LabelSpan> spans;
    for (const std::size_t index : fromColdest) {
        const CurveMarker& marker = m_markers[index];
        const double width = fontMetrics().horizontalAdvance(areHeads ? marker.head : marker.foot) + closeSpace;
        spans.push_back({xOf(marker.temperature_c) - 0.5 * width, width});
    }
    // Heads have no frames to part them.
    spreadApart(spans, 0.0, width() - 1.0, areHeads ? fontMetrics().averageCharWidth() : gridStep);
    const int line = lineHeight(font());
    const double top = areHeads ? line : height() - line - 1.0;
    std::vector<QRectF> boxes(m_markers.size());
    for (std::size_t i = 0; i < spans.size(); ++i)
        boxes[fromColdest[i]] = QRectF(spans[i].left + 0.5, top, spans[i].width - 1.0, line);
    return boxes;
}

QRegion CurveView::handleOf(std::size_t marker) const
{
    const int handleWidth = qRound(besideText(font(), usualHandleWidth));
    QRegion handle(qRound(xOf(m_markers[marker].temperature_c)) - handleWidth / 2, 0, handleWidth, height());
    for (const bool areHeads : {true, false}) {
        const std::vector<QRectF> boxes = labelBoxes(areHeads);
        for (const QRectF& box : boxes)
            handle -= box.toAlignedRect();
        handle += boxes[marker].toAlignedRect();
    }
    return handle;
}

QRegion CurveView::labelsOf(std::size_t marker) const
{
    return QRegion(labelBoxes(true)[marker].toAlignedRect()) + labelBoxes(false)[marker].toAlignedRect();
}

std::optional<std::size_t> CurveView::pointAt(const QPointF& position) const
{
    if (m_steps.empty() || !plotArea().contains(position))
        return std::nullopt;
    const auto away = [&](const FreezingStep& step) {
        return std::hypot(xOf(step.temperature.value) - position.x(), yOf(step.waterFrozen.value) - position.y());
    };
    const auto nearest = std::ranges::min_element(m_steps, {}, away);
    const double temperature_c = coldestOfCurve.value + (position.x() - plotArea().left()) / pixelsPerDegree();
    if (std::min(away(*nearest), std::abs(curveY(temperature_c) - position.y())) > besideText(font(), usualReach))
        return std::nullopt;
    return std::size_t(nearest - m_steps.begin());
}

void CurveView::resizeEvent(QResizeEvent* event)
{
    QChartView::resizeEvent(event);
    layOut();
}

void CurveView::changeEvent(QEvent* event)
{
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        applyStyle();
        layOut();
    }
}

void CurveView::layOut() { chart()->setPlotArea(plotArea()); }

void CurveView::applyStyle()
{
    const GaugeColours colours = coloursInWindow(palette());
    const double curveWidth = besideText(font(), usualCurveWidth);
    m_measured->setPen(QPen(colours.curve, curveWidth));
    m_extrapolated->setPen(QPen(colours.curve, curveWidth, Qt::DashLine));
    m_beside->setPen(QPen(colours.ink, curveWidth, Qt::DotLine));
    viewport()->update();
}

}  // namespace firn::app
