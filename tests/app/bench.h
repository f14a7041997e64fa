// A bench for tests: the window with a catalogue, and someone who answers its questions.
#pragma once

#include "bench/ingredient_table.h"
#include "bench/main_window.h"
#include "bench/questions.h"
#include "document/pantry.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <ostream>

void PrintTo(const QString& text, std::ostream* stream);

namespace firn::app {

const Catalogue& shippedCatalogue();

/// Waits until what runs in the background has read its files and handed them over.
void settle();

/// Answers with what the test has laid ready, and counts how often it was asked.
class Answers : public Questions {
public:
    Unsaved unsaved = Unsaved::Cancel;
    QString toOpen;
    QString toSave;
    QString toImport;
    QString photo;
    QString page;
    QString toChoose;
    int unsavedAsked = 0;
    QString asked;          // about what is not saved
    QString suggested;      // for the file to save
    QString pageSuggested;  // for the PDF
    QString printTo;        // a file in place of the printer's paper; nothing is printed without

    Unsaved unsavedChanges(QWidget*, const QString& question) override
    {
        ++unsavedAsked;
        asked = question;
        return unsaved;
    }
    QString fileToOpen(QWidget*, const QString&, const QString&) override { return toOpen; }
    QString ingredientsToImport(QWidget*, const QString&) override { return toImport; }
    QString folderToOpen(QWidget*, const QString&, const QString&) override { return toChoose; }
    QString fileToSave(QWidget*, const QString& suggestion) override
    {
        suggested = suggestion;
        return toSave;
    }
    QString photoToOpen(QWidget*, const QString&) override { return photo; }
    QString pageToSave(QWidget*, const QString& suggestion) override
    {
        pageSuggested = suggestion;
        return page;
    }
    bool mayPrint(QWidget*, QPrinter& printer) override;
};

class Bench : public testing::Test {
protected:
    Bench();

    /// The recipe's rows, as a person would write them.
    QString rows();
    std::size_t rowCount() { return recipe().components.front().rows.size(); }
    const Recipe& recipe() { return window.document().recipe(); }
    QUndoStack& history() { return window.document().undoStack(); }
    QString messageShown();
    QString problemShown();

    QModelIndex cell(int row, int column) { return table.rows().index(row, column); }
    QString textAt(int row, int column) { return cell(row, column).data().toString(); }

    void goTo(int row, int column) { table.setCurrentIndex(cell(row, column)); }
    /// Keys go to whatever has the focus, as a person's do.
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    static void type(const QString& text);
    /// Types over a cell and presses Enter.
    void enter(int row, int column, const QString& text);
    /// Puts rows on the bench as if they had been opened: nothing is unsaved, nothing can be undone.
    void lay(const std::string& lines);

    QString inFolder(const QString& name) { return folder.filePath(name); }
    QString written(const QString& name, const QByteArray& contents);

    QTemporaryDir folder;
    Answers answers;
    Pantry pantry;
    MainWindow window;
    IngredientTable& table;
};

}  // namespace firn::app
