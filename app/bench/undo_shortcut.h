// Undo where it takes back steps of the recipe: in tool windows, and in fields whose every keystroke is in its history already.
#pragma once

class QUndoStack;
class QWidget;

namespace firn::app {

class MessageBar;

/// Undo and redo pressed in this window take back steps of the recipe; what the window had to say before them is gone then.
void takeRecipesUndo(QWidget& window, QUndoStack& history, MessageBar& messages);

/// Undo and redo pressed in this field take back steps of the recipe, not letters of the field.
void leaveUndoToWindow(QWidget& field);

}  // namespace firn::app
