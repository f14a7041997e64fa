// Undo where it takes back steps of the recipe: in tool windows, and in fields of the recipe.
#pragma once

class QWidget;

namespace firn::app {

class Document;
class MessageBar;

/// Undo and redo pressed in this window take back steps of the recipe; what the window had to say before them is gone then.
void takeRecipesUndo(QWidget& window, Document& document, MessageBar& messages);

/// Undo and redo pressed in this field take back steps of the recipe, not letters of the field.
void leaveUndoToWindow(QWidget& field);

}  // namespace firn::app
