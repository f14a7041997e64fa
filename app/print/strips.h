// Blocks as strips of ink that fit a width: what must not be torn apart by the end of a page. Only the files of this folder include it.
#pragma once

#include "print/block.h"
#include "print/pages.h"

namespace firn::app {

struct Strip {
    double height = 0.0;
    std::vector<PrintMark> marks;  // from the strip's top left corner
    double spaceBefore = 0.0;
    bool keepsWithNext = false;
    std::vector<Strip> headOverleaf = {};  // stands above it where it is the first on its page
};

/// One or more strips, none of them larger than `room`.
std::vector<Strip> stripsOf(const Block& block, const QFont& font, QSizeF room);

QFont fontOf(TextStyle style, const QFont& text);

/// A line of text with its top left corner at (0, 0).
PrintMark markOf(const QString& text, const QFont& font, bool isQuiet);

PrintMark ruleMark(double from, double to, double y);

}  // namespace firn::app
