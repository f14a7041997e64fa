#include "bench/undo_shortcut.h"

#include "bench/message_bar.h"

#include <QKeyEvent>
#include <QShortcut>
#include <QUndoStack>
#include <QWidget>

namespace firn::app {

namespace {

class UndoLeaver : public QObject {
public:
    using QObject::QObject;

    bool eventFilter(QObject* object, QEvent* event) override
    {
        if (event->type() == QEvent::ShortcutOverride) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
                event->ignore();
                return true;
            }
        }
        return QObject::eventFilter(object, event);
    }
};

}  // namespace

void takeRecipesUndo(QWidget& window, QUndoStack& history, MessageBar& messages)
{
    const auto onKey = [&](QKeySequence::StandardKey key, void (QUndoStack::*step)()) {
        QObject::connect(new QShortcut(key, &window), &QShortcut::activated, &window, [&history, &messages, step] {
            messages.dismiss();
            (history.*step)();
        });
    };
    onKey(QKeySequence::Undo, &QUndoStack::undo);
    onKey(QKeySequence::Redo, &QUndoStack::redo);
}

void leaveUndoToWindow(QWidget& field) { field.installEventFilter(new UndoLeaver(&field)); }

}  // namespace firn::app
