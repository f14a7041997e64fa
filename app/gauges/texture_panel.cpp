#include "gauges/texture_panel.h"

#include "gauges/marked_lines.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
#include <QPainter>

namespace firn::app {

namespace {

/// The first reason, then what is wrong, then the other reasons: a cook reads from the top and may stop anywhere.
std::vector<MarkedLine> linesOf(const Texture& texture)
{
    std::vector<MarkedLine> lines;
    for (const Sentence& reason : texture.reasons)
        lines.push_back({Mark::None, translated(reason), !lines.empty()});
    std::vector<MarkedLine> faults;
    for (const Sentence& fault : texture.faults)
        faults.push_back({Mark::Warning, translated(fault), false});
    lines.insert(lines.begin() + (lines.empty() ? 0 : 1), faults.begin(), faults.end());
    return lines;
}

}  // namespace

TexturePanel::TexturePanel(QWidget* parent)
    : Gauge(tr("Texture"), parent)
    , m_lines(new MarkedLines(this))
{
    m_lines->setAccessibleName(tr("Why this texture"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    show(Analysis{});
}

QSize TexturePanel::sizeHint() const
{
    return {fontMetrics().averageCharWidth() * 60, lineHeight(figureFont(font())) + gridStep + 5 * lineHeight(font())};
}

QSize TexturePanel::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 50, lineHeight(figureFont(font())) + gridStep + 4 * lineHeight(font())};
}

void TexturePanel::show(const Analysis& analysis)
{
    const Texture& texture = analysis.texture;
    const bool isEmpty = analysis.mix.isEmpty();
    m_kind = isEmpty ? QString() : capitalised(translatedName(nameOf(texture.textureClass)));
    m_window = !isEmpty && texture.servingWindow ? tr("best served %1").arg(degreesRange(*texture.servingWindow)) : QString();
    m_lines->setLines(isEmpty ? std::vector<MarkedLine>{} : linesOf(texture));
    if (isEmpty)
        setValueText(tr("The texture is told as soon as there is a mix"));
    else
        setValueText(QStringList{m_kind, m_window, m_lines->spokenText()}.join(u'\n'));
    layOut();
    update();
}

bool TexturePanel::isWindowBesideKind() const
{
    const int kindWidth = QFontMetrics(figureFont(font())).horizontalAdvance(m_kind);
    return kindWidth + groupSpace + fontMetrics().horizontalAdvance(m_window) <= width();
}

int TexturePanel::headHeight() const
{
    return lineHeight(figureFont(font())) + (isWindowBesideKind() ? 0 : lineHeight(font())) + gridStep;
}

void TexturePanel::layOut()
{
    m_lines->setVisible(!m_kind.isEmpty());
    m_lines->setGeometry(0, headHeight(), width(), std::max(0, height() - headHeight()));
}

void TexturePanel::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    layOut();
}

void TexturePanel::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        layOut();
    }
}

void TexturePanel::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (m_kind.isEmpty()) {
        paintHint(painter, rect(), valueText(), colours);
        return;
    }
    const QFont large = figureFont(font());
    const int baseline = QFontMetrics(large).ascent();
    painter.setFont(large);
    painter.drawText(0, baseline, m_kind);
    painter.setFont(font());
    painter.setPen(colours.curve);
    if (isWindowBesideKind())
        painter.drawText(width() - fontMetrics().horizontalAdvance(m_window), baseline, m_window);
    else
        painter.drawText(0, lineHeight(large) + fontMetrics().ascent(), m_window);
}

}  // namespace firn::app
