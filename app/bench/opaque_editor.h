// Editors in lists and tables that have no ground of their own.
#pragma once

#include <QApplication>
#include <QWidget>

namespace firn::app {

/// What the cell holds does not show through beside what is being typed.
inline void makeOpaque(QWidget& editor)
{
    QPalette palette = editor.palette();
    palette.setColor(QPalette::Base, QApplication::palette().color(QPalette::Base));
    editor.setPalette(palette);
    editor.setAutoFillBackground(true);
}

}  // namespace firn::app
