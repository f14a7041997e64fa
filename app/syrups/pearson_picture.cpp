#include "syrups/pearson_picture.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QLineF>
#include <QPainter>
#include <cmath>

namespace firn::app {

namespace {

constexpr double boxWidth_lines = 8.0;
constexpr double boxHeight_lines = 4.0;

QString partsText(double parts)
{
    const bool isWhole = std::abs(parts - std::round(parts)) < 0.05;
    return PearsonPicture::tr("%1 parts").arg(figure(parts, isWhole ? 0 : 1));
}

}  // namespace

PearsonPicture::PearsonPicture(QWidget* parent)
    : Gauge(tr("Pearson square"), parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    show({});
}

void PearsonPicture::show(const std::optional<DrawnSquare>& square)
{
    m_square = square;
    setValueText(square ? tr("%1 and %2 make %3: %4 of the first to %5 of the second")
                              .arg(percentText(square->first), percentText(square->second), percentText(square->wanted),
                                  partsText(square->blend.partsOfFirst), partsText(square->blend.partsOfSecond))
                        : tr("The square comes with three strengths"));
    update();
}

QSize PearsonPicture::sizeHint() const
{
    const int line = lineHeight(titleFont(font()));
    return {qRound((boxWidth_lines + 12.0) * line), qRound((boxHeight_lines + 1.0) * line)};
}

/// Its corners are where the four outer numbers stand.
QRectF PearsonPicture::box() const
{
    const QFontMetrics metrics(titleFont(font()));
    const double left = metrics.horizontalAdvance(percentText({1.0})) + closeSpace;
    return {left, 0.5 * metrics.height(), boxWidth_lines * metrics.height(), boxHeight_lines * metrics.height()};
}

void PearsonPicture::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    const QRectF square = box();
    painter.setPen(QPen(colours.hairline, 1.0));
    painter.drawRect(square);
    if (!m_square) {
        painter.setPen(colours.quietInk);
        painter.drawText(square.adjusted(closeSpace, 0, -closeSpace, 0), Qt::AlignCenter | Qt::TextWordWrap, valueText());
        return;
    }
    const QFont middleFont = figureFont(font());
    const QString wanted = percentText(m_square->wanted);
    const double gap = 0.5 * QFontMetrics(middleFont).horizontalAdvance(wanted) + gridStep;
    painter.setPen(QPen(colours.curve, 1.5));
    paintDiagonal(painter, square.topLeft(), square.bottomRight(), gap);
    paintDiagonal(painter, square.bottomLeft(), square.topRight(), gap);
    painter.setFont(middleFont);
    painter.setPen(colours.ink);
    painter.drawText(square, Qt::AlignCenter, wanted);
    paintRow(painter, colours, square.top(), m_square->first, m_square->blend.partsOfFirst, m_square->blend.first);
    paintRow(painter, colours, square.bottom(), m_square->second, m_square->blend.partsOfSecond, m_square->blend.second);
}

/// From corner to corner with an arrow at its end, leaving out the number in the middle.
void PearsonPicture::paintDiagonal(QPainter& painter, QPointF from, QPointF to, double gap) const
{
    const QPointF middle = 0.5 * (from + to);
    const QLineF whole(from, to);
    const QPointF step = gap / whole.length() * (to - from);
    painter.drawLine(QLineF(from, middle - step));
    painter.drawLine(QLineF(middle + step, to));
    for (const double turn_deg : {155.0, -155.0}) {
        QLineF barb = QLineF::fromPolar(2.0 * gridStep, whole.angle() + turn_deg);
        barb.translate(to);
        painter.drawLine(barb);
    }
}

void PearsonPicture::paintRow(
    QPainter& painter, const GaugeColours& colours, double middle, MassFraction strength, double parts, Grams mass) const
{
    const QRectF square = box();
    const QFont numbers = titleFont(font());
    const double height = lineHeight(numbers);
    const double top = middle - 0.5 * height;
    painter.setFont(numbers);
    painter.setPen(colours.ink);
    painter.drawText(
        QRectF(0.0, top, square.left() - closeSpace, height), Qt::AlignRight | Qt::AlignVCenter, percentText(strength));
    const QString part = partsText(parts);
    const double right = square.right() + closeSpace;
    painter.drawText(QRectF(right, top, width() - right, height), Qt::AlignLeft | Qt::AlignVCenter, part);
    const double massLeft = right + QFontMetrics(numbers).horizontalAdvance(partsText(99.9)) + groupSpace;
    painter.setPen(colours.quietInk);
    painter.drawText(QRectF(massLeft, top, width() - massLeft, height), Qt::AlignLeft | Qt::AlignVCenter, gramsText(mass));
}

}  // namespace firn::app
