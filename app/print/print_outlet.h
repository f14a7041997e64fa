// The way of a window's pages onto paper or into a PDF, and the sentence that says how it went.
#pragma once

#include "print/block.h"
#include "units/sentence.h"

#include <QObject>
#include <QPageSize>
#include <functional>

class QWidget;

namespace firn::app {

class Document;
class InkLabel;

class PrintOutlet : public QObject {
    Q_OBJECT

public:
    using Pages = std::function<Result<Handout>()>;
    using PaperSize = std::function<QPageSize()>;

    /// Belongs to the window that asks; the message stands in it.
    PrintOutlet(QWidget& window, InkLabel& message, Pages pages, PaperSize paper);

public slots:
    void print();
    void askForPdf();
    void savePdf(const QString& path);

private:
    void say(const Result<void>& outcome, const QString& success);

    QWidget& m_window;
    InkLabel& m_message;
    Pages m_pages;
    PaperSize m_paper;
};

/// The recipe's title; where it has none, what the title bar calls it.
QString nameOnPaper(const Document& document);

}  // namespace firn::app
