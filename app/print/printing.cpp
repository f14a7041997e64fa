#include "print/printing.h"

#include "document/recipe_file.h"
#include "print/pages.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QGuiApplication>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>
#include <QStandardPaths>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Printing)
};

/// Many sheets take seconds.
struct Busy {
    Busy() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Busy() { QGuiApplication::restoreOverrideCursor(); }
    Busy(const Busy&) = delete;
    Busy& operator=(const Busy&) = delete;
};

/// Fails where the device takes no ink.
bool paintAll(QPagedPaintDevice& device, const std::vector<PrintedPage>& pages)
{
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    const double scale = device.logicalDpiX() / dotsPerInch;
    painter.scale(scale, scale);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !device.newPage())
            return false;
        paint(painter, pages[i]);
    }
    return painter.end();
}

std::vector<PrintedPage> wanted(std::vector<PrintedPage> pages, const QPrinter& printer)
{
    if (printer.printRange() != QPrinter::PageRange)
        return pages;
    const int last = std::min(printer.toPage(), int(pages.size())), first = std::clamp(printer.fromPage(), 1, std::max(last, 1));
    return {pages.begin() + first - 1, pages.begin() + std::max(last, first - 1)};
}

}  // namespace

QPageSize usualPaper()
{
    return QPageSize(QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4);
}

Result<void> writePdf(const Handout& handout, const QPageSize& paper, const QString& path)
{
    const Busy busy;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(handout.title);
    writer.setCreator(QStringLiteral("Firn"));
    writer.setResolution(int(dotsPerInch));
    writer.setPageLayout(QPageLayout(paper, QPageLayout::Portrait, {}));
    if (!paintAll(writer, pagesOf(handout, Paper(paper))))
        return failure(phrase("The pages could not be drawn: there may be too little memory. Print fewer sheets at a time."));
    return writeFile(path, bytes);
}

Result<void> printOn(QPrinter& printer, const Handout& handout)
{
    const Busy busy;
    printer.setDocName(handout.title);
    printer.setFullPage(true);
    const auto pages = wanted(pagesOf(handout, Paper(printer.pageLayout().pageSize())), printer);
    if (paintAll(printer, pages))
        return {};
    const QString name = printer.outputFileName().isEmpty() ? printer.printerName() : printer.outputFileName();
    return failure(phrase("Nothing could be printed on {0}: choose another printer, or save a PDF.", name.toStdString()));
}

Result<void> askAndPrint(QWidget& window, const Handout& handout, const QPageSize& paper)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(paper);
    QPrintDialog dialog(&printer, &window);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    if (dialog.exec() != QDialog::Accepted)
        return {};
    return printOn(printer, handout);
}

QString askForPdf(QWidget& window, const QString& name)
{
    QString file = name.simplified();
    file.replace(u'/', u'-');
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString path = QFileDialog::getSaveFileName(
        &window, Words::tr("Save as PDF"), QDir(folder).filePath(file + QStringLiteral(".pdf")), Words::tr("PDF (*.pdf)"));
    const bool hasEnding = path.isEmpty() || path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive);
    return hasEnding ? path : path + QStringLiteral(".pdf");
}

}  // namespace firn::app
