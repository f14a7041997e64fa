// From the blocks of a handout to pages of ink at its places.
#pragma once

#include "formulas/formula_box.h"
#include "print/block.h"

#include <QPageLayout>

class QPainter;

namespace firn::app {

/// Pages are measured in dots, whatever the printer makes of them.
inline constexpr double dotsPerInch = 600.0;

struct PrintText {
    QString text;
    QFont font;
    QPointF baseline;
    bool isQuiet = false;
};

/// A piece of ink and the place that it takes.
struct PrintMark {
    QRectF place;
    std::variant<PrintText, FormulaBox, std::monostate> ink;  // a bar where nothing else
};

struct PrintedPage {
    std::vector<PrintMark> marks;
};

/// A sheet of paper in dots, and where there is ink on it.
struct Paper {
    QSizeF size;
    QRectF inside;

    /// Its margins are its own, whatever the layout says.
    explicit Paper(const QPageLayout& layout);
};

/// All pages of all sections, each with its head and "Page 1 of 2" at its foot.
std::vector<PrintedPage> pagesOf(const Handout& handout, const Paper& paper);

/// Black on white; the painter's unit is a dot.
void paint(QPainter& painter, const PrintedPage& page);

}  // namespace firn::app
