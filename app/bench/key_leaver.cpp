#include "bench/key_leaver.h"

#include <QKeyEvent>

namespace firn::app {

bool KeyLeaver::eventFilter(QObject* object, QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride
        && m_keys.contains(QKeySequence(static_cast<QKeyEvent*>(event)->keyCombination()))) {
        event->ignore();
        return true;
    }
    return QObject::eventFilter(object, event);
}

}  // namespace firn::app
