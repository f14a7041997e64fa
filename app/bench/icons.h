// The program's own drawings, in the ink of the palette.
#pragma once

#include <QIcon>
#include <QPalette>

namespace firn::app {

/// The drawing of that name, recoloured: its shape counts, not its colour.
QIcon inkedIcon(const QString& name, const QPalette& palette);

QIcon programIcon();

}  // namespace firn::app
