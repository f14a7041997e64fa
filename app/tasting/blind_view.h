// Tasting blind: choosing versions, making codes, printing the pages, and revealing which was which.
#pragma once

#include "document/document.h"

#include <QWidget>

class QListWidget;
class QPushButton;

namespace firn::app {

class InkLabel;
class NumberField;
class PrintOutlet;
class Questions;

class BlindView : public QWidget {
    Q_OBJECT

public:
    /// Document and questions must outlive the view.
    BlindView(Document& document, Questions& questions, QWidget* parent = nullptr);

    void show();

signals:
    void said(const QString& sentence, bool isTrouble);

private:
    QWidget* sheetButtons();
    QWidget* question();
    void ask(bool isAsked);
    void fillVersions();
    void fillSheets();
    void enable();
    void makeCodes();
    void reveal();
    QStringList ticked() const;
    const BlindSheet* sheet() const;
    std::size_t tasters() const;
    std::vector<Sentence> cautions() const;

    Document& m_document;
    PrintOutlet* m_outlet;
    QListWidget* m_versions;
    QPushButton* m_make;
    QWidget* m_sheetsTitle = nullptr;
    QListWidget* m_sheets;  // the newest first
    NumberField* m_tasters;
    QWidget* m_actions;
    QPushButton* m_reveal;
    QWidget* m_asking;  // whether to reveal
    InkLabel* m_noScales;
};

}  // namespace firn::app
