// A window of its own beside the recipe: the jobs with syrups at the left, the chosen one at the right.
#pragma once

#include "derivation/working.h"

#include <QDialog>

class QListWidget;
class QStackedWidget;

namespace firn::app {

class Document;
class SyrupForm;

class SyrupsWindow : public QDialog {
    Q_OBJECT

public:
    /// The document must outlive the window.
    explicit SyrupsWindow(Document& document, QWidget* parent = nullptr);

signals:
    /// Somebody wants to know how an answer comes about: its key, and the workings that have it.
    void derivationWanted(const QString& figure, const firn::Workings& workings);

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    SyrupForm* form() const;
    void fitToFont();

    QListWidget* m_jobs;
    QStackedWidget* m_forms;
};

/// Brings the window to the front; there is one to a main window, which keeps what was typed until it is gone.
void showSyrups(Document& document, QWidget& mainWindow);

}  // namespace firn::app
