// The notebook beside the bench: looking for recipes, opening them, and marking them.
#pragma once

#include "notebook/folder_import.h"
#include "notebook/notebook_folder.h"

#include <QWidget>
#include <functional>

class QAction;
class QLineEdit;
class QListView;
class QMenu;
class QPushButton;
class QStackedWidget;
class QToolButton;

namespace firn::app {

class Document;
class FileActions;
class ImportReport;
class InkLabel;
class MessageBar;
class NotebookFilters;
class NotebookModel;
class Questions;

class NotebookPanel : public QWidget {
    Q_OBJECT

public:
    /// What the notebook works with; all of it must outlive the panel.
    struct Kitchen {
        Document& document;
        const Pantry& pantry;
        FileActions& files;
        MessageBar& messages;
        Questions& questions;
    };

    explicit NotebookPanel(const Kitchen& kitchen, QWidget* parent = nullptr);
    ~NotebookPanel() override;

    void goToSearch();
    const NotebookFolder& folder() const { return m_folder; }

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    QWidget* listPage();
    QWidget* emptyPage();
    QWidget* actionRow();
    void buildMenu();

    void relist(const std::function<void()>& list);
    void followFilters();
    void followFolder();
    void followDocument();
    void showState();
    void showEmptyState();
    void chooseFirst();

    void openChosen();
    void toggleFavourite();
    void toggleArchived();
    void editTags();
    void keepTags();
    void showInFolder();
    void import();
    void takeImport(const Result<ImportOutcome>& outcome);
    void chooseFolder();

    const RecipeCard* chosen() const;
    bool isOnBench(const RecipeCard& card) const;
    void changeChosen(const std::function<void(Document&)>& onBench, const std::function<void(Recipe&)>& inFile);
    void enableActions();

    Kitchen m_kitchen;
    NotebookFolder m_folder;
    NotebookModel* m_model;
    NotebookFilters* m_filters;
    QListView* m_list;
    InkLabel* m_status;
    QToolButton* m_statusAct;
    InkLabel* m_hint;
    QPushButton* m_hintAct;
    ImportReport* m_report;
    QStackedWidget* m_pages;
    QWidget* m_tagRow;
    QLineEdit* m_tags;
    InkLabel* m_place;
    QMenu* m_menu;
    QAction* m_open;
    QAction* m_favourite;
    QAction* m_editTags;
    QAction* m_archive;
    QAction* m_showInFolder;
    QString m_openFile;  // the recipe on the bench, as it was last followed

    QThreadPool m_importing;
    std::shared_ptr<std::atomic<bool>> m_importIsCalledOff;  // while one runs
};

}  // namespace firn::app
