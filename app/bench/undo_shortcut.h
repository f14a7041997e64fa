// Undo in fields whose every keystroke is in the recipe's history already.
#pragma once

class QWidget;

namespace firn::app {

/// Undo and redo pressed in this field take back steps of the recipe, not letters of the field.
void leaveUndoToWindow(QWidget& field);

}  // namespace firn::app
