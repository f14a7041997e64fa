// The middle of the window: the recipe, its rows, and what they add up to.
#pragma once

#include "document/document.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QTabBar;

namespace firn::app {

class IngredientTable;
class RecipeBar;

class RecipeSheet : public QWidget {
    Q_OBJECT

public:
    explicit RecipeSheet(Document& document, QWidget* parent = nullptr);

    RecipeBar* head() { return m_head; }
    IngredientTable* table() { return m_table; }

    /// Ends all typing. What cannot be read is shown, and said in a sentence; else the answer is empty.
    QString takeTyping();

    void addComponent();
    void removeComponent();

signals:
    /// No text in the table or above it waits to be corrected.
    void everythingRead();

protected:
    void changeEvent(QEvent* event) override;

private:
    void goToComponent(int component);
    void showComponents();
    void showProblem();
    void colourProblem();

    Document& m_document;
    RecipeBar* m_head;
    QWidget* m_componentLine;
    QTabBar* m_components;
    QLineEdit* m_componentName;
    IngredientTable* m_table;
    QLabel* m_problem;
};

}  // namespace firn::app
