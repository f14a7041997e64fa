// The questions that stop everything until they are answered. Tests answer them in place of a person.
#pragma once

#include <QString>

class QPrinter;
class QWidget;

namespace firn::app {

class Questions {
public:
    enum class Unsaved { Save, Discard, Cancel };

    virtual ~Questions() = default;

    /// Before a recipe goes that is not saved. `question` names it and says what is not saved.
    virtual Unsaved unsavedChanges(QWidget* window, const QString& question);

    /// An empty path means that the person cancelled.
    virtual QString fileToOpen(QWidget* window, const QString& title, const QString& folder);
    virtual QString ingredientsToImport(QWidget* window, const QString& folder);
    virtual QString folderToOpen(QWidget* window, const QString& title, const QString& folder);
    virtual QString fileToSave(QWidget* window, const QString& suggestion);
    virtual QString photoToOpen(QWidget* window, const QString& folder);
    virtual QString pageToSave(QWidget* window, const QString& suggestion);

    /// Whether the person wants it printed, as the printer is set then.
    virtual bool mayPrint(QWidget* window, QPrinter& printer);
};

}  // namespace firn::app
