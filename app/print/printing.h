// Handouts on paper, and as PDF files.
#pragma once

#include "print/block.h"
#include "units/sentence.h"

#include <QPageSize>

class QPrinter;

namespace firn::app {

/// Fails with one sentence where the file cannot be written; what was there before stays.
Result<void> writePdf(const Handout& handout, const QPageSize& paper, const QString& path);

/// On the printer's own paper, the pages that it asks for. Returns the name of the printer or file that took them; fails where it takes none.
Result<QString> printOn(QPrinter& printer, const Handout& handout);

}  // namespace firn::app
