// What can be done to rows, as entries of a menu.
#pragma once

#include "recipe/recipe.h"

#include <QObject>

class QAction;
class QMenu;
class QUndoStack;

namespace firn::app {

class Document;
class IngredientTable;
class MessageBar;

/// Fills a menu with undo and redo, named after what they take back and do again, and with the actions of the table's rows.
class RowActions : public QObject {
    Q_OBJECT

public:
    RowActions(Document& document, IngredientTable& table, MessageBar& messages, QObject* parent);

    void fill(QMenu& menu);

    QAction* undoAction() const { return m_undo; }
    QAction* redoAction() const { return m_redo; }

private:
    void nameHistory();
    void step(void (QUndoStack::*go)());
    void copy();
    void cut();
    void paste();
    void insertPasted(const Recipe& pasted);
    QString pasteSummary(const Recipe& pasted, std::size_t problemsBefore) const;
    void remove();
    void duplicate();
    void move(int by);

    Document& m_document;
    IngredientTable& m_table;
    MessageBar& m_messages;
    QAction* m_undo;
    QAction* m_redo;
};

}  // namespace firn::app
