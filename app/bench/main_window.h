// The bench: one recipe, its gauges around it.
#pragma once

#include "document/gesture.h"
#include "document/recovery.h"

#include <QMainWindow>

namespace firn::app {

class FileActions;
class MessageBar;
class NotebookPanel;
class Pantry;
class Questions;
class RecipeSheet;
class RowActions;
class ScalePanel;
class DerivationWindow;
class ProjectorWindow;
class VersionsPanel;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// Pantry, questions and files must outlive the window.
    MainWindow(Pantry& pantry, Questions& questions, FileWork& files = sharedFileWork());
    ~MainWindow() override;

    Document& document() { return m_document; }
    FileActions& files() { return *m_files; }
    MessageBar& messages() { return *m_messages; }

    /// Adds an ingredient under the current row of the component in view, its amount still open.
    void putInRecipe(const std::string& ingredient);

    /// Puts the panels where they are at the first start.
    void layOutAfresh();

signals:
    void catalogueWanted();

protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    template <class Panel>
    Panel* addPanel(const QString& name, const QString& title);
    QDockWidget* addDock(const QString& name, const QString& title, QWidget* content);

    void buildPanels();
    void buildMenus();
    void buildRecipeMenu(QMenu& menu);
    void buildTeachMenu(QMenu& menu);
    void buildViewMenu(QMenu& menu);
    void buildHelpMenu(QMenu& menu);
    void restoreLayout();
    void saveLayout();
    void nameWindow();
    void drawIcons();
    void writeTemperaturesAgain();

    Document m_document;
    Recovery m_recovery;
    MessageBar* m_messages;
    RecipeSheet* m_sheet;
    FileActions* m_files;
    RowActions* m_rows;
    NotebookPanel* m_notebook;
    DerivationWindow* m_derivations;
    ProjectorWindow* m_projector;
    Questions& m_questions;
    VersionsPanel* m_versions = nullptr;
    QList<QDockWidget*> m_docks;
    QDockWidget* m_scaleDock = nullptr;
    ScalePanel* m_scale = nullptr;
    QDockWidget* m_notebookDock = nullptr;
    QDockWidget* m_versionsDock = nullptr;
    Gesture m_markerGesture;
};

}  // namespace firn::app
