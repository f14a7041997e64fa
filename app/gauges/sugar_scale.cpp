#include "gauges/sugar_scale.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "texture/trade_bands.h"

#include <QEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace firn::app {

namespace {

constexpr double scaleEnd = 0.5;  // mass fraction
constexpr double usualScaleHeight = 8.0;
constexpr double usualNeedleHalfWidth = 6.0;
constexpr std::size_t usualRows = 3;

QPainterPath pointingDown(QPointF tip, double halfWidth)
{
    QPainterPath path(tip);
    path.lineTo(tip + QPointF(halfWidth, -1.5 * halfWidth));
    path.lineTo(tip + QPointF(-halfWidth, -1.5 * halfWidth));
    path.closeSubpath();
    return path;
}

QString measuredText(const MixEstimate& measured, MassFraction difference)
{
    const QString apart = figure(std::abs(percent(difference)), 1), sugars = percentText(measured.sugar, measured.sugar_sd);
    if (apart == figure(0.0, 1))
        return SugarScale::tr("measured %1, as the recipe has it").arg(sugars);
    return difference.value < 0.0 ? SugarScale::tr("measured %1, %2 less than the recipe").arg(sugars, apart)
                                  : SugarScale::tr("measured %1, %2 more than the recipe").arg(sugars, apart);
}

/// Where the bands are from, a line for each.
QString sourcesOfBands()
{
    QStringList lines;
    for (const TradeBand& band : tradeBands())
        lines << SugarScale::tr("Usual for %1: %2 to %3 (%4)", "a kind of dessert, its band of sugar, the source")
                     .arg(translatedName(nameOf(band.textureClass)), QString::number(qRound(percent(band.low))),
                         percentText(band.high, 0), QString::fromUtf8(band.source.data(), qsizetype(band.source.size())))
                     .toHtmlEscaped();
    return QStringLiteral("<p>%1</p>").arg(lines.join(QStringLiteral("<br>")));
}

}  // namespace

SugarScale::SugarScale(QWidget* parent)
    : Gauge(tr("Sugar scale"), parent)
{
    setToolTip(sourcesOfBands());
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    show(Analysis{});
}

QSize SugarScale::sizeHint() const
{
    const double rows = static_cast<double>(std::max(usualRows, m_rowCount));
    return {fontMetrics().averageCharWidth() * 60, qRound(rowUnderScale(0).top() + rows * rowUnderScale(0).height())};
}

QSize SugarScale::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, sizeHint().height()}; }

QRectF SugarScale::scale() const
{
    const double top = figureHeight() + gridStep + lineHeight(font());
    const double endMargin = 0.5 * fontMetrics().horizontalAdvance(percentText({scaleEnd}, 0)) + 1.0;
    const double left = needleHalfWidth() + 1.0;
    return {left, top, std::max(1.0, width() - left - endMargin), qRound(besideText(font(), usualScaleHeight)) + 0.0};
}

/// What was measured has a line of its own under the figure.
int SugarScale::figureHeight() const { return lineHeight(figureFont(font())) + (m_measured ? lineHeight(font()) : 0); }

double SugarScale::needleHalfWidth() const { return besideText(font(), usualNeedleHalfWidth); }

double SugarScale::xOf(double share) const { return scale().left() + std::clamp(share / scaleEnd, 0.0, 1.0) * scale().width(); }

QPointF SugarScale::needleTip() const { return {xOf(m_sugars.value), scale().top()}; }

QRectF SugarScale::rowUnderScale(int row) const
{
    const double height = lineHeight(font()) - 1.0;
    return {scale().left(), scale().bottom() + gridStep + row * height, width() - scale().left(), height};
}

void SugarScale::show(const Analysis& analysis)
{
    m_isEmpty = analysis.mix.isEmpty();
    m_textureClass = analysis.texture.textureClass;
    m_sugars = analysis.shares.sugars;
    showCounted(analysis.texture);
    m_uncertainty = analysis.sugarsUncertainty;
    m_refractometer_brix = analysis.instruments ? analysis.instruments->brix.value : std::nullopt;
    if (m_measured.has_value() != analysis.measured.mix.has_value())
        updateGeometry();
    m_measured = analysis.measured.mix;
    m_isMarked = false;
    m_measuredText = m_measured ? measuredText(*m_measured, analysis.measured.sugarDifference) : QString();
    if (m_isEmpty)
        setValueText(tr("Type an ingredient, or paste a recipe"));
    else if (m_refractometer_brix)
        setValueText(tr("%1 sugars by mass; a refractometer reads %2 at %3")
                         .arg(percentText(m_sugars, m_uncertainty), brixText(*m_refractometer_brix),
                             chosenDegrees(analysis.readings->temperature)));
    else
        setValueText(tr("%1 sugars by mass").arg(percentText(m_sugars, m_uncertainty)));
    if (!m_isEmpty && m_measured)
        setValueText(tr("%1; %2").arg(valueText(), m_measuredText));
    placeFigures();
    update();
}

/// A band may count less than all sugars, or the alcohol with them: then the mix has a second place on the scale, and its words say which.
void SugarScale::showCounted(const Texture& texture)
{
    const TradeBand* band = tradeBandOf(texture.textureClass);
    const CountedSugars counted =
        band && !texture.mix.isEmpty() ? countedSugars(texture.mix, band->counts) : CountedSugars{m_sugars, {}, {}};
    m_counted = counted.total();
    m_countedWords = counted.asSoftAsSugar.value > 0.0 ? tr("%1 with its alcohol").arg(percentText(m_counted))
                     : counted.milkSugar.value > 0.0   ? tr("%1 added").arg(percentText(m_counted))
                                                       : QString();
    placeBrackets();
}

void SugarScale::mark(MassFraction sugars, const QString& words)
{
    m_measured.emplace();
    m_measured->sugar = sugars;
    m_measuredText = words;
    m_isMarked = true;
    setValueText(tr("%1; %2").arg(valueText(), words));
    placeFigures();
    updateGeometry();
    update();
}

/// The sugars stand at the left, the reading at the right, and under the sugars what was measured.
void SugarScale::placeFigures()
{
    std::vector<FigurePlace> figures;
    const int line = lineHeight(figureFont(font()));
    if (!m_isEmpty)
        figures.push_back({QStringLiteral("percent.sugars"), tr("sugars: %1").arg(percentText(m_sugars, m_uncertainty)),
            {0, 0, width() / 2, line}});
    if (!m_isEmpty && m_refractometer_brix)
        figures.push_back({QStringLiteral("instruments.refractometer_brix"),
            tr("refractometer: %1").arg(brixText(*m_refractometer_brix)), {width() / 2, 0, width() - width() / 2, line}});
    if (!m_isEmpty && m_measured && !m_isMarked)
        figures.push_back({QStringLiteral("measured.sugars_percent"), m_measuredText, {0, line, width() / 2, lineHeight(font())}});
    setFigures(figures);
}

void SugarScale::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    placeBrackets();
    placeFigures();
}

void SugarScale::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) {
        placeBrackets();
        placeFigures();
        updateGeometry();
    }
    Gauge::changeEvent(event);
}

/// Each band goes into the first row in which neither its bracket nor its name touches another.
void SugarScale::placeBrackets()
{
    m_brackets.clear();
    std::vector<double> takenTo;  // pixels, by row
    std::vector<TradeBand> bands = tradeBands();
    std::stable_sort(bands.begin(), bands.end(), [](const TradeBand& a, const TradeBand& b) { return a.low < b.low; });
    for (const TradeBand& band : bands) {
        Bracket bracket{band.textureClass, translatedName(nameOf(band.textureClass)), band.low.value, band.high.value};
        if (band.textureClass == m_textureClass && !m_countedWords.isEmpty())
            bracket.name = tr("%1: %2", "a kind of dessert, and the sugars that its band counts").arg(bracket.name, m_countedWords);
        const double left = xOf(bracket.low), right = xOf(bracket.high);
        const double nameWidth = fontMetrics().horizontalAdvance(bracket.name);
        const bool nameFitsInside = nameWidth + 2 * gridStep < right - left;
        const bool nameFitsBehind = right + gridStep + nameWidth <= width();
        bracket.nameLeft = nameFitsInside   ? 0.5 * (left + right - nameWidth)
                           : nameFitsBehind ? right + gridStep
                                            : std::max(0.0, left - gridStep - nameWidth);
        const double begin = std::min(left, bracket.nameLeft);
        const auto row = std::find_if(takenTo.begin(), takenTo.end(), [begin](double to) { return to + gridStep < begin; });
        bracket.row = static_cast<int>(row - takenTo.begin());
        if (row == takenTo.end())
            takenTo.push_back(0.0);
        takenTo[static_cast<std::size_t>(bracket.row)] = std::max(right, bracket.nameLeft + nameWidth);
        m_brackets.push_back(std::move(bracket));
    }
    if (m_rowCount != takenTo.size()) {
        m_rowCount = takenTo.size();
        updateGeometry();
    }
}

void SugarScale::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    paintFigures(painter, colours);
    paintScale(painter, colours);
    for (const Bracket& bracket : m_brackets)
        paintBracket(painter, bracket, colours);
    if (!m_isEmpty)
        paintNeedle(painter, colours);
    if (!m_isEmpty && m_measured)
        paintMeasured(painter, colours);
}

void SugarScale::paintFigures(QPainter& painter, const GaugeColours& colours) const
{
    const QFont large = figureFont(font());
    const int baseline = QFontMetrics(large).ascent();
    if (m_isEmpty) {
        painter.setPen(colours.quietInk);
        painter.drawText(0, baseline, valueText());
        return;
    }
    const bool areSugarsBeyond = m_sugars.value > scaleEnd;
    const QString number = percentText(m_sugars, m_uncertainty),
                  what = areSugarsBeyond ? tr("sugars, beyond this scale") : tr("sugars");
    painter.setFont(large);
    painter.drawText(0, baseline, number);
    painter.setFont(font());
    painter.setPen(colours.quietInk);
    int right = width();
    if (m_refractometer_brix) {
        const bool isOnlyReadingBeyond = *m_refractometer_brix > 100.0 * scaleEnd && !areSugarsBeyond;
        const QString brix = brixText(*m_refractometer_brix);
        const QString reading =
            isOnlyReadingBeyond ? tr("refractometer %1, beyond this scale").arg(brix) : tr("refractometer %1").arg(brix);
        right -= fontMetrics().horizontalAdvance(reading);
        painter.drawText(right, baseline, reading);
        right -= closeSpace;
        painter.save();
        painter.setPen(QPen(colours.curve, 1.5));
        painter.setBrush(colours.ground);
        painter.drawPath(pointingDown(QPointF(right - needleHalfWidth(), baseline - 1.0), needleHalfWidth()));
        painter.restore();
        right -= qRound(2.0 * needleHalfWidth());
    }
    const int left = QFontMetrics(large).horizontalAdvance(number) + closeSpace;
    if (left + fontMetrics().horizontalAdvance(what) < right)
        painter.drawText(left, baseline, what);
}

void SugarScale::paintScale(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF whole = scale();
    painter.fillRect(whole, colours.hairline);
    if (!m_isEmpty)
        painter.fillRect(QRectF(whole.topLeft(), QPointF(xOf(m_sugars.value), whole.bottom())),
            colours.parts[static_cast<std::size_t>(RibbonPart::Sugars)]);
    for (int mark_percent = 0; mark_percent <= qRound(100 * scaleEnd); mark_percent += 5) {
        const double x = qRound(xOf(mark_percent / 100.0)) + 0.5;
        const bool isNumbered = mark_percent % 10 == 0;
        painter.setPen(isNumbered ? colours.quietInk : colours.ground);
        painter.drawLine(QPointF(x, whole.top() + (isNumbered ? -3.0 : 1.0)), QPointF(x, whole.bottom() - 1.0));
        if (!isNumbered)
            continue;
        const QString number = mark_percent == qRound(100 * scaleEnd) ? percentText({scaleEnd}, 0) : figure(mark_percent, 0);
        const double halfWidth = 0.5 * fontMetrics().horizontalAdvance(number);
        const bool isUnderNeedle = !m_isEmpty && std::abs(x - needleTip().x()) < halfWidth + needleHalfWidth() + 2.0;
        const double readingX = m_refractometer_brix && !m_isEmpty ? xOf(*m_refractometer_brix / 100.0) : -100.0;
        if (!isUnderNeedle && std::abs(x - readingX) > halfWidth + needleHalfWidth() + 2.0)
            painter.drawText(QPointF(std::max(0.0, x - halfWidth), whole.top() - fontMetrics().descent() - 2.0), number);
    }
}

void SugarScale::paintNeedle(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF whole = scale();
    const double low = xOf(m_sugars.value - m_uncertainty.value), high = xOf(m_sugars.value + m_uncertainty.value);
    if (high - low > 1.0) {
        QColor band = colours.ink;
        band.setAlphaF(0.35F);
        painter.fillRect(QRectF(low, whole.top() + 2.0, high - low, whole.height() - 4.0), band);
    }
    if (m_refractometer_brix) {
        const double x = xOf(*m_refractometer_brix / 100.0);
        painter.setPen(QPen(colours.curve, 1.5));
        painter.setBrush(colours.ground);
        painter.drawLine(QPointF(x, whole.top()), QPointF(x, whole.bottom()));
        painter.drawPath(pointingDown(QPointF(x, whole.top() - 1.0), needleHalfWidth()));
    }
    const QPointF tip = needleTip();
    painter.setPen(QPen(colours.ink, 2.0));
    painter.drawLine(tip, QPointF(tip.x(), whole.bottom() + 1.0));
    painter.setPen(QPen(colours.ground, 1.0));
    painter.setBrush(colours.ink);
    painter.drawPath(pointingDown(tip, needleHalfWidth()));
}

/// A dot on the scale with its uncertainty, and the same dot before the words.
void SugarScale::paintMeasured(QPainter& painter, const GaugeColours& colours) const
{
    const QRectF whole = scale();
    const double radius = 0.5 * whole.height(), middle = whole.center().y();
    const double low = xOf((m_measured->sugar - m_measured->sugar_sd).value),
                 high = xOf((m_measured->sugar + m_measured->sugar_sd).value);
    const double baseline = lineHeight(figureFont(font())) + fontMetrics().ascent();
    painter.setPen(QPen(colours.ink, 2.0));
    painter.drawLine(QPointF(low, middle), QPointF(high, middle));
    for (const double end : {low, high})
        painter.drawLine(QPointF(end, middle - 0.5 * radius), QPointF(end, middle + 0.5 * radius));
    painter.setPen(QPen(colours.ink, 1.5));
    painter.setBrush(colours.ground);
    painter.drawEllipse(QPointF(xOf(m_measured->sugar.value), middle), radius, radius);
    painter.drawEllipse(QPointF(radius + 1.0, baseline - 0.35 * fontMetrics().ascent()), radius, radius);
    painter.drawText(QPointF(2.0 * radius + closeSpace, baseline), m_measuredText);
}

/// The band of the mix's own kind stands out: heavy where the mix lies in it, an outline where it lies outside.
void SugarScale::paintBracket(QPainter& painter, const Bracket& bracket, const GaugeColours& colours) const
{
    const QRectF row = rowUnderScale(bracket.row);
    const double left = xOf(bracket.low), right = xOf(bracket.high);
    const double middle = qRound(row.center().y()) + 0.5;
    const double nameRight = bracket.nameLeft + fontMetrics().horizontalAdvance(bracket.name);
    const bool isOwnKind = !m_isEmpty && bracket.textureClass == m_textureClass;
    const bool holdsMix = bracket.low <= m_counted.value && m_counted.value <= bracket.high;
    const QColor& colour = isOwnKind ? colours.curve : colours.quietInk;
    painter.setPen(QPen(colour, isOwnKind && holdsMix ? 2.0 : 1.0));
    if (isOwnKind && !holdsMix) {
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(QPointF(left, row.top() + 1.5), QPointF(right, row.bottom() - 0.5)));
    } else {
        painter.drawLine(QPointF(left, middle - 4.0), QPointF(left, middle + 3.0));
        painter.drawLine(QPointF(right, middle - 4.0), QPointF(right, middle + 3.0));
        const bool isNameInside = left < bracket.nameLeft && nameRight < right;
        if (isNameInside) {
            painter.drawLine(QPointF(left, middle), QPointF(bracket.nameLeft - 3.0, middle));
            painter.drawLine(QPointF(nameRight + 3.0, middle), QPointF(right, middle));
        } else {
            painter.drawLine(QPointF(left, middle), QPointF(right, middle));
        }
    }
    if (isOwnKind && !m_countedWords.isEmpty()) {
        painter.setPen(QPen(colours.ink, 2.0));
        painter.drawLine(QPointF(xOf(m_counted.value), row.top() + 1.0), QPointF(xOf(m_counted.value), row.bottom() - 1.0));
    }
    painter.setPen(colour);
    painter.drawText(
        QRectF(bracket.nameLeft, row.top(), nameRight - bracket.nameLeft + 1.0, row.height()), Qt::AlignVCenter, bracket.name);
}

}  // namespace firn::app
