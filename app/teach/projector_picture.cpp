#include "teach/projector_picture.h"

#include "gauges/curve_view.h"
#include "gauges/egg_picture.h"
#include "gauges/hydrometer_picture.h"
#include "gauges/ribbon.h"
#include "gauges/sugar_ice_picture.h"
#include "gauges/sugar_scale.h"
#include "gauges/wording.h"
#include "teach/figure_wording.h"

#include <QPainter>
#include <algorithm>
#include <initializer_list>

namespace firn::app {

namespace {

constexpr double curveShare = 0.52;  // of the page's width
constexpr double readingShare = 0.34;

bool isCurve(LessonPicture picture) { return picture == LessonPicture::FreezingCurve || picture == LessonPicture::FreezingCurves; }

}  // namespace

ProjectorPicture::ProjectorPicture(QWidget* parent)
    : QWidget(parent)
    , m_scale(new SugarScale(this))
    , m_ribbon(new RibbonBar(this))
    , m_curve(new CurveView(this))
    , m_sugarIce(new SugarIcePicture(this))
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
    for (QWidget* each : std::initializer_list<QWidget*>{m_scale, m_ribbon, m_curve, m_sugarIce})
        each->hide();
}

PictureNeed ProjectorPicture::needOf(LessonPicture picture) const
{
    switch (picture) {
    case LessonPicture::SugarScale:
        return {true, m_scale->sizeHint().height()};
    case LessonPicture::RibbonBar:
        return {true, m_ribbon->sizeHint().height()};
    case LessonPicture::FreezingCurve:
    case LessonPicture::FreezingCurves:
    case LessonPicture::SugarIce:
        return {false, 0, curveShare};
    case LessonPicture::Hydrometer:
    case LessonPicture::Egg:
        return {false, 0, readingShare};
    case LessonPicture::None:
        break;
    }
    return {};
}

void ProjectorPicture::show(const LessonPage& page, const Analysis& analysis, bool isHidden)
{
    m_shown = page.picture;
    m_isHidden = isHidden;
    m_readings = analysis.readings;
    m_scale->setVisible(!isHidden && m_shown == LessonPicture::SugarScale);
    m_ribbon->setVisible(!isHidden && m_shown == LessonPicture::RibbonBar);
    m_curve->setVisible(!isHidden && isCurve(m_shown));
    m_sugarIce->setVisible(!isHidden && m_shown == LessonPicture::SugarIce);
    if (m_shown == LessonPicture::SugarScale)
        showScale(page, analysis);
    else if (m_shown == LessonPicture::RibbonBar)
        m_ribbon->show(analysis.ribbon);
    else if (isCurve(m_shown))
        showCurve(page, analysis);
    else if (m_shown == LessonPicture::SugarIce && page.sugarIce)
        m_sugarIce->showCurve(*page.sugarIce);
    else if (m_readings && !isHidden)
        setAccessibleName(m_shown == LessonPicture::Egg ? tr("An egg in a glass of the mix") : tr("A hydrometer in the mix"));
    if (isHidden)
        setAccessibleName(tr("Picture hidden"));
    update();
}

/// Of a correction the last step finds the sugars that the mix has after it.
void ProjectorPicture::showScale(const LessonPage& page, const Analysis& analysis)
{
    m_scale->show(analysis);
    if (page.topic == LessonTopic::Correction && !page.steps.empty()) {
        const Symbol& after = page.steps.back().result;
        m_scale->mark(fromPercent(after.value), tr("%1 after the correction").arg(valueInLocale(after)));
    }
}

void ProjectorPicture::showCurve(const LessonPage& page, const Analysis& analysis)
{
    const FreezingCurve& curve = analysis.freezing;
    std::vector<CurveRegion> regions;
    for (const FirmnessRegion& region : analysis.texture.regions)
        regions.push_back({region, translatedName(nameOf(region.firmness))});
    m_curve->setCurve(curve);
    m_curve->setBeside(page.beside.value_or(FreezingCurve{}));
    m_curve->setRegions(std::move(regions));
    m_curve->setBeginning(curve.steps.empty() ? tr("Nothing freezes above %1").arg(chosenDegrees(coldestOfCurve))
                                              : tr("begins at %1").arg(degrees(curve.freezingPoint->temperature)));
    const auto marker = [&](Celsius temperature, MassFraction ice, const QString& foot, CurveMarker::Grip grip) {
        return CurveMarker{temperature.value, tr("%1 of the mix is ice").arg(percentText(ice, 0)),
            foot.arg(chosenDegrees(temperature)), grip, false};
    };
    m_curve->setMarkers(
        {marker(analysis.conditions.freezerAt, analysis.texture.iceInFreezer, tr("freezer %1"), CurveMarker::Grip::Square),
            marker(analysis.conditions.serveAt, analysis.texture.iceAtServing, tr("serving %1"), CurveMarker::Grip::Circle)});
    setAccessibleName(tr("Freezing curve, %1").arg(m_curve->beginning()));
}

void ProjectorPicture::resizeEvent(QResizeEvent* /*event*/)
{
    for (QWidget* each : std::initializer_list<QWidget*>{m_scale, m_ribbon, m_curve, m_sugarIce})
        each->setGeometry(rect());
}

void ProjectorPicture::paintEvent(QPaintEvent* /*event*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    painter.setPen(colours.ink);
    if (m_isHidden) {
        painter.setPen(QPen(colours.quietInk, 2.0));
        painter.drawRect(rect().adjusted(1, 1, -2, -2));
    } else if (m_shown == LessonPicture::Egg && m_readings) {
        paintEgg(painter, m_readings->egg, rect(), colours);
    } else if (m_shown == LessonPicture::Hydrometer && m_readings) {
        paintHydrometer(painter, rect(), m_readings->specificGravity_20_20, colours);
    }
}

}  // namespace firn::app
