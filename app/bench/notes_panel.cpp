#include "bench/notes_panel.h"

#include "bench/undo_shortcut.h"
#include "document/edits.h"

#include <QSignalBlocker>

namespace firn::app {

NotesPanel::NotesPanel(Document& document, QWidget* parent)
    : QPlainTextEdit(parent)
    , m_document(document)
{
    setObjectName(QStringLiteral("notesText"));
    setAccessibleName(tr("Notes"));
    setPlaceholderText(tr("Steps, tastings, what to change next time"));
    setFrameShape(NoFrame);
    setTabChangesFocus(true);
    setUndoRedoEnabled(false);
    setAcceptDrops(false);
    leaveUndoToWindow(*this);
    connect(this, &QPlainTextEdit::textChanged, this, &NotesPanel::take);
    connect(&document, &Document::changed, this, &NotesPanel::showNotes);
    showNotes();
}

QSize NotesPanel::sizeHint() const { return {fontMetrics().averageCharWidth() * 40, fontMetrics().lineSpacing() * 4}; }

void NotesPanel::focusInEvent(QFocusEvent* event)
{
    m_gesture = Gesture::begin();
    QPlainTextEdit::focusInEvent(event);
}

void NotesPanel::showNotes()
{
    const QString notes = QString::fromStdString(m_document.recipe().notes);
    if (notes == toPlainText())
        return;
    const QSignalBlocker blocker(this);
    setPlainText(notes);
}

void NotesPanel::take() { changeNotes(m_document, toPlainText().toStdString(), m_gesture); }

}  // namespace firn::app
