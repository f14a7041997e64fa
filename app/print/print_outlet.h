// The way of a window's pages onto paper or into a PDF, and the sentence that says how it went.
#pragma once

#include "print/block.h"
#include "units/sentence.h"

#include <QObject>

class QWidget;

namespace firn::app {

class Document;
class Questions;

/// Everything that is printed goes through one of these, on the chosen paper.
class PrintOutlet : public QObject {
    Q_OBJECT

public:
    /// Belongs to the widget that prints; document and questions must outlive it.
    PrintOutlet(QWidget& owner, const Document& document, Questions& questions);

    /// Asks for the printer. What kept the pages from being made is said instead.
    void print(const Result<Handout>& pages);

    /// Asks for the file, beside the recipe's own unless the person chooses another place.
    void savePdf(const Result<Handout>& pages);

signals:
    /// Nothing is said where the person thought better of it.
    void said(const QString& sentence, bool isTrouble);

private:
    void say(const Result<QString>& outcome);
    QString askForPath(const QString& title);

    QWidget& m_owner;
    const Document& m_document;
    Questions& m_questions;
};

/// The recipe's title; where it has none, what the title bar calls it.
QString nameOnPaper(const Document& document);

}  // namespace firn::app
