#include "catalogue/composition_table.h"

#include "catalogue/ingredient_wording.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr double usualSwatchSize = 8.0;
constexpr int barHeight = 6;
constexpr int shortestBars = 60;
constexpr double least_g = 0.1;  // a figure below it needs a second decimal

}  // namespace

CompositionTable::CompositionTable(QWidget* parent)
    : Gauge(tr("Grams in 100 g"), parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void CompositionTable::show(const Composition& composition)
{
    m_lines = compositionLines(composition);
    QStringList texts;
    for (const CompositionLine& line : m_lines)
        texts << tr("%1 %2", "constituent and its grams").arg(translatedName(line.label), partOf100g(line.grams, decimals()));
    setValueText(texts.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

int CompositionTable::decimals() const
{
    return std::ranges::any_of(m_lines, [](const CompositionLine& line) { return line.grams.value < least_g; }) ? 2 : 1;
}

int CompositionTable::rowHeight() const { return lineHeight(font()) + gridStep / 2; }

int CompositionTable::nameWidth() const
{
    int widest = fontMetrics().averageCharWidth() * 20;
    for (const CompositionLine& line : m_lines)
        widest = std::max(widest, fontMetrics().horizontalAdvance(translatedName(line.label)) + (line.isPart ? groupSpace : 0));
    return widest;
}

int CompositionTable::numberWidth() const { return fontMetrics().horizontalAdvance(partOf100g(Grams{100.0}, decimals())); }

QSize CompositionTable::sizeHint() const
{
    const int width = groupSpace + nameWidth() + groupSpace + numberWidth() + groupSpace + shortestBars;
    return {width, std::max<int>(1, int(m_lines.size())) * rowHeight()};
}

void CompositionTable::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    const int swatchSize = qRound(besideText(font(), usualSwatchSize));
    const int nameLeft = swatchSize + closeSpace;
    const int numberLeft = nameLeft + nameWidth() + groupSpace;
    const int barLeft = numberLeft + numberWidth() + groupSpace;
    QRect row(0, 0, width(), rowHeight());
    for (const CompositionLine& line : m_lines) {
        const int indent = line.isPart ? groupSpace : 0;
        const int middle = row.center().y();
        painter.setPen(line.isPart ? colours.quietInk : colours.ink);
        painter.drawText(QRect(nameLeft + indent, row.top(), nameWidth() - indent, row.height()), Qt::AlignLeft | Qt::AlignVCenter,
            translatedName(line.label));
        painter.drawText(QRect(numberLeft, row.top(), numberWidth(), row.height()), Qt::AlignRight | Qt::AlignVCenter,
            partOf100g(line.grams, decimals()));
        if (line.part) {
            const QColor& colour = colours.parts.at(static_cast<std::size_t>(*line.part));
            painter.setPen(colours.hairline);
            painter.setBrush(colour);
            if (!line.isPart)
                painter.drawRect(QRect(0, middle - swatchSize / 2, swatchSize, swatchSize));
            const double length = line.grams.value / 100.0 * (width() - barLeft - 1);  // grams of 100 g
            painter.drawRect(QRectF(barLeft, middle - barHeight / 2, std::max(1.0, length), barHeight));
        }
        row.translate(0, row.height());
    }
}

void CompositionTable::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateGeometry();
}

}  // namespace firn::app
