#include "bench/ink_label.h"

#include "gauges/palette.h"

#include <QEvent>

namespace firn::app {

InkLabel::InkLabel(Ink ink, QWidget* parent)
    : QLabel(parent)
    , m_ink(ink)
{
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    colour();
    hide();
}

void InkLabel::setText(const QString& text)
{
    QLabel::setText(text);
    setVisible(!text.isEmpty());
}

void InkLabel::setInk(Ink ink)
{
    m_ink = ink;
    colour();
}

void InkLabel::changeEvent(QEvent* event)
{
    QLabel::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        colour();
}

void InkLabel::colour()
{
    const GaugeColours colours = coloursInWindow(palette());
    QPalette inked = palette();
    inked.setColor(QPalette::WindowText, m_ink == Caution ? colours.caution : m_ink == Quiet ? colours.quietInk : colours.ink);
    // A change that changes nothing must not be told again.
    if (inked.color(QPalette::WindowText) != palette().color(QPalette::WindowText))
        setPalette(inked);
}

}  // namespace firn::app
