#include "tasting/typed_line.h"

#include "bench/undo_shortcut.h"

#include <QSignalBlocker>

namespace firn::app {

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

void TypedParagraph::focusInEvent(QFocusEvent* event)
{
    m_gesture = Gesture::begin();
    QPlainTextEdit::focusInEvent(event);
}

}  // namespace firn::app
