#include "bench/undo_shortcut.h"

#include "bench/key_leaver.h"
#include "bench/message_bar.h"
#include "document/document.h"
#include "document/typed_edit.h"

#include <QShortcut>
#include <QUndoStack>
#include <QWidget>

namespace firn::app {

void takeRecipesUndo(QWidget& window, Document& document, MessageBar& messages)
{
    const auto onKey = [&](QKeySequence::StandardKey key, void (QUndoStack::*step)()) {
        QObject::connect(new QShortcut(key, &window), &QShortcut::activated, &window, [&document, &messages, step] {
            messages.dismiss();
            finishTyping(document);
            (document.undoStack().*step)();
        });
    };
    onKey(QKeySequence::Undo, &QUndoStack::undo);
    onKey(QKeySequence::Redo, &QUndoStack::redo);
}

void leaveUndoToWindow(QWidget& field)
{
    field.installEventFilter(
        new KeyLeaver(QKeySequence::keyBindings(QKeySequence::Undo) + QKeySequence::keyBindings(QKeySequence::Redo), &field));
}

}  // namespace firn::app
