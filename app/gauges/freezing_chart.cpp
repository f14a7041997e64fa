#include "gauges/freezing_chart.h"

#include "gauges/curve_view.h"
#include "gauges/figure_button.h"
#include "gauges/temperature_marker.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>

namespace firn::app {

FreezingChart::FreezingChart(QWidget* parent)
    : Gauge(tr("Freezing curve"), parent)
    , m_view(new CurveView(this))
    , m_freezer(new TemperatureMarker(tr("Freezer temperature"), this))
    , m_serving(new TemperatureMarker(tr("Serving temperature"), this))
{
    m_freezer->setObjectName(QStringLiteral("freezerMarker"));
    m_serving->setObjectName(QStringLiteral("servingMarker"));
    m_freezer->setFigure(QStringLiteral("texture.ice_percent_in_freezer"));
    m_serving->setFigure(QStringLiteral("texture.ice_percent_at_serving"));
    setMouseTracking(true);
    m_view->setAttribute(Qt::WA_TransparentForMouseEvents);
    connect(m_freezer, &TemperatureMarker::chosen, this, &FreezingChart::freezerChosen);
    connect(m_serving, &TemperatureMarker::chosen, this, &FreezingChart::servingChosen);
    for (const TemperatureMarker* marker : {m_freezer, m_serving}) {
        connect(marker, &TemperatureMarker::released, this, &FreezingChart::markerReleased);
        connect(marker, &TemperatureMarker::figureChosen, this, [this](const QString& figure) {
            if (!m_isEmpty)
                emit figureChosen(figure);
        });
        connect(marker, &TemperatureMarker::looksChanged, this, &FreezingChart::showMarkers);
    }
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    show(Analysis{});
}

QSize FreezingChart::sizeHint() const { return {fontMetrics().averageCharWidth() * 60, lineHeight(font()) * 14}; }

QSize FreezingChart::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, lineHeight(font()) * 11}; }

QRectF FreezingChart::plotArea() const { return m_view->plotArea(); }

void FreezingChart::show(const Analysis& analysis)
{
    m_isUnfrozen = analysis.texture.process == Process::Unfrozen;
    m_isEmpty = analysis.mix.isEmpty() || m_isUnfrozen;
    m_curve = m_isUnfrozen ? FreezingCurve{} : analysis.freezing;
    m_regions = analysis.texture.regions;
    std::vector<CurveRegion> regions;
    std::transform(m_regions.begin(), m_regions.end(), std::back_inserter(regions), [](const FirmnessRegion& region) {
        return CurveRegion{region, translatedName(nameOf(region.firmness))};
    });
    m_view->setCurve(m_curve);
    m_view->setRegions(m_isEmpty ? std::vector<CurveRegion>{} : std::move(regions));
    if (m_isUnfrozen)
        m_view->setBeginning(tr("Not frozen"));
    else if (m_isEmpty)
        m_view->setBeginning(tr("Add ingredients to see the freezing curve"));
    else if (!m_curve.freezingPoint)
        m_view->setBeginning(tr("No water in the mix: nothing freezes"));
    else if (m_curve.steps.empty())
        m_view->setBeginning(tr("Nothing freezes above %1").arg(chosenDegrees(coldestOfCurve)));
    else
        m_view->setBeginning(tr("begins to freeze at %1").arg(degrees(m_curve.freezingPoint->temperature)));
    m_freezer->setTemperature(analysis.conditions.freezerAt.value);
    m_serving->setTemperature(analysis.conditions.serveAt.value);
    showMarkers();
}

void FreezingChart::showMarkers()
{
    for (TemperatureMarker* marker : {m_freezer, m_serving})
        marker->setVisible(!m_isUnfrozen);
    if (m_isUnfrozen) {
        m_view->setMarkers({});
        setFigures({});
        setValueText(m_view->beginning());
        return;
    }
    const auto ice = [this](const TemperatureMarker* marker) { return percentText(m_curve.iceAt({marker->temperature_c()}), 0); };
    const auto head = [&](const TemperatureMarker* marker) {
        return m_isEmpty ? QString() : tr("%1 of the mix is ice").arg(ice(marker));
    };
    m_view->setMarkers({
        {m_freezer->temperature_c(), head(m_freezer), tr("freezer %1").arg(m_freezer->valueText()), CurveMarker::Grip::Square,
            m_freezer->hasFocus()},
        {m_serving->temperature_c(), head(m_serving), tr("serving %1").arg(m_serving->valueText()), CurveMarker::Grip::Circle,
            m_serving->hasFocus()},
    });
    std::size_t index = 0;
    for (TemperatureMarker* marker : {m_freezer, m_serving}) {
        marker->setPixelsPerDegree(m_view->pixelsPerDegree());
        marker->setHandle(m_view->handleOf(index), m_view->labelsOf(index));
        ++index;
    }
    std::vector<FigurePlace> figures;
    if (!m_isEmpty && !m_curve.steps.empty())
        figures.push_back({QStringLiteral("freezing_point_c"), m_view->beginning(), m_view->beginningPlace().toAlignedRect()});
    setFigures(figures);
    if (FigureButton* beginning = buttonOf(QStringLiteral("freezing_point_c"))) {
        beginning->lower();  // under the markers, which can be dragged there
        m_view->lower();
    }
    if (m_isEmpty || m_curve.steps.empty())
        setValueText(m_view->beginning());
    else
        setValueText(tr("Begins to freeze at %1; %2 of the mix is ice in the freezer at %3, %4 when served at %5")
                         .arg(degrees(m_curve.freezingPoint->temperature), ice(m_freezer), m_freezer->valueText(), ice(m_serving),
                             m_serving->valueText()));
}

void FreezingChart::paintGauge(QPainter& /*painter*/, const GaugeColours& /*colours*/)
{
    // The view covers all of it.
}

void FreezingChart::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    m_view->setGeometry(rect());
    showMarkers();
}

void FreezingChart::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        showMarkers();
    }
}

QString FreezingChart::regionAt(const QPointF& position) const
{
    if (m_isEmpty || !plotArea().contains(position))
        return {};
    const double temperature_c = coldestOfCurve.value + (position.x() - plotArea().left()) / m_view->pixelsPerDegree();
    const auto region = std::find_if(m_regions.begin(), m_regions.end(),
        [temperature_c](const FirmnessRegion& r) { return r.range.coldest.value <= temperature_c; });
    if (region == m_regions.end())
        return {};
    return tr("%1 from %2 down to %3")
        .arg(capitalised(translatedName(nameOf(region->firmness))), degrees(region->range.warmest), degrees(region->range.coldest));
}

/// On the curve, what a press opens; elsewhere the region.
QString FreezingChart::tipAt(const QPointF& position) const
{
    const auto point = m_view->pointAt(position);
    if (!point)
        return regionAt(position);
    const FreezingStep& step = m_curve.steps.at(*point);
    return tr("%1 of the water is ice at %2. %3", "the third is what a press does")
        .arg(percentText(step.waterFrozen, 0), degrees(step.temperature), invitation());
}

void FreezingChart::mouseMoveEvent(QMouseEvent* event)
{
    setCursor(m_view->pointAt(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void FreezingChart::mouseReleaseEvent(QMouseEvent* event)
{
    const auto point = m_view->pointAt(event->position());
    if (point && event->button() == Qt::LeftButton)
        emit figureChosen(QStringLiteral("freezing_curve[%1].water_frozen_percent").arg(*point));
}

bool FreezingChart::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return Gauge::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), tipAt(help->pos()), this);
    return true;
}

}  // namespace firn::app
