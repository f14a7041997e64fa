#include "gauges/ribbon.h"

#include "gauges/label_row.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QLineF>
#include <QPainter>
#include <algorithm>
#include <numeric>

namespace firn::app {

namespace {

constexpr double usualBarHeight = 20.0;
constexpr double usualSwatchSize = 8.0;
constexpr double leastShareShown = 0.0005;  // 0.1 % when rounded, so that what is drawn is also named with a figure

using Widths = std::array<double, ribbonPartCount>;

bool isShown(MassFraction share) { return share.value >= leastShareShown; }

bool isNothing(const Ribbon& ribbon) { return std::none_of(ribbon.begin(), ribbon.end(), isShown); }

Widths widthsOf(const Ribbon& ribbon, double width)
{
    Widths widths{};
    std::transform(ribbon.begin(), ribbon.end(), widths.begin(),
        [width](MassFraction share) { return isShown(share) ? std::max(1.0, share.value * width) : 0.0; });
    // What the hair-thin parts were given is taken from the widest.
    *std::max_element(widths.begin(), widths.end()) += width - std::accumulate(widths.begin(), widths.end(), 0.0);
    return widths;
}

QString namedShare(const Ribbon& ribbon, std::size_t part)
{
    return nameOf(static_cast<RibbonPart>(part)) + u' ' + percentText(ribbon[part]);
}

const QColor& readableOn(const QColor& colour, const GaugeColours& colours)
{
    const bool isLight = qGray(colour.rgb()) > 120;
    return isLight == (colours.ink.lightness() < colours.ground.lightness()) ? colours.ink : colours.ground;
}

}  // namespace

void paintRibbon(QPainter& painter, const QRectF& place, const Ribbon& ribbon, const QPalette& palette)
{
    const GaugeColours colours = gaugeColours(palette);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    if (!isNothing(ribbon)) {
        const Widths widths = widthsOf(ribbon, place.width());
        double left = place.left();
        for (std::size_t part = 0; part < widths.size(); ++part) {
            const double right = left + widths[part];
            const QRectF piece(QPointF(qRound(left), place.top()), QPointF(qRound(right), place.bottom()));
            painter.fillRect(piece, colours.parts[part]);
            left = right;
        }
    }
    // Fat is nearly as light as the ground, and nothing at all must still be seen as an empty ribbon.
    painter.setPen(colours.hairline);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place.toRect().adjusted(0, 0, -1, -1));
    painter.restore();
}

QString ribbonText(const Ribbon& ribbon)
{
    QStringList parts;
    for (std::size_t part = 0; part < ribbon.size(); ++part)
        if (isShown(ribbon[part]))
            parts << namedShare(ribbon, part);
    return parts.join(QStringLiteral(", "));
}

RibbonBar::RibbonBar(QWidget* parent)
    : Gauge(tr("What 100 g of the mix hold"), parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    show(Ribbon{});
}

QSize RibbonBar::sizeHint() const
{
    return {fontMetrics().averageCharWidth() * 80, qRound(bar().height()) + gridStep + lineHeight(font())};
}

QSize RibbonBar::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 30, sizeHint().height()}; }

void RibbonBar::show(const Ribbon& ribbon)
{
    m_ribbon = ribbon;
    const QString text = ribbonText(ribbon);
    setValueText(text.isEmpty() ? tr("Nothing in the mix yet") : text);
    setToolTip(text);
    update();
}

QRectF RibbonBar::bar() const { return QRectF(0, 0, width(), qRound(besideText(font(), usualBarHeight))); }

void RibbonBar::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    paintRibbon(painter, bar(), m_ribbon, palette());
    if (isNothing(m_ribbon)) {
        paintHint(painter, bar().toRect().adjusted(closeSpace, 2, 0, 0), valueText(), colours);
        return;
    }
    const Widths widths = widthsOf(m_ribbon, bar().width());
    std::vector<std::size_t> below;
    double left = bar().left();
    for (std::size_t part = 0; part < widths.size(); ++part) {
        const QRectF piece(left, bar().top(), widths[part], bar().height());
        const QString name = namedShare(m_ribbon, part);
        if (isShown(m_ribbon[part]) && fontMetrics().horizontalAdvance(name) + closeSpace > piece.width()) {
            below.push_back(part);
        } else if (isShown(m_ribbon[part])) {
            painter.setPen(readableOn(colours.parts[part], colours));
            painter.drawText(piece, Qt::AlignCenter, name);
        }
        left += widths[part];
    }
    paintNamesBelow(painter, below, colours);
}

void RibbonBar::paintNamesBelow(QPainter& painter, const std::vector<std::size_t>& parts, const GaugeColours& colours) const
{
    const Widths widths = widthsOf(m_ribbon, bar().width());
    const double swatchSize = besideText(font(), usualSwatchSize);
    std::vector<LabelSpan> spans;
    for (const std::size_t part : parts) {
        const auto upTo = widths.begin() + static_cast<std::ptrdiff_t>(part);
        const double middle = std::accumulate(widths.begin(), upTo, bar().left()) + 0.5 * *upTo;
        const double width = swatchSize + gridStep + fontMetrics().horizontalAdvance(namedShare(m_ribbon, part));
        spans.push_back({middle - 0.5 * width, width});
    }
    spreadApart(spans, bar().left(), bar().right(), closeSpace);
    const double top = bar().bottom() + gridStep;
    for (std::size_t i = 0; i < spans.size() && spans[i].right() <= bar().right() + 1.0; ++i) {
        const QRectF row(spans[i].left, top, spans[i].width, lineHeight(font()));
        const QRectF swatch(row.left(), row.center().y() - 0.5 * swatchSize, swatchSize, swatchSize);
        painter.fillRect(swatch, colours.parts[parts[i]]);
        painter.setPen(colours.hairline);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(swatch);
        painter.setPen(colours.ink);
        painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, namedShare(m_ribbon, parts[i]));
    }
}

}  // namespace firn::app
