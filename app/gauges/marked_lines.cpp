#include "gauges/marked_lines.h"

#include "gauges/figure_button.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QHelpEvent>
#include <QPainter>
#include <QPainterPath>
#include <QScrollBar>
#include <QScroller>
#include <QToolTip>
#include <QtMath>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int textFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

/// A filled triangle for danger, an open diamond for a warning, an open circle for a note: shapes that need no colour.
void paintMark(QPainter& painter, Mark mark, const QRectF& box, const GaugeColours& colours)
{
    const QColor& colour = mark == Mark::Note ? colours.curve : colours.caution;
    QPainterPath shape;
    switch (mark) {
    case Mark::None:
        return;
    case Mark::Note:
        shape.addEllipse(box.adjusted(1, 1, -1, -1));
        break;
    case Mark::Warning:
        shape.addPolygon(QPolygonF{{QPointF(box.center().x(), box.top()), QPointF(box.right(), box.center().y()),
            QPointF(box.center().x(), box.bottom()), QPointF(box.left(), box.center().y())}});
        shape.closeSubpath();
        break;
    case Mark::Danger:
        shape.addPolygon(QPolygonF{{QPointF(box.center().x(), box.top()), box.bottomRight(), box.bottomLeft()}});
        shape.closeSubpath();
        break;
    }
    painter.setPen(QPen(colour, 1.5));
    painter.setBrush(mark == Mark::Danger ? QBrush(colour) : QBrush(Qt::NoBrush));
    painter.drawPath(shape);
    const double stroke = box.height() / 8.0;
    const bool hasTail = mark != Mark::Note;  // "!" for the serious ones, "i" for a note
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark == Mark::Danger ? colours.ground : colour);
    const double top = box.top() + box.height() * (mark == Mark::Danger ? 0.38 : 0.26);
    const double bottom = box.top() + box.height() * (mark == Mark::Danger ? 0.88 : 0.74);
    const QRectF stem(box.center().x() - 0.5 * stroke, hasTail ? top : top + 2.0 * stroke, stroke, bottom - top - 2.0 * stroke);
    const QRectF dot(box.center().x() - 0.5 * stroke, hasTail ? bottom - stroke : top, stroke, stroke);
    painter.drawRect(stem);
    painter.drawRect(dot);
}

}  // namespace

MarkedLines::MarkedLines(QWidget* parent)
    : QAbstractScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // in two lines of text it would be all buttons
    QScroller::grabGesture(viewport(), QScroller::TouchGesture);
    setFocusPolicy(Qt::NoFocus);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    layOut();
}

void MarkedLines::setLines(std::vector<MarkedLine> lines)
{
    if (lines == m_lines)
        return;
    m_lines = std::move(lines);
    for (FigureButton* button : m_buttons)
        delete button;
    m_buttons.clear();
    for (const MarkedLine& line : m_lines) {
        auto* button = line.figure.isEmpty() ? nullptr : new FigureButton(line.text, line.figure, viewport());
        m_buttons.push_back(button);
        if (!button)
            continue;
        button->setFocusPolicy(Qt::TabFocus);
        button->show();
        connect(button, &FigureButton::chosen, this, &MarkedLines::figureChosen);
    }
    setAccessibleDescription(spokenText());
    verticalScrollBar()->setValue(0);
    layOut();
}

QString MarkedLines::spokenText() const
{
    QStringList spoken;
    for (const MarkedLine& line : m_lines) {
        switch (line.mark) {
        case Mark::None:
            spoken << line.text;
            break;
        case Mark::Note:
            spoken << tr("Note: %1").arg(line.text);
            break;
        case Mark::Warning:
            spoken << tr("Warning: %1").arg(line.text);
            break;
        case Mark::Danger:
            spoken << tr("Danger: %1").arg(line.text);
            break;
        }
    }
    return spoken.join(u'\n');
}

QSize MarkedLines::sizeHint() const { return {fontMetrics().averageCharWidth() * 40, 3 * lineHeight(font())}; }

QSize MarkedLines::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 16, lineHeight(font())}; }

QRect MarkedLines::textPlace(const MarkedLine& line, int width, int top, int height) const
{
    const int indent = line.mark == Mark::None ? 0 : lineHeight(font()) + gridStep;
    return {indent, top, std::max(1, width - indent - closeSpace), height};
}

std::vector<int> MarkedLines::topsFor(int width) const
{
    std::vector<int> tops{0};
    for (const MarkedLine& line : m_lines) {
        const QRect room = textPlace(line, width, 0, QWIDGETSIZE_MAX);
        tops.push_back(tops.back() + fontMetrics().boundingRect(room, textFlags, line.text).height() + gridStep / 2);
    }
    return tops;
}

void MarkedLines::layOut()
{
    m_tops = topsFor(viewport()->width());
    const int overflow = std::max(0, m_tops.back() - gridStep / 2 - viewport()->height());
    verticalScrollBar()->setRange(0, overflow);
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(lineHeight(font()));
    setFocusPolicy(overflow > 0 ? Qt::StrongFocus : Qt::NoFocus);  // only what scrolls needs the arrow keys
    placeButtons();
    viewport()->update();
}

void MarkedLines::placeButtons()
{
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        if (m_buttons[i])
            m_buttons[i]->setGeometry(0, m_tops[i] - verticalScrollBar()->value(), viewport()->width(),
                std::max(FigureButton::leastSize_px, m_tops[i + 1] - m_tops[i]));
    }
}

void MarkedLines::scrollContentsBy(int dx, int dy)
{
    QAbstractScrollArea::scrollContentsBy(dx, dy);
    placeButtons();
}

void MarkedLines::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    layOut();
}

void MarkedLines::changeEvent(QEvent* event)
{
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        layOut();
    else if (event->type() == QEvent::PaletteChange)
        viewport()->update();
}

void MarkedLines::paintEvent(QPaintEvent* /*event*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), colours.ground);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(0, -verticalScrollBar()->value());
    const double size = fontMetrics().ascent() + 1.0;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const MarkedLine& line = m_lines[i];
        // Half a line of text at the lower edge would only be clutter.
        const int visible = viewport()->height() + verticalScrollBar()->value() - m_tops[i];
        const double lineSpacing = QFontMetricsF(font()).lineSpacing();
        const int wholeLines = static_cast<int>((visible + 1) / lineSpacing);
        if (wholeLines < 1)
            break;
        paintMark(painter, line.mark, QRectF(1.0, m_tops[i] + 1.0, size, size), colours);
        painter.setPen(line.isQuiet ? colours.quietInk : colours.ink);
        painter.drawText(
            textPlace(line, viewport()->width(), m_tops[i], std::min(m_tops[i + 1] - m_tops[i], qCeil(wholeLines * lineSpacing))),
            textFlags, line.text);
    }
    painter.resetTransform();
    paintScrollPosition(painter, colours.quietInk);
}

/// A thin bar at the right edge, as long as the part that shows.
void MarkedLines::paintScrollPosition(QPainter& painter, const QColor& colour) const
{
    const int overflow = verticalScrollBar()->maximum();
    if (overflow == 0)
        return;
    constexpr double thickness = 3.0;
    const double perPixel = viewport()->height() / static_cast<double>(viewport()->height() + overflow);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRoundedRect(QRectF(viewport()->width() - thickness, verticalScrollBar()->value() * perPixel, thickness,
                                viewport()->height() * perPixel),
        0.5 * thickness, 0.5 * thickness);
}

bool MarkedLines::viewportEvent(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    // Escaped, as the texts hold names from files; a paragraph, so that long ones wrap.
    const QString all = QStringLiteral("<p>%1</p>").arg(spokenText().toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")));
    const bool isCut = verticalScrollBar()->maximum() > 0;
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), isCut ? all : QString(), this);
    return true;
}

}  // namespace firn::app
