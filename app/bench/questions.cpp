#include "bench/questions.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Questions)
};

}  // namespace

Questions::Unsaved Questions::unsavedChanges(QWidget* window, const QString& question)
{
    QMessageBox box(window);
    box.setIcon(QMessageBox::Question);
    box.setTextFormat(Qt::PlainText);
    box.setWindowTitle(Words::tr("Unsaved changes"));
    box.setText(question);
    auto* save = box.addButton(Words::tr("Save"), QMessageBox::AcceptRole);
    const auto* discard = box.addButton(Words::tr("Discard"), QMessageBox::DestructiveRole);
    box.addButton(Words::tr("Cancel"), QMessageBox::RejectRole);
    box.setDefaultButton(save);
    box.exec();
    return box.clickedButton() == save ? Unsaved::Save : box.clickedButton() == discard ? Unsaved::Discard : Unsaved::Cancel;
}

QString Questions::fileToOpen(QWidget* window, const QString& title, const QString& folder)
{
    return QFileDialog::getOpenFileName(window, title, folder, Words::tr("Recipes (*.firn *.json *.txt *.csv);;All files (*)"));
}

QString Questions::ingredientsToImport(QWidget* window, const QString& folder)
{
    return QFileDialog::getOpenFileName(
        window, Words::tr("Import ingredients"), folder, Words::tr("Ingredients (*.json *.csv *.txt *.firn);;All files (*)"));
}

QString Questions::folderToOpen(QWidget* window, const QString& title, const QString& folder)
{
    return QFileDialog::getExistingDirectory(window, title, folder);
}

QString Questions::fileToSave(QWidget* window, const QString& suggestion)
{
    return QFileDialog::getSaveFileName(window, Words::tr("Save the recipe"), suggestion,
        Words::tr("Firn recipe (*.firn);;Text, one ingredient a line (*.txt);;Table (*.csv)"));
}

QString Questions::photoToOpen(QWidget* window, const QString& folder)
{
    return QFileDialog::getOpenFileName(
        window, Words::tr("Choose a photo"), folder, Words::tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif);;All files (*)"));
}

QString Questions::pageToSave(QWidget* window, const QString& suggestion)
{
    return QFileDialog::getSaveFileName(window, Words::tr("Save as PDF"), suggestion, Words::tr("PDF (*.pdf)"));
}

bool Questions::mayPrint(QWidget* window, QPrinter& printer)
{
    QPrintDialog dialog(&printer, window);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    return dialog.exec() == QDialog::Accepted;
}

}  // namespace firn::app
