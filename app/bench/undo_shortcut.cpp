#include "bench/undo_shortcut.h"

#include <QKeyEvent>
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

void leaveUndoToWindow(QWidget& field) { field.installEventFilter(new UndoLeaver(&field)); }

}  // namespace firn::app
