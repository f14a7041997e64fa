#include "print/print_outlet.h"

#include "bench/questions.h"
#include "document/document.h"
#include "document/file_name.h"
#include "print/chosen_paper.h"
#include "print/printing.h"
#include "teach/figure_wording.h"

#include <QDir>
#include <QFileInfo>
#include <QPrinter>
#include <QStandardPaths>

namespace firn::app {

PrintOutlet::PrintOutlet(QWidget& owner, const Document& document, Questions& questions)
    : QObject(&owner)
    , m_owner(owner)
    , m_document(document)
    , m_questions(questions)
{
}

void PrintOutlet::print(const Result<Handout>& pages)
{
    if (!pages)
        return say(failure(pages.error()));
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(chosenPaper());
    printer.setPageOrientation(pages->isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait);
    if (m_questions.mayPrint(m_owner.window(), printer))
        say(printOn(printer, *pages).map([](const QString& place) { return tr("The pages went to %1.").arg(place); }));
}

void PrintOutlet::savePdf(const Result<Handout>& pages)
{
    if (!pages)
        return say(failure(pages.error()));
    const QString path = askForPath(pages->title);
    if (!path.isEmpty())
        say(writePdf(*pages, chosenPaper(), path).map([&] {
            return tr("The pages are in %1.").arg(QDir::toNativeSeparators(path));
        }));
}

QString PrintOutlet::askForPath(const QString& title)
{
    const QString ending = QStringLiteral(".pdf");
    const QString folder = m_document.path().isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                                                       : QFileInfo(m_document.path()).absolutePath();
    QString path = m_questions.pageToSave(m_owner.window(), QDir(folder).filePath(fileNameFrom(title) + ending));
    if (path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive))
        return path;
    path += ending;
    // The question about a file that is there already was about the name without ending.
    return QFileInfo::exists(path) ? m_questions.pageToSave(m_owner.window(), path) : path;
}

void PrintOutlet::say(const Result<QString>& outcome) { emit said(outcome ? *outcome : plain(outcome.error()), !outcome); }

QString nameOnPaper(const Document& document)
{
    const std::string& title = document.recipe().title;
    return title.empty() ? document.displayName() : plain(title);
}

}  // namespace firn::app
