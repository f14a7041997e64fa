#include "catalogue/fault_label.h"

#include "gauges/palette.h"

#include <QEvent>

namespace firn::app {

FaultLabel::FaultLabel(QWidget* parent)
    : QLabel(parent)
{
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    colour();
    hide();
}

void FaultLabel::say(const QString& sentence)
{
    setText(sentence);
    setVisible(!sentence.isEmpty());
}

void FaultLabel::colour()
{
    const QColor caution = gaugeColours(palette()).caution;
    if (palette().color(QPalette::WindowText) == caution)
        return;
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, caution);
    setPalette(colours);
}

void FaultLabel::changeEvent(QEvent* event)
{
    QLabel::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        colour();
}

}  // namespace firn::app
