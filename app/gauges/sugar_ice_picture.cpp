#include "gauges/sugar_ice_picture.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace firn::app {

namespace {

constexpr MassFraction mostSugars{0.50}, mostIce{1.0};
constexpr double usualLine_px = 2.5;
constexpr double usualDot_px = 5.0;

// Smaller than this there is room for fewer numbers, and none for the books' rows.
constexpr int fullWidth_characters = 50, fullHeight_lines = 13;

}  // namespace

SugarIcePicture::SugarIcePicture(QWidget* parent)
    : QWidget(parent)
{
    setAccessibleName(tr("Ice when served, against sugar"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void SugarIcePicture::showCurve(const SugarIceCurve& curve)
{
    m_curve = curve;
    QStringList said;
    for (const Sentence& each : saidBy(curve))
        said << translated(each);
    setAccessibleDescription(said.join(u' '));
    update();
}

QSize SugarIcePicture::sizeHint() const { return {fontMetrics().averageCharWidth() * 90, lineHeight(font()) * 22}; }

QSize SugarIcePicture::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, lineHeight(font()) * 14}; }

bool SugarIcePicture::isCompact() const
{
    return width() < fontMetrics().averageCharWidth() * fullWidth_characters || height() < lineHeight(font()) * fullHeight_lines;
}

/// Under the numbers of the axis: what it counts, the bands, then what the books say.
int SugarIcePicture::rowCount() const
{
    return 1 + int(m_curve.bands.empty() ? 0 : 1) + (isCompact() ? 0 : int(m_curve.ofSources.size()));
}

QRectF SugarIcePicture::plot() const
{
    const int line = lineHeight(font());
    const double left = fontMetrics().horizontalAdvance(percentText(mostIce, 0)) + closeSpace;
    const double top = line + gridStep;
    const double bottom = height() - line - gridStep - rowCount() * line;
    return {QPointF(left, top), QPointF(std::max(left + 1.0, width() - groupSpace - 0.5), std::max(top + 1.0, bottom))};
}

double SugarIcePicture::xOf(MassFraction sugars) const
{
    return plot().left() + std::clamp(sugars.value / mostSugars.value, 0.0, 1.0) * plot().width();
}

double SugarIcePicture::yOf(MassFraction ice) const
{
    return plot().bottom() - std::clamp(ice.value / mostIce.value, 0.0, 1.0) * plot().height();
}

QRectF SugarIcePicture::row(int index) const
{
    const double line = lineHeight(font());
    return {plot().left(), plot().bottom() + line + gridStep + index * line, width() - plot().left(), line};
}

void SugarIcePicture::paintEvent(QPaintEvent* /*event*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    if (m_curve.points.empty()) {
        painter.setPen(colours.quietInk);
        painter.drawText(rect(), Qt::AlignCenter, tr("No water in the mix: nothing freezes"));
        return;
    }
    for (const BandOnCurve& band : m_curve.bands)
        paintBand(painter, band, colours);
    paintAxes(painter, colours);
    paintBrackets(painter, colours);
    paintCurve(painter, colours);
    paintMix(painter, colours);
}

/// Where the band and the ice with which its kind is best served cross.
void SugarIcePicture::paintBand(QPainter& painter, const BandOnCurve& band, const GaugeColours& colours) const
{
    const double left = xOf(band.band->low), right = xOf(band.band->high);
    QColor strip = colours.hairline;
    strip.setAlphaF(0.35F);
    painter.fillRect(QRectF(QPointF(left, plot().top()), QPointF(right, plot().bottom())), strip);
    const QRectF best(QPointF(left, yOf(band.mostBest)), QPointF(right, yOf(band.leastBest)));
    painter.fillRect(best, regionColour(band.best, colours));
    const QString name = translatedName(nameOf(band.best));
    painter.setPen(colours.ink);
    if (!isCompact() && fontMetrics().horizontalAdvance(name) < best.width())
        painter.drawText(best, Qt::AlignHCenter | Qt::AlignTop, name);
}

void SugarIcePicture::paintAxes(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF area = plot();
    const int iceStep_percent = isCompact() ? 40 : 20, sugarStep_percent = isCompact() ? 20 : 10;
    painter.setPen(colours.quietInk);
    for (int ice_percent = iceStep_percent; ice_percent <= qRound(percent(mostIce)); ice_percent += iceStep_percent) {
        const double y = yOf(fromPercent(ice_percent));
        painter.drawText(QRectF(0, y - lineHeight(font()) / 2.0, area.left() - gridStep, lineHeight(font())),
            Qt::AlignRight | Qt::AlignVCenter, percentText(fromPercent(ice_percent), 0));
        painter.save();
        painter.setPen(colours.hairline);
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        painter.restore();
    }
    for (int sugar_percent = 0; sugar_percent <= qRound(percent(mostSugars)); sugar_percent += sugarStep_percent) {
        const QString text = percentText(fromPercent(sugar_percent), 0);
        const double half = 0.5 * fontMetrics().horizontalAdvance(text);
        const double x = std::min(xOf(fromPercent(sugar_percent)), width() - half);
        painter.drawText(QPointF(x - half, area.bottom() + fontMetrics().ascent() + 1.0), text);
    }
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    painter.drawText(QPointF(area.left(), fontMetrics().ascent()), tr("ice at %1").arg(chosenDegrees(m_curve.serveAt)));
    const QString across = m_curve.hasAlcohol                               ? tr("sugars, with alcohol's effect")
                           : m_curve.counts == SugarCount::WithoutMilkSugar ? tr("added sugars")
                                                                            : tr("sugars by mass");
    const QRectF under = row(0).adjusted(-area.left(), 0.0, 0.0, 0.0);
    painter.drawText(
        under, Qt::AlignRight | Qt::AlignVCenter, fontMetrics().elidedText(across, Qt::ElideRight, int(under.width())));
}

void SugarIcePicture::paintBrackets(QPainter& painter, const GaugeColours& colours) const
{
    int under = 1;
    const auto& bands = m_curve.bands;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        QRectF place = row(under);
        if (i > 0)
            place.setLeft(xOf(bands[i - 1].band->high));
        if (i + 1 < bands.size())
            place.setRight(xOf(bands[i + 1].band->low));
        paintBracket(painter, place, {bands[i].band->low, bands[i].band->high}, translatedName(nameOf(bands[i].band->textureClass)),
            colours.curve);
    }
    if (isCompact())
        return;
    under += bands.empty() ? 0 : 1;
    for (const BandOfSource& each : m_curve.ofSources)
        paintBracket(painter, row(under++), {each.low, each.high},
            QString::fromUtf8(each.source.data(), qsizetype(each.source.size())), colours.quietInk);
}

/// The name stands inside where it fits, else beside the bracket, where there is more room.
void SugarIcePicture::paintBracket(
    QPainter& painter, const QRectF& place, Sugars band, const QString& name, const QColor& colour) const
{
    const double left = xOf(band.low), right = xOf(band.high), middle = place.center().y();
    painter.setPen(QPen(colour, 1.5));
    for (const double end : {left, right})
        painter.drawLine(QPointF(end, middle - 4.0), QPointF(end, middle + 4.0));
    const double needed = fontMetrics().horizontalAdvance(name) + 2.0 * gridStep;
    if (needed < right - left) {
        painter.drawText(QRectF(left, place.top(), right - left, place.height()), Qt::AlignCenter, name);
        const double gap = 0.5 * (right - left - needed);
        painter.drawLine(QPointF(left, middle), QPointF(left + gap, middle));
        painter.drawLine(QPointF(right - gap, middle), QPointF(right, middle));
        return;
    }
    painter.drawLine(QPointF(left, middle), QPointF(right, middle));
    const bool isOnTheLeft = left - place.left() > place.right() - right;
    const QRectF room = isOnTheLeft ? QRectF(place.topLeft(), QPointF(left - gridStep, place.bottom()))
                                    : QRectF(QPointF(right + gridStep, place.top()), place.bottomRight());
    painter.drawText(room, (isOnTheLeft ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
        fontMetrics().elidedText(name, Qt::ElideRight, int(room.width())));
}

void SugarIcePicture::paintCurve(QPainter& painter, const GaugeColours& colours) const
{
    QPainterPath path;
    for (const SugarIceCurve::Point& point : m_curve.points) {
        const QPointF at(xOf(point.sugars), yOf(point.ice));
        path.elementCount() == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.curve, besideText(font(), usualLine_px)));
    painter.drawPath(path);
}

void SugarIcePicture::paintMix(QPainter& painter, const GaugeColours& colours) const
{
    const double dot = besideText(font(), usualDot_px);
    const QPointF at(xOf(m_curve.mix.sugars), yOf(m_curve.mix.ice));
    painter.setPen(QPen(colours.ground, 1.5));
    painter.setBrush(colours.ink);
    painter.drawEllipse(at, dot, dot);
    const QString text = isCompact() ? tr("this mix")
                                     : tr("this mix: %1, %2 ice", "its sugars, and its ice")
                                           .arg(percentText(m_curve.mix.sugars), percentText(m_curve.mix.ice, 0));
    const double textWidth = fontMetrics().horizontalAdvance(text);
    const double left = std::min(at.x() + dot + gridStep, width() - textWidth - gridStep);
    const QRectF box(left, std::max(plot().top(), at.y() - dot - lineHeight(font())), textWidth, lineHeight(font()));
    QColor ground = colours.ground;
    ground.setAlphaF(0.8F);
    painter.fillRect(box, ground);
    painter.setPen(colours.ink);
    painter.drawText(box, Qt::AlignVCenter, text);
}

}  // namespace firn::app
