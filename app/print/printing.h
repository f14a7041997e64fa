// Handouts on paper, and as PDF files.
#pragma once

#include "print/block.h"
#include "units/sentence.h"

#include <QPageSize>
#include <optional>

class QPrinter;
class QWidget;

namespace firn::app {

/// A4, and Letter where inches are at home.
QPageSize usualPaper();

/// Fails with one sentence where the file cannot be written; what was there before stays.
Result<void> writePdf(const Handout& handout, const QPageSize& paper, const QString& path);

/// On the printer's own paper, the pages that it asks for. Fails where the printer takes none.
Result<void> printOn(QPrinter& printer, const Handout& handout);

/// Asks for the printer, with this paper, and prints; nothing is wrong where the person thinks better of it.
Result<void> askAndPrint(QWidget& window, const Handout& handout, const QPageSize& paper);

/// Asks where a PDF shall be kept; an empty path means that the person thought better of it.
QString askForPdf(QWidget& window, const QString& name);

}  // namespace firn::app
