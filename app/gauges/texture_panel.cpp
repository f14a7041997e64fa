#include "gauges/texture_panel.h"

#include "gauges/class_window.h"
#include "gauges/figure_button.h"
#include "gauges/marked_lines.h"
#include "gauges/sugar_ice_picture.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

// The picture stands beside the lines.
constexpr double pictureShare = 0.48;
constexpr int fewestLines = 9;  // that the picture needs: its head, a plot of five, and what is under it

/// The figure that the first reason is about.
QString figureOfFirst(const Texture& texture)
{
    return texture.iceAtServing.value > 0.0 ? QStringLiteral("texture.ice_percent_at_serving") : QStringLiteral("freezing_point_c");
}

/// The first reason, then what is wrong, then the other reasons: a cook reads from the top and may stop anywhere.
std::vector<MarkedLine> linesOf(const Texture& texture)
{
    std::vector<MarkedLine> lines;
    for (const Sentence& reason : texture.reasons)
        lines.push_back({Mark::None, translated(reason), !lines.empty(), lines.empty() ? figureOfFirst(texture) : QString()});
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
    , m_why(new FigureButton(QString(), QString(), this))
    , m_picture(new SugarIcePicture(this))
    , m_ice(new FigureButton(QString(), QStringLiteral("texture.ice_percent_at_serving"), m_picture))
{
    m_lines->setAccessibleName(tr("Why this texture"));
    connect(m_lines, &MarkedLines::figureChosen, this, &Gauge::figureChosen);
    m_why->setObjectName(QStringLiteral("why"));
    m_why->setAccessibleDescription(tr("Shows the reasons for the class"));
    m_why->setToolTip(tr("Show the reasons for the class"));
    connect(m_why, &FigureButton::clicked, this, &TexturePanel::showWhy);
    m_ice->setObjectName(QStringLiteral("sugarIce"));
    m_ice->setFocusPolicy(Qt::TabFocus);
    connect(m_ice, &FigureButton::chosen, this, &Gauge::figureChosen);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    show(Analysis{});
}

QSize TexturePanel::sizeHint() const
{
    return {
        fontMetrics().averageCharWidth() * 60, lineHeight(figureFont(font())) + gridStep + (fewestLines + 1) * lineHeight(font())};
}

QSize TexturePanel::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 50, lineHeight(figureFont(font())) + gridStep + fewestLines * lineHeight(font())};
}

void TexturePanel::show(const Analysis& analysis)
{
    const Texture& texture = analysis.texture;
    const bool isEmpty = analysis.mix.isEmpty();
    m_kind = isEmpty ? QString() : capitalised(translatedName(nameOf(texture.textureClass)));
    const RangeInDegrees range = texture.servingWindow ? rangeInDegrees(*texture.servingWindow) : RangeInDegrees{};
    m_warmest = range.warmest;
    m_isFrozen = !isEmpty && texture.textureClass != TextureClass::Unfrozen;
    m_window = !isEmpty && texture.servingWindow ? tr("serve at %1").arg(range.whole) : QString();
    m_lines->setLines(isEmpty ? std::vector<MarkedLine>{} : linesOf(texture));
    if (isEmpty)
        setValueText(tr("Add ingredients to see the texture"));
    else
        setValueText(QStringList{m_kind, m_window, m_lines->spokenText()}.join(u'\n'));
    m_texture = texture;
    m_serveAt = analysis.conditions.serveAt;
    showPicture();
    layOut();
    update();
    if (m_classWindow && m_classWindow->isVisible())
        m_classWindow->showTexture(m_texture, m_serveAt);
}

/// Why its kind has the band of sugar that it has; without sugar or ice there is nothing to see.
void TexturePanel::showPicture()
{
    const bool isShown = m_texture.willFreeze && sugars(m_texture.mix).value > 0.0;
    m_picture->setVisible(isShown);
    m_ice->setVisible(isShown);
    if (!isShown)
        return;
    m_picture->showCurve(sugarIceCurve(m_texture.mix, m_texture.textureClass, m_serveAt));
    m_ice->setAccessibleName(tr("ice when served, against sugar: %1").arg(percentText(m_texture.iceAtServing, 0)));
    m_ice->setAccessibleDescription(m_picture->accessibleDescription());
}

void TexturePanel::showWhy()
{
    if (!m_classWindow)
        m_classWindow = new ClassWindow(window());
    m_classWindow->show();
    m_classWindow->showTexture(m_texture, m_serveAt);
    m_classWindow->raise();
    m_classWindow->activateWindow();
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

/// Right of the kind, or under it.
QRect TexturePanel::windowPlace() const
{
    const int width_px = fontMetrics().horizontalAdvance(m_window), large = lineHeight(figureFont(font()));
    return isWindowBesideKind() ? QRect(width() - width_px, 0, width_px, large) : QRect(0, large, width_px, lineHeight(font()));
}

/// The kind opens its reasons; the serving window is two figures, the warmer one at its end.
void TexturePanel::placeFigures()
{
    std::vector<FigurePlace> figures;
    const QFontMetrics large(figureFont(font()));
    m_why->setVisible(m_isFrozen);
    m_why->setAccessibleName(m_kind);
    m_why->setGeometry(0, 0, std::max(FigureButton::leastSize_px, large.horizontalAdvance(m_kind)),
        std::max(FigureButton::leastSize_px, large.height()));
    if (!m_window.isEmpty()) {
        QRect coldest = windowPlace(), warmest = coldest;
        warmest.setLeft(coldest.right() - std::max(FigureButton::leastSize_px, fontMetrics().horizontalAdvance(m_warmest)));
        coldest.setRight(warmest.left() - 1);
        figures.push_back({QStringLiteral("texture.serving_window_c.coldest"),
            tr("coldest to serve: %1").arg(degrees(m_texture.servingWindow->coldest)), coldest});
        figures.push_back({QStringLiteral("texture.serving_window_c.warmest"),
            tr("warmest to serve: %1").arg(degrees(m_texture.servingWindow->warmest)), warmest});
    }
    setFigures(figures);
}

void TexturePanel::layOut()
{
    placeFigures();
    m_lines->setVisible(!m_kind.isEmpty());
    QRect below(0, headHeight(), width(), std::max(0, height() - headHeight()));
    if (!m_picture->isHidden()) {
        const int pictureWidth = qRound(pictureShare * width());
        m_picture->setGeometry(below.adjusted(below.width() - pictureWidth, 0, 0, 0));
        m_ice->setGeometry(m_picture->rect());
        below.setWidth(below.width() - pictureWidth - closeSpace);
    }
    m_lines->setGeometry(below);
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
        painter.drawText(windowPlace().left(), baseline, m_window);
    else
        painter.drawText(0, lineHeight(large) + fontMetrics().ascent(), m_window);
}

}  // namespace firn::app
