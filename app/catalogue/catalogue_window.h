// The catalogue: searched on the left, one ingredient on the right, to be read, typed or put in the recipe.
#pragma once

#include "catalogue/catalogue_model.h"

#include <QWidget>

class QListView;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace firn::app {

class CatalogueFilters;
class ImportPreview;
class IngredientDetails;
class IngredientForm;
class MainWindow;
class MessageBar;
class Questions;

/// One for the whole program. It serves the recipe window that it was opened from last.
class CatalogueWindow : public QWidget {
    Q_OBJECT

public:
    /// Pantry and questions must outlive the window.
    CatalogueWindow(Pantry& pantry, Questions& questions);

    void openFor(MainWindow& kitchen);

    MessageBar& messages() { return *m_messages; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    QWidget* lookingPart();
    QWidget* readingPart();
    QPushButton* addButton(const char* name, const QString& verb, void (CatalogueWindow::*act)());

    void look();
    void followPantry();
    void choose(const QModelIndex& index);
    void chooseId(const std::string& id);
    const Ingredient* chosen() const;
    void showChosen();

    void putInRecipe();
    void startNew();
    void editCopy();
    void editOwn();
    void remove();
    void openForm(const Ingredient& ingredient, const QString& title, bool isTyped = false);
    bool keepForm();
    void leaveForm();
    void closeForm();
    void import();
    void keepImported();
    void showPage(QWidget* page);

    Pantry& m_pantry;
    Questions& m_questions;
    MainWindow* m_kitchen = nullptr;  // none before one asks for the catalogue, and after it has closed
    CatalogueModel* m_model;
    MessageBar* m_messages;
    CatalogueFilters* m_filters;
    QListView* m_list;
    IngredientDetails* m_details;
    QScrollArea* m_detailsArea;
    IngredientForm* m_form;
    ImportPreview* m_import;
    QStackedWidget* m_pages;  // browsing, or a file to import
    QStackedWidget* m_right;  // reading, or typing
    QWidget* m_left;
    QPushButton* m_put;
    QPushButton* m_edit;
    QPushButton* m_copy;
    QPushButton* m_delete;
    std::string m_chosenId;
    QString m_formTitle;
};

}  // namespace firn::app
