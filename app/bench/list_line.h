// The lines of lists that say several things about each: the catalogue's and the notebook's.
#pragma once

#include <QPainter>

namespace firn::app {

/// How much of the left edge the mark of a chosen line takes.
inline constexpr int chosenMark_px = 3;

/// Tint and mark of a line that is chosen, in its place.
void paintChosen(QPainter& painter, const QRect& place, const QColor& colour);

/// On one line, shortened to its place. Returns the width that it takes.
int drawShortened(QPainter& painter, const QRect& place, const QString& text, Qt::Alignment side = Qt::AlignLeft);

}  // namespace firn::app
