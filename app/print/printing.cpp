#include "print/printing.h"

#include "document/recipe_file.h"
#include "print/pages.h"

#include <QBuffer>
#include <QCursor>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>

namespace firn::app {

namespace {

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
    const QPageLayout layout(paper, handout.isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait, {});
    writer.setPageLayout(layout);
    if (!paintAll(writer, pagesOf(handout, Paper(layout))))
        return failure(phrase("The pages could not be drawn: there may be too little memory. Print fewer sheets at a time."));
    return writeFile(path, bytes);
}

Result<QString> printOn(QPrinter& printer, const Handout& handout)
{
    const Busy busy;
    printer.setDocName(handout.title);
    printer.setFullPage(true);
    const QString place = printer.outputFileName().isEmpty() ? printer.printerName() : printer.outputFileName();
    if (paintAll(printer, wanted(pagesOf(handout, Paper(printer.pageLayout())), printer)))
        return place;
    return failure(phrase("Nothing could be printed on {0}. Choose another printer, or save a PDF.", place.toStdString()));
}

}  // namespace firn::app
