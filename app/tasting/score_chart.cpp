#include "tasting/score_chart.h"

#include "gauges/type_and_space.h"
#include "tasting/tasting_wording.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr double radius_px = 5.0;
constexpr double meanHeight_px = 9.0;  // to each side of the line

/// Open tastings are round, blind ones square, so that no colour is needed to tell them apart.
void paintMark(QPainter& painter, const QPointF& at, double radius, bool isBlind)
{
    if (isBlind)
        painter.drawRect(QRectF(at - QPointF(radius, radius), at + QPointF(radius, radius)));
    else
        painter.drawEllipse(at, radius, radius);
}

}  // namespace

ScoreChart::ScoreChart(QWidget* parent)
    : Gauge(tr("Scores across versions"), parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setSizePolicy(policy);
}

void ScoreChart::showNothing(const QString& hint)
{
    m_scores = {};
    m_names.clear();
    m_hint = hint;
    setValueText(hint);
    placeFigures();
    updateGeometry();
    update();
}

void ScoreChart::show(const TastingScale& scale, const ScoresOnScale& scores, const QStringList& names)
{
    m_scale = scale;
    m_scores = scores;
    m_names = names;
    m_hint.clear();
    QStringList spoken;
    for (std::size_t i = 0; i < scores.versions.size(); ++i)
        spoken.append(tr("%1: %2").arg(names.value(qsizetype(i)), meanText(scores.versions[i])));
    setValueText(spoken.join(u'\n'));
    placeFigures();
    updateGeometry();
    update();
}

/// Over the mean of each version.
void ScoreChart::placeFigures()
{
    std::vector<FigurePlace> places;
    for (std::size_t i = 0; i < m_scores.versions.size(); ++i) {
        const QString mean = meanText(m_scores.versions[i]);
        QRect place = wordsOf(i).toAlignedRect();
        place.setLeft(place.right() - fontMetrics().horizontalAdvance(mean));
        places.push_back({QString::fromStdString(figureOfMean(i)), tr("%1: %2").arg(m_names.value(qsizetype(i)), mean), place});
    }
    setFigures(places);
}

void ScoreChart::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    placeFigures();
}

void ScoreChart::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        placeFigures();
}

/// For each version its name with the mean on one line and the marks on the next, then the ends of the scale.
QSize ScoreChart::sizeHint() const
{
    const int line = lineHeight(font());
    const int versions = std::max(1, int(m_scores.versions.size()));
    return {fontMetrics().averageCharWidth() * 44, versions * 3 * line + 2 * line + closeSpace};
}

QSize ScoreChart::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 30, sizeHint().height()}; }

QRectF ScoreChart::lineArea() const
{
    const double side = 2.0 * radius_px;
    return QRectF(rect()).adjusted(side, 0.0, -side, 0.0);
}

/// The line in which a version's name and mean are written.
QRectF ScoreChart::wordsOf(std::size_t version) const
{
    const QRectF area = lineArea();
    const double line = lineHeight(font());
    return {area.left(), double(version) * 3.0 * line, area.width(), line};
}

QPointF ScoreChart::placeOf(std::size_t version, double value) const
{
    const QRectF area = lineArea();
    const double line = lineHeight(font());
    const double share = (value - m_scale.from) / (m_scale.to - m_scale.from);
    // What a file has beyond the ends is drawn at the end; its number is said.
    return {area.left() + std::clamp(share, 0.0, 1.0) * area.width(), double(version) * 3.0 * line + 1.8 * line};
}

void ScoreChart::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (m_scores.versions.empty()) {
        paintHint(painter, rect(), m_hint, colours);
        return;
    }
    for (std::size_t i = 0; i < m_scores.versions.size(); ++i)
        paintVersion(painter, colours, i);
    paintEnds(painter, colours);
}

void ScoreChart::paintVersion(QPainter& painter, const GaugeColours& colours, std::size_t version) const
{
    const VersionScores& scores = m_scores.versions[version];
    const QPointF from = placeOf(version, m_scale.from), to = placeOf(version, m_scale.to);
    const QString mean = meanText(scores);
    const QRectF words = wordsOf(version);
    painter.setPen(colours.ink);
    painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter, mean);
    const double room = words.width() - fontMetrics().horizontalAdvance(mean) - closeSpace;
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
        fontMetrics().elidedText(m_names.value(qsizetype(version)), Qt::ElideRight, qRound(room)));
    painter.setPen(colours.hairline);
    painter.drawLine(from, to);
    for (const double end : {m_scale.from, m_scale.to})
        painter.drawLine(placeOf(version, end) - QPointF(0, gridStep), placeOf(version, end) + QPointF(0, gridStep));
    if (scores.marks.size() > 1) {
        const QPointF middle = placeOf(version, scores.mean);
        painter.setPen(QPen(colours.ink, 3));
        painter.drawLine(middle - QPointF(0, meanHeight_px), middle + QPointF(0, meanHeight_px));
    }
    painter.setPen(QPen(colours.curve, 2));
    QColor inside = colours.curve;
    inside.setAlphaF(0.35F);  // marks that cover each other grow darker
    painter.setBrush(inside);
    for (const ScoreMark& mark : scores.marks)
        paintMark(painter, placeOf(version, mark.value), radius_px, mark.isBlind);
    painter.setBrush(Qt::NoBrush);
}

void ScoreChart::paintEnds(QPainter& painter, const GaugeColours& colours) const
{
    const double line = lineHeight(font());
    const QRectF area = lineArea();
    const QRectF words(area.left(), double(m_scores.versions.size()) * 3.0 * line, area.width(), line);
    const double half = words.width() / 2.0 - gridStep;
    const auto end = [&](double value, const std::string& meaning) {
        const QString text = scoreText(value) + u' ' + QString::fromStdString(meaning);
        return fontMetrics().elidedText(text.trimmed(), Qt::ElideRight, qRound(half));
    };
    painter.setPen(colours.quietInk);
    painter.drawText(words, Qt::AlignLeft, end(m_scale.from, m_scale.low));
    painter.drawText(words, Qt::AlignRight, end(m_scale.to, m_scale.high));
    const QString legend = tr("● tasted openly   ■ tasted blind   ┃ mean");
    painter.drawText(words.translated(0.0, line + gridStep), Qt::AlignLeft,
        fontMetrics().elidedText(legend, Qt::ElideRight, qRound(words.width())));
}

}  // namespace firn::app
