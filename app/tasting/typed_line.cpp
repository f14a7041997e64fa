#include "tasting/typed_line.h"

#include "bench/undo_shortcut.h"
#include "gauges/palette.h"

#include <QPainter>
#include <QSignalBlocker>

namespace firn::app {

namespace {

constexpr float frameInk = 0.6F;  // as that of fields of one line

}  // namespace

TypedLine::TypedLine(const QString& name, const QString& spoken, QWidget* parent)
    : QLineEdit(parent)
{
    setObjectName(name);
    setAccessibleName(spoken);
    setAcceptDrops(false);
    leaveUndoToWindow(*this);
    connect(this, &QLineEdit::textEdited, this, [this](const QString& text) { emit typed(text.toStdString(), m_gesture); });
}

void TypedLine::showText(const std::string& text)
{
    if (const QString shown = QString::fromStdString(text); shown != this->text())
        setText(shown);
}

void TypedLine::focusInEvent(QFocusEvent* event)
{
    m_gesture = Gesture::begin();
    QLineEdit::focusInEvent(event);
}

TypedParagraph::TypedParagraph(const QString& name, const QString& spoken, QWidget* parent)
    : QPlainTextEdit(parent)
{
    setObjectName(name);
    setAccessibleName(spoken);
    setAcceptDrops(false);
    setTabChangesFocus(true);
    setUndoRedoEnabled(false);
    leaveUndoToWindow(*this);
    connect(this, &QPlainTextEdit::textChanged, this, [this] { emit typed(toPlainText().toStdString(), m_gesture); });
}

void TypedParagraph::showText(const std::string& text)
{
    const QString shown = QString::fromStdString(text);
    if (shown == toPlainText())
        return;
    const QSignalBlocker blocker(this);
    setPlainText(shown);
}

bool TypedParagraph::event(QEvent* event)
{
    const bool isTaken = QPlainTextEdit::event(event);
    // The style's own frame is lost on a dark ground; the focus it marks clearly.
    if (event->type() == QEvent::Paint && !hasFocus()) {
        QPainter painter(this);
        QColor ink = gaugeColours(palette()).quietInk;
        ink.setAlphaF(frameInk);
        painter.setPen(ink);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
    return isTaken;
}

void TypedParagraph::focusInEvent(QFocusEvent* event)
{
    m_gesture = Gesture::begin();
    QPlainTextEdit::focusInEvent(event);
}

}  // namespace firn::app
